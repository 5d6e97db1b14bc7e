import { z } from 'zod';
import { foodEntrySchema } from './food-schema.js';
import { kitchenEntrySchema } from './kitchen-schema.js';
import { identifier } from './text.js';

/** A site's larder file: foods and kitchens by id, added or overriding the built-in ones. */
export const larderSchema = z.strictObject({
  foods: z.record(identifier, foodEntrySchema).optional(),
  kitchens: z.record(identifier, kitchenEntrySchema).optional(),
});

/** Foods and kitchens by id, as data. */
export type LarderData = z.infer<typeof larderSchema>;
