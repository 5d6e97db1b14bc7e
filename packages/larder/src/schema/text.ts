import { z } from 'zod';

const filled = (takes: string) => z.string({ error: takes }).refine((text) => text.trim() !== '', { error: takes });

/** Words that are not blank. */
export const text = filled('takes words');

/** Where a value comes from. */
export const source = filled(
  'takes the source of the value: a publication, `common practice, no source` or `from memory`',
);

/** The id of a food, kitchen or pan. */
export const identifier = z
  .string({ error: 'takes an id in lower-case letters, digits and hyphens' })
  .regex(/^[a-z0-9][a-z0-9-]*$/, { error: 'takes an id in lower-case letters, digits and hyphens' });
