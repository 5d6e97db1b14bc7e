import { builtInData, type LarderData } from '@retare/larder';
import type { Row, Section } from './section.js';

type Block = Readonly<Record<string, unknown>>;

/** A kitchen as its data says it, one section a block, each with its source; a site's own blocks first. */
export function explainKitchen(id: string, site: LarderData | null): Section[] {
  const own = site?.kitchens?.[id] as Block | undefined;
  const builtIn = builtInData().kitchens?.[id] as Block | undefined;
  const from = (own ?? builtIn)?.extends;
  return [
    ...(own === undefined ? [] : sectionsOf(own, "the site's larder file: ")),
    ...(builtIn === undefined ? [] : sectionsOf(builtIn, '')),
    ...(from === undefined ? [] : [{ title: 'the rest', rows: [{ text: `as in ${from}`, source: '' }] }]),
  ];
}

function sectionsOf(kitchen: Block, whose: string): Section[] {
  return Object.entries(kitchen).map(([key, value]) => ({ title: `${whose}${key}`, rows: rowsOf(value, '') }));
}

/** One row for each block of plain values; what stands in a block with a source has that one. */
function rowsOf(value: unknown, source: string): Row[] {
  if (!isBlock(value)) {
    const items = Array.isArray(value) && value.some(isBlock) ? value : [value];
    return items.flatMap((item) => (isBlock(item) ? rowsOf(item, source) : [{ text: inLine(item), source }]));
  }
  const { source: own = source, ...rest } = value;
  const inner = Object.entries(rest);
  const plain = inner.filter(([, each]) => !isBlock(each) && !(Array.isArray(each) && each.some(isBlock)));
  const head = plain.map(([key, each]) => `${key} ${inLine(each)}`).join(', ');
  return [
    ...(head === '' ? [] : [{ text: head, source: String(own) }]),
    ...inner
      .filter((pair) => !plain.includes(pair))
      .flatMap(([key, each]) => rowsOf(each, String(own)).map((row) => ({ ...row, text: `${key}: ${row.text}` }))),
  ];
}

const isBlock = (value: unknown): value is Block =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const inLine = (value: unknown): string => (Array.isArray(value) ? value.map(inLine).join(' ') : String(value));
