import fc from 'fast-check';

/** A simple amount with what it must be read as: the number and the unit id. */
export interface PrintedAmount {
  text: string;
  low: string;
  high: string | null;
  unit: string;
}

const fractions = [
  { text: '½', value: '0.5' },
  { text: '1/2', value: '0.5' },
  { text: '¼', value: '0.25' },
  { text: '3/4', value: '0.75' },
  { text: '3⁄4', value: '0.75' },
  { text: '5∕8', value: '0.625' },
];

const whole = fc.integer({ min: 1, max: 400 }).map((number) => ({ text: String(number), value: String(number) }));
const decimal = fc
  .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 99 }))
  .map(([before, behind]) => `${before}.${String(behind).padStart(2, '0')}`)
  .map((text) => ({ text, value: String(Number(text)) }));
const mixed = fc
  .tuple(fc.integer({ min: 1, max: 12 }), fc.constantFrom(...fractions), fc.constantFrom(' ', '\u00a0'))
  .map(([number, { text, value }, blank]) => ({
    text: `${number}${blank}${text}`,
    value: String(number + Number(value)),
  }));
const number = fc.oneof(whole, decimal, mixed, fc.constantFrom(...fractions));

const units = [
  ['g', ['g', ' g', ' grams', '\u2009g']],
  ['kg', ['kg', ' kg', ' kilos']],
  ['oz', [' oz', '-oz', ' ounces', ' oz.']],
  ['lb', [' lb', ' lbs', ' pounds']],
  ['ml', ['ml', ' mL', ' millilitres']],
  ['l', [' l', 'L', ' litres']],
  ['tsp', [' tsp', ' teaspoons', ' tsp.', ' t']],
  ['tbsp', [' tbsp', ' Tbsp.', ' tablespoons', ' T']],
  ['cup', [' cups', ' c.', ' cup', ' C']],
  ['floz', [' fl oz', ' fluid ounces']],
  ['clove', [' cloves']],
  ['slice', [' slices', ' rashers']],
  ['packet', [' packages', ' jars']],
] as const;

const unit = fc
  .constantFrom(...units)
  .chain(([id, spellings]) => fc.constantFrom(...spellings).map((spelling) => ({ id, spelling })));

/** Single amounts and ranges, as this printer writes them. */
export const printedAmount: fc.Arbitrary<PrintedAmount> = fc.oneof(
  fc.tuple(number, unit).map(([{ text, value }, { id, spelling }]) => {
    return { text: `${text}${spelling}`, low: value, high: null, unit: id };
  }),
  fc
    .tuple(
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 1, max: 20 }),
      fc.constantFrom('-', ' – ', ' to ', '—'),
      unit,
    )
    .map(([low, more, dash, { id, spelling }]) => {
      return { text: `${low}${dash}${low + more}${spelling}`, low: String(low), high: String(low + more), unit: id };
    }),
);
