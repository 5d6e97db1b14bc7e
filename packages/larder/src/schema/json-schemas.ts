import { z } from 'zod';
import { foodFileSchema } from './food-schema.js';
import { kitchenEntrySchema, kitchenSchema } from './kitchen-schema.js';
import { larderSchema } from './larder-schema.js';
import { settingsSchema } from './settings-schema.js';

/** A JSON Schema, draft 7: the one that editors know best. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * JSON Schemas for editors, by file name, made of the schemas that check the files. What no JSON Schema can say (that a kitchen is
 * known, that packs are in order) only the reader of the files finds.
 */
export function jsonSchemas(): Readonly<Record<string, JsonSchema>> {
  return {
    'foods.schema.json': titled('A food file of the larder', foodFileSchema),
    'kitchen.schema.json': {
      ...titled('A kitchen file of the larder', kitchenEntrySchema),
      // A kitchen that extends none needs every block.
      if: { not: { required: ['extends'] } },
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
      then: { required: Object.keys(kitchenSchema.shape) },
    },
    'larder.schema.json': titled("A site's own larder file", larderSchema),
    'retare.schema.json': titled('retare.yaml, the settings of a site', settingsSchema),
  };
}

function titled(title: string, schema: z.ZodType): JsonSchema {
  return { ...z.toJSONSchema(schema, { target: 'draft-7', io: 'input', reused: 'inline' }), title };
}
