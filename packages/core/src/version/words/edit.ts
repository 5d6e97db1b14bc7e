import type { LineReading, Span } from '../../amount/reading.js';
import type { Edit } from '../version.js';

/**
 * A text with stretches replaced.
 *
 * @param edits Not overlapping, in any order.
 */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  let out = '';
  let at = 0;
  for (const edit of sorted(edits)) {
    out += text.slice(at, edit.start) + edit.text;
    at = edit.end;
  }
  return out + text.slice(at);
}

/** Edits in reading order. */
export function sorted(edits: readonly Edit[]): Edit[] {
  return [...edits].sort((a, b) => a.start - b.start || a.end - b.end);
}

/** Whether two stretches have a character in common. */
export function overlap(one: Span, other: Span): boolean {
  return one.start < other.end && other.start < one.end;
}

/** A rewritten amount takes the place of the first stretch that states it; the other stretches fall away. */
export function amountEdits(reading: LineReading, text: string): Edit[] {
  return reading.amountSpans.map((span, index) => {
    if (index > 0) return { ...span, text: '' };
    // A blank before the next word is the author's own, unless the stretch took it in.
    const took = reading.text.slice(span.start, span.end);
    const leading = took.length - took.trimStart().length;
    const trailing = took.length - took.trimEnd().length;
    const next = reading.text[span.end];
    const glued = trailing === 0 && next !== undefined && /[\p{L}\p{N}]/u.test(next);
    return {
      ...span,
      text:
        took.slice(0, leading) +
        likeWritten(text, took[leading]) +
        took.slice(took.length - trailing) +
        (glued ? ' ' : ''),
    };
  });
}

/** A capital at the head of a sentence stays one: `About 60 ml`. Units are no words. */
function likeWritten(text: string, first = ''): string {
  const isCapital = first !== first.toLowerCase() && text.startsWith('about ');
  return isCapital ? `A${text.slice(1)}` : text;
}
