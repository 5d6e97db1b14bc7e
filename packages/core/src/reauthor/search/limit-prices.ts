import type { Constraint } from '../ratio/constraint.js';
import type { Open, Share } from './open-demand.js';

/** What is priced. */
export interface Priceable {
  open: readonly Open[];
  /** What is left of each limit. */
  room: readonly number[];
  /** The limits that each demand is in. */
  shares: readonly (readonly Share[])[];
  /** Grams by which one demand can change each limit. */
  scale: readonly number[];
}

/** A price for a gram of each limit. */
export interface Priced {
  prices: Float64Array;
  /** What all that is open costs at least. */
  least: number;
}

/** Rounding of the sums below, as a share of what is summed. */
const rounding = 1e-13;
/** The pace is slowed by this where a move was no better. */
const slower = 0.7;

/** Grams by which the one demand that changes a limit most can change it. */
export function scaleOf({ coefficients }: Constraint, ranges: readonly number[]): number {
  return ranges.reduce((most, range, at) => Math.max(most, Math.abs((coefficients[at] ?? 0) * range)), 1e-6);
}

/**
 * Moves prices uphill by the subgradient, and prices the options by the best that were met. With any prices the cheapest option of each
 * demand together, less the room at its price, costs no more than anything that keeps the limits: the best prices say how much at least.
 *
 * @param from Prices to begin with.
 * @param most Enough, where no more need be known.
 * @param isSure Whether something costs `most`, or a little less is aimed at first.
 * @param moves How often they are moved.
 */
export function movePrices(
  priceable: Priceable,
  from: Float64Array,
  { most, isSure, moves }: { most: number; isSure: boolean; moves: number },
): Priced {
  const { open, shares } = priceable;
  let best: Priced = { prices: from, least: Number.NEGATIVE_INFINITY };
  let prices = from;
  let pace = 1;
  for (let move = 0; move <= moves; move++) {
    const { least, slope } = worth(priceable, prices);
    if (least > best.least) best = { prices, least };
    else pace *= slower;
    if (best.least >= most) break;
    const target = isSure ? most : Math.min(most, best.least * 1.5 + 0.05);
    const next = moved(prices, slope, pace * (target - least), priceable);
    if (next === null) break;
    prices = next;
  }
  for (const { at, options } of open) {
    const price = priceOf(shares[at] ?? [], best.prices);
    for (const option of options) option.priced = option.cost + price * option.grams;
  }
  return best;
}

/** What all costs at least with some prices, and by how much the cheapest options are beyond each limit. */
function worth({ open, room, shares }: Priceable, prices: Float64Array): { least: number; slope: Float64Array } {
  const slope = new Float64Array(room.length);
  let sum = 0;
  let size = 0;
  for (let limit = 0; limit < room.length; limit++) {
    const each = room[limit] ?? 0;
    const paid = (prices[limit] ?? 0) * each;
    slope[limit] = -each;
    sum -= paid;
    size += Math.abs(paid);
  }
  for (const { at, options } of open) {
    const own = shares[at] ?? [];
    const price = priceOf(own, prices);
    let least = Number.POSITIVE_INFINITY;
    let grams = 0;
    for (const option of options) {
      const priced = option.cost + price * option.grams;
      if (priced < least) {
        least = priced;
        grams = option.grams;
      }
    }
    sum += least;
    size += Math.abs(price * grams);
    for (const { limit, coefficient } of own) slope[limit] = (slope[limit] ?? 0) + coefficient * grams;
  }
  return { least: sum - rounding * size, slope };
}

/** Prices of what is beyond its limit rise, others fall to nothing; null where there is nowhere to move. */
function moved(prices: Float64Array, slope: Float64Array, gain: number, { scale }: Priceable): Float64Array | null {
  let steepness = 0;
  for (let limit = 0; limit < slope.length; limit++) {
    const steep = (slope[limit] ?? 0) / (scale[limit] ?? 1);
    if (steep > 0 || (prices[limit] ?? 0) > 0) steepness += steep * steep;
  }
  if (steepness < 1e-18) return null;
  return Float64Array.from(slope, (each, limit) =>
    Math.max(0, (prices[limit] ?? 0) + ((gain / steepness) * each) / (scale[limit] ?? 1) ** 2),
  );
}

function priceOf(shares: readonly Share[], prices: Float64Array): number {
  let price = 0;
  for (const { limit, coefficient } of shares) price += (prices[limit] ?? 0) * coefficient;
  return price;
}
