import type { Keeping } from '../../food/food.js';

/** What becomes of the rest of a pack: it is kept and used, it goes off first, or it is too little to keep; or there is none. */
export type Remainder = 'none' | 'keeps' | 'spoils' | 'too-little';

/** A food that keeps this long or less is gone before it is wanted again. */
const spoilsWithinDays = 6;
/** Less than this share of what was bought is what sticks to the pack. */
const clingsToPack = 0.05;

/**
 * What becomes of what is left of the packs bought. A cupboard keeps what a fridge does not, down to the last spoonful.
 *
 * @param bought Grams of the packs.
 * @param left Grams that the recipe does not use.
 */
export function remainderOf({ where, days, freezes, leastGrams }: Keeping, bought: number, left: number): Remainder {
  if (bought === 0 || left <= bought * clingsToPack) return 'none';
  if (days !== null && days <= spoilsWithinDays && !freezes) return 'spoils';
  return where !== 'cupboard' && left < leastGrams.toNumber() ? 'too-little' : 'keeps';
}
