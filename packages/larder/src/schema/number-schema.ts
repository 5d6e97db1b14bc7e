import type { Exact } from '@retare/core';
import { z } from 'zod';
import { readExact } from './exact-number.js';

/**
 * A schema for an exact number.
 *
 * @param takes The phrase that a message says of it.
 * @param shape What an editor can check of it: the least value, and whether that one is let in.
 */
const exactNumber = (takes: string, allows: (value: Exact) => boolean, shape: object) =>
  z
    .union([z.number(), z.string()], { error: takes })
    .refine(
      (written) => {
        const value = readExact(written);
        return value !== null && allows(value);
      },
      { error: takes },
    )
    .meta({
      description: takes,
      anyOf: [
        { type: 'number', ...shape },
        { type: 'string', pattern: '^\\d+(\\.\\d+)?(/\\d+)?$' },
      ],
    });

/** A number above 0, such as `14.175` or `1/3`. */
export const aboveZero = exactNumber('takes a number above 0, such as `14.175` or `1/3`', (value) => value.gt(0), {
  exclusiveMinimum: 0,
});

/** A number, 0 or above. */
export const zeroOrMore = exactNumber('takes a number, 0 or above', (value) => value.gte(0), { minimum: 0 });

/** A part of a whole. */
export const fraction = exactNumber('takes a fraction from 0 to 1', (value) => value.gt(0) && value.lte(1), {
  exclusiveMinimum: 0,
  maximum: 1,
});

/** A whole number above 0. */
export const wholeNumber = z
  .number({ error: 'takes a whole number above 0' })
  .int({ error: 'takes a whole number above 0' })
  .positive({ error: 'takes a whole number above 0' });
