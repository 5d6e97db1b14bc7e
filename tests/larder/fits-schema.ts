type Schema = Readonly<Record<string, unknown>>;

/**
 * Whether a value fits a JSON Schema of draft 7, for the keywords that ours use. An unknown keyword throws, so that none is passed
 * over in silence.
 */
export function fitsSchema(schema: Schema, value: unknown, root: Schema = schema): boolean {
  return Object.entries(schema).every(([keyword, wanted]) => {
    const check = keywords[keyword];
    if (check === undefined) throw new Error(`No check for the keyword ${keyword}`);
    return check(wanted as never, value, schema, root);
  });
}

type Check = (wanted: never, value: unknown, schema: Schema, root: Schema) => boolean;

const isBlock = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const always = () => true;
const numeric = (holds: (value: number, limit: number) => boolean) => (limit: number, value: unknown) =>
  typeof value !== 'number' || holds(value, limit);

const types: Readonly<Record<string, (value: unknown) => boolean>> = {
  object: isBlock,
  array: Array.isArray,
  string: (value) => typeof value === 'string',
  number: (value) => typeof value === 'number',
  integer: Number.isInteger,
  boolean: (value) => typeof value === 'boolean',
};

const keywords: Readonly<Record<string, Check>> = {
  $schema: always,
  title: always,
  description: always,
  definitions: always,
  // Read with `if`.
  // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
  then: always,
  type: (wanted: string | string[], value) => [wanted].flat().some((each) => types[each]?.(value) === true),
  enum: (wanted: unknown[], value) => wanted.includes(value),
  const: (wanted: unknown, value) => wanted === value,
  pattern: (wanted: string, value) => typeof value !== 'string' || new RegExp(wanted, 'u').test(value),
  minimum: numeric((value, limit) => value >= limit),
  maximum: numeric((value, limit) => value <= limit),
  exclusiveMinimum: numeric((value, limit) => value > limit),
  minItems: (wanted: number, value) => !Array.isArray(value) || value.length >= wanted,
  maxItems: (wanted: number, value) => !Array.isArray(value) || value.length <= wanted,
  items: (wanted: Schema, value, _, root) =>
    !Array.isArray(value) || value.every((item) => fitsSchema(wanted, item, root)),
  required: (wanted: string[], value) => !isBlock(value) || wanted.every((key) => key in value),
  properties: (wanted: Record<string, Schema>, value, _, root) =>
    !isBlock(value) ||
    Object.entries(wanted).every(([key, inner]) => !(key in value) || fitsSchema(inner, value[key], root)),
  propertyNames: (wanted: Schema, value, _, root) =>
    !isBlock(value) || Object.keys(value).every((key) => fitsSchema(wanted, key, root)),
  additionalProperties: (wanted: Schema | false, value, { properties = {} }, root) =>
    !isBlock(value) ||
    Object.entries(value).every(
      ([key, inner]) => key in (properties as object) || (wanted !== false && fitsSchema(wanted, inner, root)),
    ),
  anyOf: (wanted: Schema[], value, _, root) => wanted.some((each) => fitsSchema(each, value, root)),
  allOf: (wanted: Schema[], value, _, root) => wanted.every((each) => fitsSchema(each, value, root)),
  not: (wanted: Schema, value, _, root) => !fitsSchema(wanted, value, root),
  if: (wanted: Schema, value, schema, root) =>
    !fitsSchema(wanted, value, root) || fitsSchema((schema.then ?? {}) as Schema, value, root),
};
