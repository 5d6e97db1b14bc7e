import { defaultWeights, type RatioLimits, type Weights } from '@retare/core';
import { z } from 'zod';

/** The weights without the limits, which stand in a block of their own. */
type PlainWeights = Omit<Weights, 'limits'>;

const { limits: defaultLimits, ...plainWeights } = defaultWeights;

const weight = z
  .number({ error: 'takes a number, 0 or above' })
  .min(0, { error: 'takes a number, 0 or above' })
  .optional();
const takesLimit = 'takes a fraction from 0 to 1';
const limit = z.number({ error: takesLimit }).min(0, { error: takesLimit }).max(1, { error: takesLimit }).optional();

/** A block that may hold a number for each key of the defaults, written `with-hyphens`. */
function numbersLike<Value extends z.ZodType>(defaults: object, value: Value) {
  return z.strictObject(Object.fromEntries(Object.keys(defaults).map((key) => [hyphened(key), value])));
}

/** What versions are re-authored by: the keys and defaults are those of the core. */
export const reauthoringSchema = z.strictObject({
  weights: numbersLike(plainWeights, weight)
    .optional()
    .describe('What drift, batch, leftovers and awkward amounts cost: see the README of @retare/core.'),
  limits: numbersLike(defaultLimits, limit)
    .optional()
    .describe('How far each guarded ratio may drift from the native one: 0.1 is 10 %.'),
});

/** Both blocks over the defaults. */
export function reauthoringOf(yaml: z.infer<typeof reauthoringSchema> | undefined): Weights {
  return {
    ...over<PlainWeights>(plainWeights, yaml?.weights),
    limits: over<RatioLimits>(defaultLimits, yaml?.limits),
  };
}

function over<Numbers extends object>(defaults: Numbers, written: Readonly<Record<string, unknown>> = {}): Numbers {
  const entries = Object.entries(defaults).map(([key, value]) => [key, written[hyphened(key)] ?? value]);
  // Sound: the keys are those of the defaults, and the schema lets only numbers in.
  return Object.fromEntries(entries) as Numbers;
}

/** `leftoverFresh` as YAML has it: `leftover-fresh`. */
function hyphened(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}
