import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { type CheckedPost, checkPost, type Site } from './check-post.js';

/**
 * Checks posts as they lie on disk.
 *
 * @param paths Absolute paths.
 * @param from Folder that reported paths are relative to.
 * @throws {Error} Where a file cannot be read, as `readFileSync` does.
 */
export function checkFiles(paths: readonly string[], from: string, site: Site): CheckedPost[] {
  return paths.map((path) => checkPost(readFileSync(path, 'utf8'), relative(from, path), site));
}
