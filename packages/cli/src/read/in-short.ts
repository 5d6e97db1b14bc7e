import type { Exact } from '@retare/core';
import type { Decimal } from '../decimal.js';

/** A number as it is read at a glance: a decimal string of at most four places; null for none. */
export function inShort(value: Exact): Decimal;
export function inShort(value: Exact | null): Decimal | null;
export function inShort(value: Exact | null): Decimal | null {
  return value === null ? null : value.toDecimalPlaces(4).toFixed();
}
