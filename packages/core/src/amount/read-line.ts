import { LineReader } from './line-reader.js';
import { malformedNumber } from './malformed-number.js';
import { withoutOtherChoice } from './other-choice.js';
import type { LineReading } from './reading.js';
import type { KitchenUnits } from './size.js';
import { tokenize } from './tokenize.js';

/**
 * Reads an ingredient line: its amount, pack, food, size, preparation, and the further quantities in its words.
 *
 * What may be read in two ways is left unread, with a `doubt` that says why. Nothing is thrown for any text.
 *
 * @param text The line without its list marker; a task box before it and Markdown in it are passed over.
 * @param options `kitchen` holds millilitres in the kitchen's own volume units, by which a two-part amount is added up
 *   (`1 cup plus 2 tbsp`). US sizes where none are given.
 */
export function readLine(text: string, { kitchen = {} }: { kitchen?: KitchenUnits } = {}): LineReading {
  const reading = withoutOtherChoice(new LineReader(tokenize(text, { markdown: true }), kitchen).read());
  const doubt = reading.doubt ?? malformedNumber(text);
  if (doubt === null || doubt === reading.doubt) return reading;
  return { ...reading, kind: 'no-amount', amounts: [], pack: null, amountSpans: [], doubt };
}
