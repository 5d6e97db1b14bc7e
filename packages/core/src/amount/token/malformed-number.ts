import type { Doubt } from '../reading.js';

/** Two slashes, two fraction signs side by side, a power of ten: none of them is a number that a cook means. */
const malformed = /\d\/{2,}\d|[¼½¾⅐-⅞]{2}|\d[eE]\d/u;

/** An amount that begins later than this is none that the line begins with. */
const furthest = 24;

/** What looks like a number in a line and cannot be one; null where there is none. */
export function malformedNumber(text: string): Doubt | null {
  // An address further on may hold anything.
  const found = malformed.exec(text.slice(0, furthest));
  if (found === null) return null;
  const span = { start: found.index, end: found.index + found[0].length };
  return {
    text: found[0],
    span,
    because: `\`${found[0]}\` is no number.`,
    instead: 'Write it like `1½`, `1 1/2` or `1.5`.',
  };
}
