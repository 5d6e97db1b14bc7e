import { type Stated, statedIn, stateOne, type Term } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import type { Demand } from '../search/demand.js';
import type { Weights } from '../weights.js';
import { widthCost } from './measured-pairs.js';

interface Counted {
  stated: Stated;
  fixed: number;
}

/** A count in words; of a range one as wide as the author's in whole steps, or, less readily, one number. */
export function countedOr(
  demand: Demand,
  count: number,
  unit: Term['unit'],
  step: number,
  weights: Weights,
): Counted[] {
  const approx = statedIn(demand.reading)?.approx ?? false;
  const state = (high: number | null): Stated =>
    stateOne({ low: new Exact(count), high: high === null ? null : new Exact(high), unit }, approx);
  const single = { stated: state(null), fixed: widthCost(1, demand, weights) };
  const upper = Math.max(Math.round((count * demand.spread) / step) * step, demand.spread > 1 ? count + step : 0);
  return upper > count
    ? [{ stated: state(upper), fixed: widthCost(upper / count, demand, weights) }, single]
    : [single];
}

/** The upper end of an amount, or its one number. */
export function upperEnd({ statements }: Stated): number {
  const term = statements[0]?.[0];
  return term === undefined ? 0 : (term.high ?? term.low).toNumber();
}

/** The geometric mean of a count and its upper end. */
export function meanOf(stated: Stated): number {
  const term = stated.statements[0]?.[0];
  if (term === undefined) return 0;
  const low = term.low.toNumber();
  return term.high === null ? low : Math.sqrt(low * term.high.toNumber());
}

/** Counts from the least to the most that is in reach, in steps. */
export function countsWithin(each: number, step: number, { least, most }: { least: number; most: number }): number[] {
  const counts: number[] = [];
  // One step under the reach: a range from there has its middle within it.
  const first = Math.max(step, (Math.ceil(least / each / step) - 1) * step);
  for (let count = first; count * each <= most; count += step) counts.push(count);
  return counts;
}
