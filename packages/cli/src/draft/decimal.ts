import { Exact } from '@retare/core';

/** A number as a decimal string of at most six places; null for one that is not known or has no end. */
export function decimal(value: Exact | number): string;
export function decimal(value: Exact | number | null): string | null;
export function decimal(value: Exact | number | null): string | null {
  if (value === null) return null;
  const exact = new Exact(value);
  return exact.isFinite() ? exact.toDecimalPlaces(6).toFixed() : null;
}
