import type { Term } from '../../amount/stated.js';
import type { Exact } from '../../exact.js';
import type { Pack } from '../../food/food.js';
import type { Way } from '../kitchen.js';

/** An amount that a kitchen's tools measure exactly. */
export interface Measure {
  way: Way | 'wrapper' | 'counter' | 'pack';
  /** As it is written; two terms for a cup amount with added spoons, and for tablespoons with added teaspoons. */
  terms: readonly Term[];
  /** The pack that is counted, where whole packs are. */
  pack?: Pack;
  /** What `size` counts. */
  base: 'g' | 'ml';
  size: Exact;
  /** `size` as a float, for searching: what is chosen is computed exactly. */
  near: number;
  /** 0 whole or half of one tool or a round mark, up to ½ a mark between them, 1 another fraction, 2 parts of a pack beside whole ones, 3½ with added spoons. */
  awkwardness: (typeof awkwardnesses)[number];
  /** More spoons than a cook counts, but for the upper end of a range that begins with them. */
  endOnly?: true;
}

/** Every awkwardness that there is, the least first. */
export const awkwardnesses = [0, 0.25, 0.5, 1, 2, 3.5] as const;

/** A size, exact and as a float. */
export function sized(size: Exact): Pick<Measure, 'size' | 'near'> {
  return { size, near: size.toNumber() };
}

/** Nobody writes 455 g for 450 where five grams make no dish. Quarters of a hundred are round, and tens where they are a larger share. */
export function unroundness(value: Exact): Measure['awkwardness'] {
  if (value.lessThan(100) || value.greaterThan(500) || value.modulo(25).isZero()) return 0;
  if (!value.modulo(10).isZero()) return 0.5;
  return value.lessThan(200) ? 0 : 0.25;
}
