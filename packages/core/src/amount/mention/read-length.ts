import { type ReadQuantity, readQuantity } from '../quantity/quantity.js';
import type { LengthReading } from '../reading.js';
import { isLengthUnit } from '../size.js';
import { passOfArticle } from '../token/number-parts.js';
import type { Tokens } from '../token/token.js';
import { tokenize } from '../token/tokenize.js';
import type { LengthUnit } from '../unit.js';
import { hyphenedInch } from './hyphened-inch.js';
import { readSizeAt } from './read-size.js';

/** A length among the tokens. */
export interface ReadLength extends ReadQuantity {
  unit: LengthUnit;
}

/**
 * Reads a length at an index: `2-inch`, `½ inch`, `1 to 2 inches`, `3/4 of an inch`, `an inch or two`, `1/4"`, `1 cm - 2 cm`.
 *
 * @returns `null` where no number with a unit of length stands.
 */
function readLengthAt(tokens: Tokens, index: number): ReadLength | null {
  const read = readQuantity(tokens, index);
  if (read === null || read.bare || read.range?.reversed || read.unit === null || !isLengthUnit(read.unit)) return null;
  return { ...read, unit: read.unit };
}

/**
 * Reads the first length of a label: `2 in`, `2-inch`, `½ inch`, `5 cm`, `1 to 2 inches`, `1/4"`, `1 by 4 inches`.
 *
 * @returns `null` where no length is written.
 */
export function readLength(text: string): LengthReading | null {
  return readLengths(text)[0] ?? null;
}

/** All lengths of a label, in its order: two of `2 inches long and ½ inch thick`, and of `1 inch (2.5 cm)`. */
export function readLengths(text: string): LengthReading[] {
  const tokens = tokenize(hyphenedInch(text));
  const found: LengthReading[] = [];
  let at = 0;
  while (at < tokens.length) {
    const read = readSides(tokens, at) ?? readSingle(tokens, at);
    if (read !== null) found.push(read.reading);
    at = read?.next ?? at + 1;
  }
  return found;
}

interface Found {
  reading: LengthReading;
  next: number;
}

/** `1 by 4 inches`, `2 × 3 cm`, `2-inch by 3-inch` */
function readSides(tokens: Tokens, at: number): Found | null {
  const size = tokens.at(at).kind === 'number' ? readSizeAt(tokens, at) : null;
  const [first, ...sides] = size?.measures ?? [];
  if (size === null || first === undefined || sides.length === 0 || !isLengthUnit(size.unit)) return null;
  const span = tokens.span(at, size.next);
  return { reading: { ...first, sides, unit: size.unit, span }, next: size.next };
}

function readSingle(tokens: Tokens, at: number): Found | null {
  const read = readLengthAt(tokens, at);
  if (read === null) return null;
  const start = tokens.at(passOfArticle(tokens, read.first)).start;
  const span = { start: Math.min(start, tokens.at(read.first).start), end: tokens.at(read.next - 1).end };
  return { reading: { low: read.low, high: read.high, sides: [], unit: read.unit, span }, next: read.next };
}
