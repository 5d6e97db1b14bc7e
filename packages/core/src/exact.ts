import { Decimal } from 'decimal.js';

/**
 * The project's decimal number. decimal.js keeps its settings on the constructor, so a clone keeps ours to ourselves.
 * Forty digits hold every exact unit factor and any product of two of them.
 */
export const Exact = Decimal.clone({ precision: 40 });

/** An exact decimal number: every amount that is shown is one. */
export type Exact = Decimal;

/** The multiple of a step that is nearest to a value; half way between two the one further from zero. */
export function toStep(value: Exact, step: Decimal.Value): Exact {
  return value.dividedBy(step).round().times(step);
}

/** A part over a whole; null where one of them is not known, or the whole is nothing. */
export function ratioOf(part: Exact | null, whole: Exact | null): Exact | null {
  return part === null || whole === null || whole.isZero() ? null : part.dividedBy(whole);
}

/** What a range counts by: the geometric mean of its ends; the one number where it has no upper end. */
export function middleOf(low: Exact, high: Exact | null): Exact {
  return high === null ? low : low.times(high).sqrt();
}

/** The sum of what is taken of each. */
export function sumOf<T>(all: readonly T[], of: (each: T) => Exact): Exact {
  return all.reduce((sum, each) => sum.plus(of(each)), new Exact(0));
}
