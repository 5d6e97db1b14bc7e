import type { Exact } from '../../exact.js';
import { awkwardnesses, type Measure } from './measure.js';

/** A measure that a size lands on. */
export interface Landed {
  measure: Measure;
  /** Signed, as a fraction. */
  error: Exact;
}

/** A level of awkwardness counts as much as this error. */
const awkwardnessCost = 0.01;
/** Another kind of unit than the author's counts as much as this error. */
export const otherKindCost = 0.03;

/** What a landing costs, as a logarithm: its error first, then how awkward it is to measure. */
export function landingCost({ measure, error }: Landed): number {
  return Math.abs(Math.log1p(error.toNumber())) + awkwardnessCost * measure.awkwardness;
}

/** The entry of an ascending table that is nearest to a size by ratio, with its signed error as a fraction; null for an empty table. */
export function nearestOf(measures: readonly Measure[], size: Exact): Landed | null {
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
export function nearestOfEach(measures: readonly Measure[], size: Exact): Landed[] {
  let byLevel = levels.get(measures);
  if (byLevel === undefined) {
    byLevel = awkwardnesses.map((level) => measures.filter(({ awkwardness }) => awkwardness === level));
    levels.set(measures, byLevel);
  }
  return byLevel.flatMap((level) => nearestOf(level, size) ?? []);
}
