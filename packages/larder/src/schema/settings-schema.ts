import { z } from 'zod';
import { reauthoringSchema } from './reauthoring-schema.js';
import { identifier, text } from './text.js';
import { ruleNames, severities } from './words.js';

const takesFraction = 'takes a fraction from 0 to 1';
const severity = Object.fromEntries(ruleNames.map((rule) => [rule, z.enum(severities).optional()])) as Record<
  (typeof ruleNames)[number],
  z.ZodOptional<z.ZodEnum<{ error: 'error'; warning: 'warning'; off: 'off' }>>
>;

/** `retare.yaml`: every key may be left out. */
export const settingsSchema = z.strictObject({
  kitchens: z
    .array(identifier)
    .min(1, { error: 'takes at least one kitchen' })
    .optional()
    .describe('Kitchens served, in the order of the chooser.'),
  kitchen: identifier.optional().describe('The kitchen that posts are written in unless they say otherwise.'),
  'must-hold': z.array(identifier).optional().describe('Kitchens for which a bad conversion is an error.'),
  severity: z.strictObject(severity).optional().describe('How findings count, by rule.'),
  tolerance: z
    .number({ error: takesFraction })
    .min(0, { error: takesFraction })
    .max(1, { error: takesFraction })
    .optional()
    .describe('How far an author’s amount may be from a measurable one: 0.05 is 5 %.'),
  reauthoring: reauthoringSchema.optional().describe('Weights and limits that versions are re-authored by.'),
  larder: text.optional().describe('The site’s own foods and kitchens: a path from this file’s folder.'),
  posts: z
    .array(text)
    .min(1, { error: 'takes at least one glob' })
    .optional()
    .describe('Globs of the posts, from this file’s folder.'),
});

/** `retare.yaml`, as data. */
export type SettingsYaml = z.infer<typeof settingsSchema>;
