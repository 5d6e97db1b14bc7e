import type { Pack, Sold } from '../food/food.js';
import { leastLeftGrams } from '../kitchen/buy.js';
import type { Demand } from './demand.js';
import type { Weights } from './weights.js';

/**
 * What remains of the packs bought, as a share of them, by how it keeps, and more where anything is left at all: a pack that can be used up is. A line that weighs nothing is not enlarged to use its pack up.
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
  const { bought, left } = leftOf(size, sold.packs);
  const cost = freezes ? weights.leftoverFrozen : days < 7 ? weights.leftoverFresh : 0;
  const share = bought === 0 ? 0 : cost * (left / bought);
  return left > usedUp * bought && days < keepsLong ? share + weights.packNotUsedUp : share;
}

/** Days: a block of butter is used up some other time. */
const keepsLong = 14;
/** Less than this share of a pack is what no scale shows. */
const usedUp = 0.005;

type Left = ReturnType<typeof leastLeftGrams>;

const lefts = new WeakMap<readonly Pack[], Map<number, Left>>();

/** What is left of the packs bought; looked up, since the same measures of a food come again in every recipe. */
function leftOf(grams: number, packs: readonly Pack[]): Left {
  let known = lefts.get(packs);
  if (known === undefined) {
    known = new Map();
    lefts.set(packs, known);
  }
  const rounded = Math.round(grams * 1e6);
  let left = known.get(rounded);
  if (left === undefined) {
    left = leastLeftGrams(grams, packs);
    known.set(rounded, left);
  }
  return left;
}
