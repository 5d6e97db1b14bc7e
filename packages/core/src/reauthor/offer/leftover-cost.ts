import type { Keeping, Pack, Sold } from '../../food/food.js';
import { leastLeftGrams } from '../../kitchen/shop/buy.js';
import { piecePacks } from '../../version/judge/shop.js';
import type { Demand } from '../search/demand.js';
import type { Weights } from '../weights.js';

/** What is bought and what is left of it, in any one unit. */
interface Left {
  bought: number;
  left: number;
}

/**
 * What remains of the packs bought for an amount, in the demand's base, as a share of them, by how it keeps, and more where anything is
 * left at all: a pack that can be used up is.
 */
export function leftoverCost(size: number, demand: Demand, sold: Sold | null, weights: Weights): number {
  const { food, base } = demand;
  if (food === null || !isPacked(sold) || base !== 'g') return 0;
  return costOfLeft(leftOf(size, sold.packs), food.keeps, weights);
}

/** The same of a number of pieces, which packs may count. */
export function leftoverOfPieces(
  count: number,
  unit: string,
  size: number,
  demand: Demand,
  sold: Sold | null,
  weights: Weights,
): number {
  const { food } = demand;
  if (food === null || !isPacked(sold) || sold.singly) return 0;
  const pieces = piecePacks(sold, unit);
  if (pieces === null) return leftoverCost(size, demand, sold, weights);
  return costOfLeft(leftOf(count, pieces.byPieces.packs), food.keeps, weights);
}

/** The same of a number of packs or eggs, of the last of which a part may be left. */
export function leftoverOfPacks(count: number, keeps: Keeps | null, weights: Weights): number {
  const bought = Math.ceil(count - 1e-9);
  return keeps === null ? 0 : costOfLeft({ bought, left: Math.max(bought - count, 0) }, keeps, weights);
}

type Keeps = Pick<Keeping, 'where' | 'days' | 'freezes'>;

function isPacked(sold: Sold | null): sold is Sold {
  return sold !== null && !sold.loose && !sold.tap && sold.packs.length > 0;
}

/** What a remainder costs. */
function costOfLeft({ bought, left }: Left, { where, days, freezes }: Keeps, weights: Weights): number {
  if (where !== 'fridge' || days === null) return 0;
  const cost = freezes ? weights.leftoverFrozen : days < 7 ? weights.leftoverFresh : 0;
  const share = bought === 0 ? 0 : cost * (left / bought);
  return left > usedUp * bought && days < keepsLong ? share + weights.packNotUsedUp : share;
}

/** Days: a block of butter is used up some other time. */
const keepsLong = 14;
/** Less than this share of a pack is what no scale shows: 225 g of 8 oz. */
const usedUp = 0.01;
/** Up to this share an amount may be above what its packs hold. */
const noMore = 0.005;

/** Whether an amount is more than the packs hold that are bought for it: packs a little under a need count as equal to it. */
export function isShort(size: number, sold: Sold | null): boolean {
  return isPacked(sold) && leftOf(size, sold.packs).bought < size * (1 - noMore);
}

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
    // Of the rounded weight, so that what is remembered does not hang on which recipe asked first.
    left = leastLeftGrams(rounded / 1e6, packs);
    known.set(rounded, left);
  }
  return left;
}
