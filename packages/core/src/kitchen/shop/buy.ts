import { Exact, sumOf } from '../../exact.js';
import type { Food, Pack, Sold } from '../../food/food.js';
import { equalPacks } from './equal-packs.js';

/** What to buy for a need, and what remains. */
export interface Bought {
  packs: { count: number; pack: Pack }[];
  /** Weighed off by the shop instead of packed. */
  looseGrams: Exact | null;
  leftoverGrams: Exact;
}

/** How a kitchen's shops sell a food; null where the larder says nothing of it. */
export function soldIn(food: Food, kitchen: string): Sold | null {
  return food.sold[kitchen] ?? food.sold.any ?? null;
}

/** Whether a cook there uses the food only by whole packs or halves. */
export function isUseWhole(sold: Sold | null): boolean {
  return sold !== null && sold.packs.length > 0 && !sold.loose && sold.packs.every((pack) => pack.whole !== 'no');
}

/** What is measured out of a pack: of olives, what is left when the brine is poured off. Whole packs are compared by their net weight. */
export function contentsOf({ whole, grams, drainedGrams }: Pack): Exact {
  return whole === 'no' && drainedGrams !== null ? drainedGrams : grams;
}

/**
 * The packs to buy for a need: those with the least left over, then the fewest.
 *
 * @param grams What the recipe needs, above zero.
 * @param sold How the shops sell the food.
 * @param stepsGrams What the counter weighs off, for food sold loose: the least number of any one of these steps.
 * @returns Null where nothing is known to be sold by weight (singly, from the tap).
 */
export function buy(grams: Exact, sold: Sold, ...stepsGrams: readonly Exact[]): Bought | null {
  if (sold.loose) {
    const looseGrams = Exact.min(
      ...stepsGrams.map((step) => grams.dividedBy(step).toDecimalPlaces(3).ceil().times(step)),
    );
    // Three thirds of a pound are a pound but for the last digit.
    return { packs: [], looseGrams, leftoverGrams: looseGrams.minus(grams).toDecimalPlaces(12) };
  }
  if (sold.packs.length === 0) return null;
  const { counts, sorted } = leastLeft(grams.toNumber(), sold.packs);
  const packs = sorted.flatMap(({ pack }, index) => (counts[index] ? [{ count: counts[index], pack }] : []));
  const total = sumOf(packs, ({ count, pack }) => contentsOf(pack).times(count));
  return { packs, looseGrams: null, leftoverGrams: Exact.max(total.minus(grams), 0) };
}

/** What the packs with the least left over come to for a need, and what is left, in grams as floats: for a search. */
export function leastLeftGrams(grams: number, sizes: readonly Pack[]): { bought: number; left: number } {
  const { counts, sorted } = leastLeft(grams, sizes);
  const bought = sorted.reduce((sum, { near }, index) => sum + near * (counts[index] ?? 0), 0);
  return { bought, left: Math.max(bought - grams, 0) };
}

/** The share of a need that counts as equal to it. */
const leastEnough = 1 - equalPacks.toNumber();

/** Past so many of the largest pack nobody looks for a fit with smaller ones: all before it are of the largest. */
const mostFitted = 40;

interface Shelf {
  pack: Pack;
  near: number;
}

const shelves = new WeakMap<readonly Pack[], Shelf[]>();

/** A shop's packs, largest first. */
function shelfOf(sizes: readonly Pack[]): Shelf[] {
  let shelf = shelves.get(sizes);
  if (shelf === undefined) {
    shelf = sizes.map((pack) => ({ pack, near: contentsOf(pack).toNumber() })).sort((a, b) => b.near - a.near);
    shelves.set(sizes, shelf);
  }
  return shelf;
}

/** How many of each size to buy. Exhaustive over the counts of at most a few sizes: no shop shelf has many. */
function leastLeft(need: number, sizes: readonly Pack[]): { counts: number[]; sorted: Shelf[] } {
  const sorted = shelfOf(sizes);
  let best = { counts: sorted.map(() => 0), left: Number.POSITIVE_INFINITY, packs: Number.POSITIVE_INFINITY };
  const counts = sorted.map(() => 0);
  const enough = need * leastEnough;
  const largest = sorted[0]?.near ?? need;
  const sure = Math.max(0, Math.floor(enough / largest) - mostFitted);
  const search = (index: number, total: number, packs: number): void => {
    if (total >= enough) {
      const left = Math.max(0, total - need);
      const same = Math.abs(left - best.left) <= 1e-9;
      if (left < best.left - 1e-9 || (same && packs < best.packs)) best = { counts: [...counts], left, packs };
      return;
    }
    const size = sorted[index]?.near;
    if (size === undefined) return;
    const most = Math.ceil((enough - total) / size);
    // The last size has to cover the rest; larger ones may be used up to one beyond it.
    for (let count = index === sorted.length - 1 ? most : 0; count <= most; count++) {
      counts[index] = index === 0 ? sure + count : count;
      search(index + 1, total + count * size, packs + count);
      counts[index] = 0;
    }
  };
  search(0, sure * largest, sure);
  return { counts: best.counts, sorted };
}
