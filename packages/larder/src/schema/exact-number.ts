import { Exact } from '@retare/core';

// A decimal, or a fraction of two: nothing with a sign or an exponent belongs in kitchen data.
const decimalOrFraction = /^\d+(?:\.\d+)?(?:\/\d+)?$/;

/**
 * Reads a number as the data files write it: `0.25`, `1/4`, `28.349523125`.
 *
 * @returns The exact value (a fraction to 40 digits), or null if it is no such number.
 */
export function readExact(written: number | string): Exact | null {
  const text = String(written);
  if (!decimalOrFraction.test(text)) return null;
  const [numerator = '', denominator] = text.split('/');
  if (denominator === undefined) return new Exact(numerator);
  const below = new Exact(denominator);
  return below.isZero() ? null : new Exact(numerator).dividedBy(below);
}

/**
 * The exact value of a number that its schema has let through.
 *
 * @throws {RangeError} If it is no number: data that was not checked.
 */
export function exactOf(written: number | string): Exact {
  const value = readExact(written);
  if (value === null) throw new RangeError(`Not a number of the data files: ${written}`);
  return value;
}
