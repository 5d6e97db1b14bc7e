import type { Span } from '../../amount/reading.js';
import type { Edit } from '../version.js';
import { applyEdits } from './edit.js';

/** One reading of a label: what it says, and where. */
export interface Said<Reading> {
  reading: Reading;
  span: Span;
}

/**
 * A label's words with other readings in the place of its own: `about 43°C, to the touch`. A reading that only says the one before it again
 * (`165°F (74°C)`) falls away with what stands between them and its bracket.
 *
 * @param isAgain Whether a reading says the same as the one before it.
 */
export function readingsInWords<Reading>(
  text: string,
  said: readonly Said<Reading>[],
  write: (reading: Reading) => string,
  isAgain: (one: Reading, other: Reading) => boolean,
): string {
  const edits: Edit[] = [];
  let kept: Said<Reading> | undefined;
  for (const each of said) {
    const last = edits.at(-1);
    if (kept !== undefined && last !== undefined && isAgain(kept.reading, each.reading)) {
      last.end = endOf(text, last.start, each.span.end);
      continue;
    }
    edits.push({ ...each.span, text: write(each.reading) });
    kept = each;
  }
  return applyEdits(text, edits);
}

/** Behind the bracket that opens between the first statement and the last, and closes behind it. */
function endOf(text: string, from: number, end: number): number {
  const between = text.slice(from, end);
  const isOpen = between.lastIndexOf('(') > between.lastIndexOf(')');
  return isOpen && text[end] === ')' ? end + 1 : end;
}
