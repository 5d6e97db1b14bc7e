import { readFileSync } from 'node:fs';
import type { Larder } from './larder.js';
import { readCompiled } from './read-compiled.js';

let cached: Larder | undefined;

/**
 * The foods and kitchens that come with the package. Read once; a food is built when it is first asked for.
 *
 * @throws {Error} If the package was not built whole: its `larder.json` is missing.
 */
export function builtInLarder(): Larder {
  cached ??= readCompiled(readFileSync(new URL('./larder.json', import.meta.url)));
  return cached;
}
