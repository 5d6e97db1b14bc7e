import { readFileSync } from 'node:fs';
import type { LarderData } from './schema/larder-schema.js';

/**
 * The foods and kitchens that come with the package as their files have them, with every source and note: for explaining a value.
 * `builtInLarder` is the one to compute with.
 */
export function builtInData(): LarderData {
  return JSON.parse(readFileSync(new URL('./larder.json', import.meta.url), 'latin1')) as LarderData;
}
