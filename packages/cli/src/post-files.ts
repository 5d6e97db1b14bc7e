import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { globSync } from 'tinyglobby';
import { Stop } from './stop.js';

const posts = '**/*.{md,mdx}';

/**
 * The posts that arguments name: files, folders (all Markdown in them) and globs.
 *
 * @param undone What was then not done: `Nothing was checked.`
 * @returns Absolute paths, each once, in order.
 * @throws {Stop} Where an argument names nothing.
 */
export function postFiles(args: readonly string[], cwd: string, undone: string): string[] {
  const found = args.flatMap((arg) => {
    const path = resolve(cwd, arg);
    const kind = statSync(path, { throwIfNoEntry: false });
    if (kind?.isFile()) return [path];
    const ignore = ['**/node_modules/**'];
    const files = kind?.isDirectory()
      ? globSync(posts, { cwd: path, absolute: true, ignore })
      : globSync(arg, { cwd, absolute: true, ignore });
    if (files.length === 0) throw new Stop(`There is no post at \`${arg}\`. ${undone}`);
    return files.sort();
  });
  return [...new Set(found)];
}
