import { Exact } from '../exact.js';
import type { Food } from '../food/food.js';
import type { EggSize, Kitchen } from './kitchen.js';

/** Whole eggs of one size. */
export interface Eggs {
  count: Exact;
  size: EggSize;
  /** Edible grams over the need, less one. */
  drift: Exact;
}

/** White and yolk, as a part of the weight in the shell. US classes come out within 2 % of USDA SR26 01123. */
export const ediblePart = new Exact('0.88');

/**
 * What a food is of an egg's edible weight, by food id. USDA SR26: of the 50 g of a large egg (01123) the white is 33 g (01124) and the
 * yolk 17 g (01125). Of a larger egg the white is a little more; no table at hand says how much.
 */
const parts: ReadonlyMap<string, Exact> = new Map([
  ['egg', new Exact(1)],
  ['egg-white', new Exact('0.66')],
  ['egg-yolk', new Exact('0.34')],
]);

/** The part of an egg that a food is: 1 of whole eggs; null of any other food. */
export function partOfEgg(food: Food | null): Exact | null {
  return parts.get(food?.id ?? '') ?? null;
}

/** Whether two kitchens' shops sell the same eggs. */
export function sameEggs({ eggs: one }: Kitchen, { eggs: other }: Kitchen): boolean {
  return (
    one === other ||
    (one.usual === other.usual &&
      one.sizes.length === other.sizes.length &&
      one.sizes.every((size, at) => other.sizes[at]?.edibleGrams.equals(size.edibleGrams)))
  );
}

/** The size class that a line names, or the kitchen's usual one. */
export function eggSizeNamed({ eggs }: Kitchen, words: string): EggSize | null {
  const folded = words.toLowerCase();
  const named = (name: string): EggSize | undefined =>
    eggs.sizes.find((size) => [size.name, ...size.also].some((each) => each.toLowerCase() === name));
  return named(folded) ?? named(eggs.usual.toLowerCase()) ?? null;
}

/**
 * Whole eggs nearest to each of some edible weights, all of one size, since nobody buys two for `4–5 eggs`: of the usual size if that is
 * within the limit, else of another size sold there, on every shelf before seldom.
 *
 * @param needs Edible grams, such as both ends of a range.
 * @param limit Largest drift of any of them, as a fraction.
 * @returns One entry a need; null where no size is near enough to all of them.
 */
export function wholeEggsFor(kitchen: Kitchen, needs: readonly Exact[], limit: Exact): Eggs[] | null {
  const bySize = kitchen.eggs.sizes.map((size) => {
    const eggs = needs.map((grams) => nearestCount(size, grams));
    return { size, eggs, worst: Exact.max(0, ...eggs.map(({ drift }) => drift.abs())) };
  });
  const near = bySize.filter(({ worst }) => worst.lessThanOrEqualTo(limit));
  const usual = near.find(({ size }) => size.name === kitchen.eggs.usual);
  const others = near.sort((a, b) => Number(a.size.seldom) - Number(b.size.seldom) || a.worst.comparedTo(b.worst));
  return (usual ?? others[0])?.eggs ?? null;
}

/** Whole eggs of one size for each need; null where a need is further off than the limit. */
export function eggsOfSize(size: EggSize, needs: readonly Exact[], limit: Exact): Eggs[] | null {
  const eggs = needs.map((grams) => nearestCount(size, grams));
  return eggs.every(({ drift }) => drift.abs().lessThanOrEqualTo(limit)) ? eggs : null;
}

function nearestCount(size: EggSize, grams: Exact): Eggs {
  const count = Exact.max(grams.dividedBy(size.edibleGrams).round(), 1);
  return { count, size, drift: count.times(size.edibleGrams).dividedBy(grams).minus(1) };
}
