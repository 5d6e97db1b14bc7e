import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { type Ended, runAstro } from './site.ts';

/** The example's root. */
export const exampleRoot: string = fileURLToPath(new URL('../../site-example/', import.meta.url));

/**
 * Builds the example, once for all test files of a run: whoever comes first builds, the others wait.
 *
 * @returns How the build ended; the pages are in `site-example/dist`.
 */
export async function buildExample(): Promise<Ended> {
  // The temporary folder is the run's own and all its workers'.
  const folder = join(tmpdir(), 'example-site');
  const result = join(folder, 'ended.json');
  try {
    mkdirSync(folder);
  } catch {
    while (!existsSync(result)) await setTimeout(100);
    return JSON.parse(readFileSync(result, 'utf8')) as Ended;
  }
  const ended = await runAstro(exampleRoot, ['build']);
  writeFileSync(result, JSON.stringify(ended));
  return ended;
}
