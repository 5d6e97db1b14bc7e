import { z } from 'zod';
import { aboveZero, wholeNumber, zeroOrMore } from './number-schema.js';
import { identifier, source, text } from './text.js';
import { type kitchenVolumeUnits, massUnits, type safeClasses, volumeUnits, ways } from './words.js';

const none = z.literal('none');
const sized = z.strictObject({ ml: aboveZero, source });
const measureSet = z.strictObject({ wholes: wholeNumber, fractions: z.array(aboveZero) });
const marks = z.array(z.strictObject({ from: zeroOrMore, to: aboveZero, step: aboveZero })).min(1);
const degrees = z.enum(['C', 'F']);

const units = z.strictObject({
  tsp: sized,
  tbsp: sized,
  cup: sized,
  floz: sized.optional(),
  pint: sized.optional(),
  quart: sized.optional(),
  gallon: sized.optional(),
} satisfies Record<(typeof kitchenVolumeUnits)[number], z.ZodType>);

const oven = z.strictObject({
  dial: z.strictObject({ unit: degrees, min: zeroOrMore, max: aboveZero, step: aboveZero, source }),
  fan: z.strictObject({ lower: zeroOrMore, source }),
  gas: z.union([
    none,
    z.strictObject({
      marks: z.array(z.strictObject({ mark: z.union([z.string(), z.number()]), celsius: aboveZero })).min(1),
      source,
    }),
  ]),
  states: z.strictObject({ settings: z.array(z.enum(['conventional', 'fan', 'gas'])).min(1), source }),
});

const pan = z.strictObject({
  name: text,
  // `half sheet pan` says its size by its name alone, `loaf pan` does not
  'by-name': z.boolean().optional(),
  shape: z.enum(['round', 'square', 'rectangle', 'loaf', 'muffin']),
  sides: z.array(aboveZero).min(1).max(2),
  depth: aboveZero.optional(),
  unit: z.enum(['in', 'cm', 'mm']),
  'trade-sizes': z.array(z.strictObject({ size: aboveZero, unit: z.enum([...massUnits, ...volumeUnits]) })).optional(),
  millilitres: aboveZero.optional(),
  source,
});

const eggs = z.strictObject({
  usual: text,
  typical: z.enum(['middle-of-band', 'class-minimum']),
  // `none` takes away a size of the kitchen that is extended. A `seldom` size is not on every shelf; `also` holds other words for it.
  sizes: z.record(
    text,
    z.union([
      none,
      z.strictObject({ typical: aboveZero, also: z.array(text).optional(), seldom: z.boolean().optional(), source }),
    ]),
  ),
  source,
});

const safe = z.strictObject({
  name: text,
  temperature: aboveZero,
  unit: degrees,
  hold: text.optional(),
  authority: text,
  source,
});

const safeTable = z.strictObject({
  poultry: safe,
  'poultry-pieces': safe,
  'ground-poultry': safe,
  'ground-meat': safe,
  'whole-meat': safe,
  game: safe,
  pork: safe,
  ham: safe,
  sausage: safe,
  fish: safe,
  shellfish: safe,
  'egg-dish': safe,
  casserole: safe,
  leftovers: safe,
  stuffing: safe,
  offal: safe,
} satisfies Record<(typeof safeClasses)[number], z.ZodType>);

/** One kitchen, whole. */
export const kitchenSchema = z.strictObject({
  name: text,
  adjective: text,
  regions: z.strictObject({
    codes: z.array(z.string().regex(/^[A-Z]{2}$/, { error: 'takes a two-letter region code' })),
    source,
  }),
  units,
  writes: z.strictObject({
    mass: z.array(z.enum(massUnits)).min(1),
    volume: z.array(z.enum(volumeUnits)).min(1),
    length: z.enum(['in', 'cm']),
    temperature: degrees,
    packs: z.enum(['brackets', 'times']),
    source,
  }),
  spoons: z.strictObject({ tsp: measureSet, tbsp: measureSet, source }),
  cups: z.union([none, measureSet.extend({ 'plus-tablespoons': z.number().int().min(0), source })]),
  jug: z.union([none, z.strictObject({ unit: z.enum(['ml', 'floz']), marks, source })]),
  scale: z.union([none, z.strictObject({ unit: z.enum(['g', 'oz']), marks, source })]),
  fill: z.strictObject({ as: text, source }),
  measures: z.strictObject({ pours: z.array(z.enum(ways)).min(1), dry: z.array(z.enum(ways)).min(1), source }),
  counter: z.strictObject({ unit: z.enum(['g', 'lb']), step: aboveZero, source }),
  oven,
  pans: z.array(pan).min(1),
  eggs,
  safe: safeTable,
});

/**
 * A kitchen under its id: whole, or the blocks that differ from the larder's or from the one it extends. Units, egg sizes,
 * oven blocks and safe temperatures differ one by one, pans are added (one of the same name and sides is replaced), and every
 * other block differs as a whole, so that its source stays true.
 */
export const kitchenEntrySchema = kitchenSchema.partial().extend({
  extends: identifier.optional(),
  units: units.partial().optional(),
  oven: oven.partial().optional(),
  eggs: eggs.partial().optional(),
  safe: safeTable.partial().optional(),
});

/** A kitchen, whole. */
export type KitchenYaml = z.infer<typeof kitchenSchema>;

/** A kitchen, or what is different about it. */
export type KitchenEntry = z.infer<typeof kitchenEntrySchema>;
