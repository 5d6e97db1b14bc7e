import { Exact } from '@retare/core';

/** A number as JSON has it here: a string of digits, never in powers of ten. */
export type Decimal = string;

/**
 * A number as a decimal string: an exact one to twelve places, one that a search came to on six, or with six digits where it is small;
 * null for one that is not known.
 */
export function decimal(value: Exact | number): Decimal;
export function decimal(value: Exact | number | null): Decimal | null;
export function decimal(value: Exact | number | null): Decimal | null {
  if (value === null) return null;
  if (typeof value !== 'number') return value.toDecimalPlaces(12).toFixed();
  const found = new Exact(value);
  return found.toDecimalPlaces(found.isZero() ? 0 : Math.max(6, 5 - found.e)).toFixed();
}
