import { assemble } from './build/assemble.js';
import type { Larder } from './larder.js';
import type { LarderData } from './schema/larder-schema.js';

/**
 * A larder with a site's foods and kitchens added or put over its own.
 *
 * @param base The larder that the data was read against.
 * @throws {RangeError} If the data has faults: take it from `readSiteLarder`, which says what they are.
 */
export function extendLarder(base: Larder, data: LarderData): Larder {
  const { larder, faults } = assemble(base, data);
  if (faults[0] !== undefined) throw new RangeError(faults[0].message);
  return larder;
}
