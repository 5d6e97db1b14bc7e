import type { Pack, Sold } from '../food/food.js';
import { leastLeftGrams } from '../kitchen/buy.js';
import type { Demand } from './demand.js';
import type { Weights } from './weights.js';

/**
 * What remains of the packs bought, as a share of them, by how it keeps. A line that weighs nothing is not enlarged to use its pack up.
 */
export function leftoverCost(
  size: number,
  { food, base, weight }: Demand,
  sold: Sold | null,
  weights: Weights,
): number {
  if (
    weight === 0 ||
    food === null ||
    sold === null ||
    base !== 'g' ||
    sold.loose ||
    sold.tap ||
    sold.packs.length === 0
  )
    return 0;
  const { where, days, freezes } = food.keeps;
  if (where !== 'fridge' || days === null) return 0;
  const cost = freezes ? weights.leftoverFrozen : days < 7 ? weights.leftoverFresh : 0;
  return cost === 0 ? 0 : cost * shareLeft(size, sold.packs);
}

const shares = new WeakMap<readonly Pack[], Map<number, number>>();

/** Share of the packs bought that is left; looked up, since the same measures of a food come again in every recipe. */
function shareLeft(grams: number, packs: readonly Pack[]): number {
  let known = shares.get(packs);
  if (known === undefined) {
    known = new Map();
    shares.set(packs, known);
  }
  const rounded = Math.round(grams * 1e6);
  let share = known.get(rounded);
  if (share === undefined) {
    const { bought, left } = leastLeftGrams(grams, packs);
    share = bought === 0 ? 0 : left / bought;
    known.set(rounded, share);
  }
  return share;
}
