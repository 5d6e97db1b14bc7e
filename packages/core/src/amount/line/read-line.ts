import type { Kitchen } from '../../kitchen/kitchen.js';
import type { LineReading } from '../reading.js';
import { isMassUnit, type KitchenUnits } from '../size.js';
import { malformedNumber } from '../token/malformed-number.js';
import type { Tokens } from '../token/token.js';
import { tokenize } from '../token/tokenize.js';
import { readEggSize } from './egg-size.js';
import { LineReader } from './line-reader.js';
import { withoutOtherChoice } from './other-choice.js';
import { withoutArticle } from './uncounted-article.js';

/**
 * Reads an ingredient line: its amount, pack, food, size, preparation, and the further quantities in its words.
 *
 * What may be read in two ways is left unread, with a `doubt` that says why. Nothing is thrown for any text.
 *
 * @param text The line without its list marker; a task box before it and Markdown in it are passed over.
 * @param options `kitchen` holds millilitres in the kitchen's own volume units, by which a two-part amount is added up
 *   (`1 cup plus 2 tbsp`). US sizes where none are given. `eggSizes` names the kitchen's classes of eggs: see `readingIn`.
 */
export function readLine(text: string, { kitchen = {}, eggSizes = [] }: ReadingIn = {}): LineReading {
  const reading = withoutArticle(
    withoutOtherChoice(readWords(tokenize(text, { markdown: true }), { kitchen, eggSizes })),
  );
  const doubt = reading.doubt ?? malformedNumber(text);
  if (doubt === null || doubt === reading.doubt) return reading;
  return { ...reading, kind: 'no-amount', amounts: [], pack: null, amountSpans: [], doubt };
}

/** What a line's reading rests on beside its words. */
export interface ReadingIn {
  kitchen?: KitchenUnits;
  eggSizes?: readonly string[];
}

/** How lines of a kitchen are read: with its units and its sizes of eggs. */
export function readingIn({ units, eggs }: Pick<Kitchen, 'units' | 'eggs'>): Required<ReadingIn> {
  return { kitchen: units, eggSizes: eggs.sizes.flatMap(({ name, also }) => [name, ...also]) };
}

/** `2 × 60 g eggs`, `2 eggs (60 g each)`: what each weighs says how heavy they are together; they are counted all the same. */
function withEggsWeighed(reading: LineReading): LineReading {
  const { amounts, pack, food } = reading;
  const [counted] = amounts;
  if (counted === undefined || pack === null || pack.word !== '' || !isMassUnit(pack.unit)) return reading;
  if (counted.unit !== 'count' || !/\beggs?$/i.test(food?.text ?? '')) return reading;
  const high =
    counted.high === null && pack.sizeHigh === null
      ? null
      : (counted.high ?? counted.low).times(pack.sizeHigh ?? pack.size);
  const together = {
    low: counted.low.times(pack.size),
    high,
    unit: pack.unit,
    approx: counted.approx,
    span: pack.span,
  };
  return { ...reading, pack: null, amounts: [counted, together] };
}

/** A size class of eggs is read by itself: to the rest of the line it would be another amount. */
function readWords(tokens: Tokens, { kitchen, eggSizes }: Required<ReadingIn>): LineReading {
  const size = readEggSize(tokens, eggSizes);
  if (size === null) return withEggsWeighed(new LineReader(tokens, kitchen).read());
  const reading = withEggsWeighed(new LineReader(tokens.without(size.first, size.next), kitchen).read());
  const isCounted = reading.amounts[0]?.unit === 'count';
  return isCounted ? { ...reading, size: { text: size.text, span: size.span } } : reading;
}
