import { z } from 'zod';
import { identifier, text } from './text.js';
import { ruleNames, severities } from './words.js';

const takesFraction = 'takes a fraction from 0 to 1';
const severity = Object.fromEntries(ruleNames.map((rule) => [rule, z.enum(severities).optional()])) as Record<
  (typeof ruleNames)[number],
  z.ZodOptional<z.ZodEnum<{ error: 'error'; warning: 'warning'; off: 'off' }>>
>;

/** `retare.yaml`: every key may be left out. */
export const settingsSchema = z.strictObject({
  kitchens: z.array(identifier).min(1, { error: 'takes at least one kitchen' }).optional(),
  kitchen: identifier.optional(),
  'must-hold': z.array(identifier).optional(),
  severity: z.strictObject(severity).optional(),
  tolerance: z
    .number({ error: takesFraction })
    .min(0, { error: takesFraction })
    .max(1, { error: takesFraction })
    .optional(),
  larder: text.optional(),
  posts: z.array(text).min(1, { error: 'takes at least one glob' }).optional(),
});

/** `retare.yaml`, as data. */
export type SettingsYaml = z.infer<typeof settingsSchema>;
