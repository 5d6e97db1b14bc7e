import { Exact } from '@retare/core';
import { z } from 'zod';

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

/** A schema for an exact number; `takes` is the phrase that a message says of it. */
const exactNumber = (takes: string, allows: (value: Exact) => boolean) =>
  z.union([z.number(), z.string()], { error: takes }).refine(
    (written) => {
      const value = readExact(written);
      return value !== null && allows(value);
    },
    { error: takes },
  );

/** A number above 0, such as `14.175` or `1/3`. */
export const aboveZero = exactNumber('takes a number above 0, such as `14.175` or `1/3`', (value) => value.gt(0));

/** A number, 0 or above. */
export const zeroOrMore = exactNumber('takes a number, 0 or above', (value) => value.gte(0));

/** A part of a whole. */
export const fraction = exactNumber('takes a fraction from 0 to 1', (value) => value.gt(0) && value.lte(1));

/** A whole number above 0. */
export const wholeNumber = z
  .number({ error: 'takes a whole number above 0' })
  .int({ error: 'takes a whole number above 0' })
  .positive({ error: 'takes a whole number above 0' });
