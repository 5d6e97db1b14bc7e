import { createHash } from 'node:crypto';
import type { Larder } from '../larder.js';
import type { Fault } from '../read/problem.js';
import type { LarderData } from '../schema/larder-schema.js';
import { assembleFoods } from './assemble-foods.js';
import { assembleKitchens } from './assemble-kitchens.js';

/** The larder with nothing in it. */
export const emptyLarder: Larder = { foods: new Map(), kitchens: new Map(), digest: '' };

/** A larder, and what is wrong with the data put into it: with faults, what they concern is left out. */
export interface Assembly {
  larder: Larder;
  faults: Fault[];
}

/** Puts data that its schema has let through on top of a larder. */
export function assemble(base: Larder, data: LarderData): Assembly {
  const { kitchens, faults } = assembleKitchens(base.kitchens, data.kitchens ?? {});
  const { foods, faults: foodFaults } = assembleFoods(base.foods, kitchens, data);
  const digest = createHash('sha256').update(base.digest).update(JSON.stringify(data)).digest('hex');
  return { larder: { foods, kitchens, digest }, faults: [...faults, ...foodFaults] };
}
