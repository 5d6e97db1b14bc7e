import { Exact } from '@retare/core';

/** A number as a decimal string: six places, or six digits of one below a thousandth; null for one that is not known. */
export function decimal(value: Exact | number): string;
export function decimal(value: Exact | number | null): string | null;
export function decimal(value: Exact | number | null): string | null {
  if (value === null) return null;
  const exact = new Exact(value);
  const places = exact.isZero() ? 0 : Math.max(6, 5 - exact.e);
  return exact.toDecimalPlaces(places).toFixed();
}
