import type { Term } from '../../amount/stated.js';
import { type Exact, middleOf } from '../../exact.js';
import type { Weighed } from '../../food/weigh.js';
import type { WeighedAmount } from './weighing.js';

/** One end, or both of a range. */
export function endsOf({ low, high }: WeighedAmount): Weighed[] {
  return high === null ? [low] : [low, high];
}

/** A count, or a range of counts where the upper end is above the lower. */
export function rangeOf(low: Exact, high: Exact | null): Term {
  return { low, high: high?.greaterThan(low) ? high : null, unit: 'count' };
}

/** Upper end over lower end; 1 where there is no range. */
export function spreadOf({ low, high }: WeighedAmount): number {
  const [from, to] = [low.millilitres ?? low.grams, high?.millilitres ?? high?.grams];
  return from === null || to == null || from.isZero() ? 1 : to.dividedBy(from).toNumber();
}

/** A range counts by its geometric mean. */
export function middle({ low, high }: WeighedAmount): Weighed {
  if (high === null) return low;
  const mean = (a: Exact | null, b: Exact | null): Exact | null => (a === null || b === null ? null : middleOf(a, b));
  return { grams: mean(low.grams, high.grams), millilitres: mean(low.millilitres, high.millilitres) };
}
