import { Exact } from '../exact.js';
import type { Pack, Sold } from '../food/food.js';

/** A number of packs of one size. */
export interface WholePacks {
  pack: Pack;
  count: Exact;
  /** Contents over the need, less one. */
  drift: Exact;
}

/** Packs within this of each other count as equal. */
export const equalPacks = new Exact('0.03');
/** A use-whole food may be this far from its need. */
export const wholeLimit = new Exact('0.1');

/**
 * The whole (or half, where the food allows it) packs of one size that are nearest to a need.
 *
 * @param grams Net weight needed.
 * @param drainedGrams Drained weight needed, compared only where the shop's pack has one too.
 */
export function nearestPacks(grams: Exact, drainedGrams: Exact | null, sold: Sold): WholePacks | null {
  let best: WholePacks | null = null;
  for (const pack of sold.packs) {
    if (pack.whole === 'no') continue;
    const byDrained = drainedGrams !== null && pack.drainedGrams !== null;
    const need = byDrained ? drainedGrams : grams;
    const size = byDrained && pack.drainedGrams !== null ? pack.drainedGrams : pack.grams;
    const step = new Exact(pack.whole === 'half' ? '0.5' : 1);
    const count = Exact.max(need.dividedBy(size).dividedBy(step).round().times(step), step);
    const found = { pack, count, drift: count.times(size).dividedBy(need).minus(1) };
    if (best === null || closer(found, best)) best = found;
  }
  return best;
}

/** What is needed of a use-whole food: one end of a range, or all there is. */
export interface PackNeed {
  grams: Exact;
  drainedGrams: Exact | null;
}

/**
 * Whole packs of one size for both ends of a range: nobody buys two sizes for `1–2 tins`.
 *
 * @returns One entry a need, of the size whose larger drift is least; null where no pack is used whole.
 */
export function packsForEnds(needs: readonly PackNeed[], sold: Sold): WholePacks[] | null {
  const bySize = sold.packs.map((pack) =>
    needs.flatMap(({ grams, drainedGrams }) => nearestPacks(grams, drainedGrams, { ...sold, packs: [pack] }) ?? []),
  );
  const worst = (packs: readonly WholePacks[]): WholePacks | null =>
    packs.reduce<WholePacks | null>((far, each) => (far === null || closer(far, each) ? each : far), null);
  let best: WholePacks[] | null = null;
  for (const packs of bySize) {
    const own = worst(packs);
    const least = best === null ? null : worst(best);
    if (own !== null && (least === null || closer(own, least))) best = packs;
  }
  return best;
}

/** Less drift first, then fewer packs. Drifts within a thousandth are the same to a cook. */
function closer(one: WholePacks, other: WholePacks): boolean {
  const difference = one.drift.abs().minus(other.drift.abs());
  if (difference.abs().lessThan('0.001')) return one.count.lessThan(other.count);
  return difference.isNegative();
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
