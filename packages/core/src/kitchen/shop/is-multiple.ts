import { Exact } from '../../exact.js';

/** A weight this near to whole packs or counter steps is meant to be on them, as a fraction. */
export const onTheMark = new Exact('0.005');

/** Whether a size is so many times a step, but for a fraction of it, and at least once. */
export function isMultiple(size: Exact, step: Exact, within: Exact): boolean {
  const count = size.dividedBy(step).round();
  return !count.isZero() && count.times(step).dividedBy(size).minus(1).abs().lessThanOrEqualTo(within);
}
