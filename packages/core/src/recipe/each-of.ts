import { readLine } from '../amount/line/read-line.js';
import type { LineReading, Span } from '../amount/reading.js';
import { findFood } from '../food/find/find.js';
import type { Foods } from '../food/find/name-index.js';
import { findFoodOfLine } from '../food/of-line/find-in-line.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Line } from './recipe.js';

/** `each`, with what joins it to the foods. */
const each = /^\s{1,3}each(?:\s{1,3}of\b|:)?\s{1,3}/iu;
const between = /\s{0,3}[,;]\s{0,3}(?:(?:and|&)\s{1,3})?|\s{1,3}(?:and|&)\s{1,3}/giu;

const eachAlone = /^\s{1,3}each\b/iu;

/** Nobody lists more foods of one amount. */
const mostListed = 8;

/** Words before the first food that are said of all: `ground cumin and coriander`. */
const saidOfAll: ReadonlySet<string> = new Set(['ground', 'dried', 'fresh', 'whole', 'chopped', 'grated']);

/**
 * `1 tsp each cumin, paprika and salt` as a line of its first food, with the others within it: each of them as much.
 *
 * @returns Null for any other line, and where one of the foods is not known.
 */
export function eachOf(line: Line, kitchen: Kitchen, foods: Foods): Line | null {
  const { text, reading, key } = line;
  const [amount] = reading.amountSpans;
  if (amount === undefined || reading.food === null || reading.pack !== null) return null;
  // `salt and pepper, ¼ tsp each`
  const isBehind = reading.food.span.end <= amount.start;
  const word = (isBehind ? eachAlone : each).exec(text.slice(amount.end));
  if (word === null) return null;
  const from = amount.end + word[0].length;
  const spans = piecesOf(text, { start: isBehind ? reading.food.span.start : from, end: reading.food.span.end });
  if (spans.length < 2 || spans.length > mostListed) return null;
  const lines = spans.map((span) => lineOfPiece(span, spans, line, kitchen, foods));
  if (lines.some((one) => one === null)) return null;
  const [first, ...others] = lines.flatMap((one) => (one === null ? [] : [one]));
  if (first === undefined) return null;
  const plus = others.reduceRight<Line | undefined>(
    (rest, one, at) => ({ ...one, key: `${key}${'+'.repeat(at + 1)}`, ...(rest === undefined ? {} : { plus: rest }) }),
    undefined,
  );
  const own: Line = {
    ...line,
    food: first.food,
    name: first.name,
    reading: { ...reading, food: first.reading.food },
    each: { start: amount.end, end: from },
  };
  return plus === undefined ? own : { ...own, plus };
}

function piecesOf(text: string, { start, end }: Span): Span[] {
  const words = text.slice(start, end);
  const pieces: Span[] = [];
  let at = 0;
  for (const { index, 0: joint } of words.matchAll(between)) {
    pieces.push({ start: start + at, end: start + index });
    at = index + joint.length;
  }
  pieces.push({ start: start + at, end });
  return pieces.filter((piece) => piece.end > piece.start);
}

/** One food of the list, with the amount of all of them; it states none in its own words. */
function lineOfPiece(
  { start, end }: Span,
  all: readonly Span[],
  line: Line,
  kitchen: Kitchen,
  foods: Foods,
): Line | null {
  const text = ' '.repeat(start) + line.text.slice(start, end);
  const alone = readLine(text);
  if (alone.food === null || alone.amounts.length > 0) return null;
  const reading: LineReading = {
    ...alone,
    // The amount is read where it stands.
    text: line.text,
    kind: 'amount',
    amounts: line.reading.amounts,
    amountSpans: [{ start, end: start }],
    optional: line.reading.optional,
    further: [],
  };
  const named = findFoodOfLine({ ...reading, text }, foods, kitchen.id);
  const wordsOf = (span: Span | undefined): string[] =>
    span === undefined ? [] : line.text.slice(span.start, span.end).toLowerCase().split(/\s+/);
  const [first = ''] = wordsOf(all[0]);
  const own = line.text.slice(start, end);
  const shared =
    saidOfAll.has(first) && start !== all[0]?.start ? findFood(`${first} ${own}`, foods, kitchen.id) : null;
  const tail = wordsOf(all.at(-1)).slice(1).join(' ');
  const food = shared ?? named?.food ?? (tail === '' ? null : findFood(`${own} ${tail}`, foods, kitchen.id));
  const name = named?.name ?? alone.food;
  return food === null ? null : { key: line.key, text, reading, food, name };
}
