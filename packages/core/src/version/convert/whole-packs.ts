import { Exact, toStep } from '../../exact.js';
import type { Food, Pack, Sold } from '../../food/food.js';
import { equalPacks } from '../../kitchen/shop/equal-packs.js';
import { remainderOf } from '../../kitchen/shop/remainder.js';

/** A number of packs of one size. */
export interface WholePacks {
  pack: Pack;
  count: Exact;
  /** Contents over the need, less one. */
  drift: Exact;
}

/** A use-whole food may be this far from its need. */
export const wholeLimit = new Exact('0.1');

/** What is needed of a use-whole food: one end of a range, or all there is. */
export interface PackNeed {
  /** Net weight. */
  grams: Exact;
  /** Drained weight, compared only where the shop's pack has one too. */
  drainedGrams: Exact | null;
}

/**
 * Whole packs (or halves, where the food allows it) of one size for both ends of a range: nobody buys two sizes for `1–2 tins`.
 *
 * @returns One entry a need: of the usual size if that is within the limit, else of the size that is nearest; of sizes that count as
 *   equal the fewest packs. Null where no pack is used whole.
 */
export function packsForEnds(needs: readonly PackNeed[], food: Food, sold: Sold): WholePacks[] | null {
  const sizes = sold.packs
    .filter(({ whole }) => whole !== 'no')
    .map((pack) => packsOfSize(pack, needs, isHalved(food, pack) ? half : one));
  sizes.sort((one, other) => one.worst.comparedTo(other.worst));
  const first = sizes.find(({ pack, worst }) => pack.usual && worst.lessThanOrEqualTo(wholeLimit)) ?? sizes[0];
  if (first === undefined) return null;
  const equal = sizes.filter((each) => each.packs.every((packs, at) => countsAsEqual(packs, first.packs[at])));
  return (
    equal.sort((each, other) => lastBought(each) - lastBought(other) || halves(each) - halves(other))[0]?.packs ??
    first.packs
  );
}

const [half, one] = [new Exact('0.5'), new Exact(1)];

/** Whether a cook uses half of a pack: only where the other half is kept; one that goes off first is a pack wasted. */
export function isHalved({ keeps }: Food, { whole, grams }: Pack): boolean {
  const each = grams.toNumber();
  return whole === 'half' && remainderOf(keeps, each, each / 2) === 'keeps';
}

/** Packs of one size, one entry a need. */
interface PacksOfSize {
  pack: Pack;
  packs: WholePacks[];
  /** Their largest drift, without its sign. */
  worst: Exact;
}

function packsOfSize(pack: Pack, needs: readonly PackNeed[], step: Exact): PacksOfSize {
  const packs = needs.map((need) => nearestCount(pack, need, step));
  return { pack, packs, worst: Exact.max(0, ...packs.map(({ drift }) => drift.abs())) };
}

function nearestCount(pack: Pack, { grams, drainedGrams }: PackNeed, step: Exact): WholePacks {
  const byDrained = drainedGrams !== null && pack.drainedGrams !== null;
  const need = byDrained ? drainedGrams : grams;
  const size = byDrained && pack.drainedGrams !== null ? pack.drainedGrams : pack.grams;
  const count = Exact.max(toStep(need.dividedBy(size), step), step);
  return { pack, count, drift: count.times(size).dividedBy(need).minus(1) };
}

/** Whether packs hold as much as others, but for 3 %, and are no further from the need than a cook would take. */
function countsAsEqual({ drift }: WholePacks, other: WholePacks | undefined): boolean {
  if (other === undefined || drift.abs().greaterThan(Exact.max(wholeLimit, other.drift.abs()))) return false;
  return drift.plus(1).dividedBy(other.drift.plus(1)).minus(1).abs().lessThanOrEqualTo(equalPacks);
}

/** Half a pack is bought whole. */
function lastBought({ packs }: PacksOfSize): number {
  return packs.at(-1)?.count.ceil().toNumber() ?? 0;
}

/** Of as many packs those of which nothing is left are taken first. */
function halves({ packs }: PacksOfSize): number {
  return packs.filter(({ count }) => !count.isInteger()).length;
}

/** The shop's pack whose size counts as equal to one that is written. */
export function samePack(grams: Exact, sold: Sold | null): Pack | null {
  if (sold === null) return null;
  const near = sold.packs
    .map((pack) => ({ pack, difference: pack.grams.dividedBy(grams).minus(1).abs() }))
    .filter(({ difference }) => difference.lessThanOrEqualTo(equalPacks))
    .sort((a, b) => a.difference.comparedTo(b.difference));
  return near[0]?.pack ?? null;
}
