import type { Exact } from '../../exact.js';
import { awkwardnesses, type Measure } from './measure.js';

/** The entry of an ascending table that is nearest to a size by ratio, with its signed error as a fraction; null for an empty table. */
export function nearestOf(measures: readonly Measure[], size: Exact): { measure: Measure; error: Exact } | null {
  const wanted = size.toNumber();
  let low = 0;
  let high = measures.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((measures[middle]?.near ?? 0) < wanted) low = middle + 1;
    else high = middle;
  }
  const above = measures[low];
  const below = measures[low - 1];
  if (above === undefined) return null;
  const nearest = below !== undefined && ratio(wanted, below.near) < ratio(wanted, above.near) ? below : above;
  return { measure: nearest, error: nearest.size.dividedBy(size).minus(1) };
}

function ratio(a: number, b: number): number {
  return a > b ? a / b : b / a;
}

const levels = new WeakMap<readonly Measure[], Measure[][]>();

/** The nearest measure of each awkwardness: an easier one may be worth a little more error. */
export function nearestOfEach(measures: readonly Measure[], size: Exact): { measure: Measure; error: Exact }[] {
  let byLevel = levels.get(measures);
  if (byLevel === undefined) {
    byLevel = awkwardnesses.map((level) => measures.filter(({ awkwardness }) => awkwardness === level));
    levels.set(measures, byLevel);
  }
  return byLevel.flatMap((level) => nearestOf(level, size) ?? []);
}
