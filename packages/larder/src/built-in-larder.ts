import { readFileSync } from 'node:fs';
import { assemble, emptyLarder } from './build/assemble.js';
import type { Larder } from './larder.js';
import type { LarderData } from './schema/larder-schema.js';

let cached: Larder | undefined;

/**
 * The foods and kitchens that come with the package. Read once.
 *
 * @throws {Error} If the package was not built whole: its `larder.json` is missing.
 */
export function builtInLarder(): Larder {
  cached ??= readBuiltIn();
  return cached;
}

function readBuiltIn(): Larder {
  // Sound: `compileLarder` writes nothing that its schemas have not let through.
  const data = JSON.parse(readFileSync(new URL('./larder.json', import.meta.url), 'utf8')) as LarderData;
  return assemble(emptyLarder, data).larder;
}
