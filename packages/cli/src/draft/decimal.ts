import { Exact } from '@retare/core';

/** A number as a decimal string of at most six places; null for one that is not known. */
export function decimal(value: Exact | number): string;
export function decimal(value: Exact | number | null): string | null;
export function decimal(value: Exact | number | null): string | null {
  return value === null ? null : new Exact(value).toDecimalPlaces(6).toFixed();
}
