import { z } from 'zod';
import { labelSize } from './label-size-schema.js';
import { aboveZero, fraction, wholeNumber, zeroOrMore } from './number-schema.js';
import { identifier, source, text } from './text.js';
import {
  allergens,
  keepingPlaces,
  kitchenVolumeUnits,
  massUnits,
  pieceSizes,
  pieceUnits,
  roles,
  safeClasses,
  useWhole,
  volumeUnits,
} from './words.js';

const takesName = 'takes `one/many`, or one word for a food that is not counted';
const foodName = z
  .string({ error: takesName })
  .refine((name) => name.split('/').length <= 2 && name.split('/').every((part) => part.trim() !== ''), {
    error: takesName,
  });

const density = z.strictObject({
  form: text.optional(),
  grams: aboveZero,
  per: z.enum(['ml', ...kitchenVolumeUnits]),
  source,
  // Why another table has another figure.
  note: text.optional(),
});

const piece = z.strictObject({
  unit: z.enum(pieceUnits),
  size: z.enum(pieceSizes).optional(),
  grams: aboveZero,
  source,
});

const keeps = z.strictObject({
  where: z.enum(keepingPlaces),
  days: wholeNumber.optional(),
  freezes: z.boolean(),
  least: zeroOrMore,
  source,
});

const share = z.strictObject({ food: identifier, share: fraction });

const pack = z.strictObject({
  size: labelSize,
  word: text,
  whole: z.enum(useWhole),
  // Of several sizes in one container the one that `1 can` of it means.
  usual: z.literal(true).optional(),
  grams: aboveZero.optional(),
  drained: aboveZero.optional(),
  marks: z.strictObject({ size: aboveZero, unit: z.enum([...massUnits, ...volumeUnits]), grams: aboveZero }).optional(),
});

const sold = z.strictObject({
  packs: z.array(pack).min(1, { error: 'takes at least one pack' }).optional(),
  loose: z.boolean().optional(),
  singly: z.boolean().optional(),
  tap: z.boolean().optional(),
  'not-sold': z.boolean().optional(),
  'stand-ins': z.array(z.strictObject({ parts: z.array(share).min(1), source })).optional(),
  source,
});

/** One food of a food file. */
export const foodSchema = z.strictObject({
  id: identifier,
  names: z
    .record(identifier, z.array(foodName).min(1, { error: 'takes at least one name' }))
    .describe('Names by kitchen, `any` for those understood everywhere: `one/many`. The first is the one shown.'),
  role: z.enum(roles).describe('What the food does in a dish: guarded ratios are drawn between roles.'),
  note: text.optional().describe('What a cook should know of it: how it differs between kitchens.'),
  spooned: identifier
    .optional()
    .describe(
      'The food that a spoon of it means where no word says fresh: the dried herb, the ground spice, the juice.',
    ),
  cupped: identifier
    .optional()
    .describe('The food that a cup of it means where no word says a can: diced tomatoes are then fresh ones.'),
  pours: z.boolean().optional().describe('Whether it is measured like a liquid.'),
  'by-eye': z
    .enum(['only', 'also'])
    .optional()
    .describe(
      'Parts of a pack are taken by eye where there is no scale, half a box of spaghetti: `only` where nobody fills a cup with it.',
    ),
  densities: z.array(density).optional().describe('Weights of a US measure or a millilitre, by form.'),
  pieces: z.array(piece).optional().describe('Edible weight of one, by size.'),
  keeps: keeps.describe('How it keeps once opened, and the least remainder worth keeping, in grams.'),
  core: z.enum(safeClasses).optional().describe('Its class of core temperature, if it must be cooked through.'),
  allergens: z.array(z.enum(allergens)).optional().describe('Allergens of Regulation (EU) No 1169/2011, annex II.'),
  contains: z
    .array(share.extend({ source: source.optional() }))
    .optional()
    .describe('Foods that it is composed of, as shares of its mass.'),
  sold: z.record(identifier, sold).describe('How shops sell it, by kitchen; `any` where a kitchen says nothing else.'),
});

/** A food file: a list of foods. */
export const foodFileSchema = z.array(foodSchema);

/** A food in a site's larder file, under its id: any keys of one, or `remove: true`. */
export const foodEntrySchema = foodSchema
  .omit({ id: true })
  .partial()
  .extend({ remove: z.literal(true).optional() });

/** One food, as a food file has it. */
export type FoodYaml = z.infer<typeof foodSchema>;

/** A food under its id: whole, or the keys that differ from the larder's. */
export type FoodEntry = z.infer<typeof foodEntrySchema>;

/** How a kitchen's shops sell a food, as a food file has it. */
export type SoldYaml = z.infer<typeof sold>;

/** A pack, as a food file has it. */
export type PackYaml = z.infer<typeof pack>;

/** A density, as a food file has it. */
export type DensityYaml = z.infer<typeof density>;
