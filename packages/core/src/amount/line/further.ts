import { readDegrees } from '../mention/degrees.js';
import { readSizeAt } from '../mention/read-size.js';
import { readQuantity } from '../quantity/quantity.js';
import { isMeasured } from '../quantity/statement.js';
import type { Quantity } from '../reading.js';
import type { Tokens } from '../token/token.js';

/**
 * Quantities of mass, volume, length and temperature in the words that are left of a line.
 *
 * @param taken Whether a token belongs to the line's own amount.
 * @returns In the order of the text. The span holds number and unit, without words for about.
 */
export function readFurther(tokens: Tokens, taken: (index: number) => boolean): Quantity[] {
  const found: Quantity[] = [];
  let at = 0;
  while (at < tokens.length) {
    const read = taken(at) ? null : (readSides(tokens, at) ?? readHeat(tokens, at) ?? readMeasure(tokens, at));
    // What runs on into the amount is the amount's, or nobody's.
    const free = read !== null && isFree(taken, at, read.next);
    if (free) found.push(...read.quantities);
    at = free ? read.next : at + 1;
  }
  return found;
}

function isFree(taken: (index: number) => boolean, from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (taken(at)) return false;
  return true;
}

interface Found {
  quantities: Quantity[];
  next: number;
}

/** `9 x 13 inch`: each side by itself, so that each can be converted where it stands. */
function readSides(tokens: Tokens, index: number): Found | null {
  if (tokens.at(index).kind !== 'number') return null;
  const size = readSizeAt(tokens, index);
  if (size === null || size.measures.length < 2) return null;
  const quantities: Quantity[] = [];
  let first = index;
  for (let at = index; at <= size.next; at += 1) {
    const crosses = at === size.next || isCross(tokens.word(at));
    if (!crosses) continue;
    const measure = size.measures[quantities.length];
    if (measure !== undefined) {
      const end = tokens.word(at - 1) === '-' && at < size.next ? at - 2 : at - 1;
      const span = { start: tokens.at(first).start, end: tokens.at(end).end };
      quantities.push({ ...measure, unit: size.unit, approx: false, span });
    }
    first = tokens.word(at + 1) === '-' ? at + 2 : at + 1;
  }
  return { quantities, next: size.next };
}

function isCross(sign: string): boolean {
  return sign === 'x' || sign === '×' || sign === '✕' || sign === 'by' || sign === '*';
}

function readHeat(tokens: Tokens, index: number): Found | null {
  if (tokens.at(index).kind !== 'number') return null;
  const degrees = readDegrees(tokens, index);
  const coldest = 25;
  // `1/2 C water` is a cup.
  if (degrees === null || degrees.unit === null || degrees.low.lt(coldest)) return null;
  const span = tokens.span(index, degrees.next);
  return {
    quantities: [{ low: degrees.low, high: degrees.high, unit: degrees.unit, approx: false, span }],
    next: degrees.next,
  };
}

function readMeasure(tokens: Tokens, index: number): Found | null {
  const read = readQuantity(tokens, index);
  if (read === null || read.bare || read.unit === null || !isMeasured(read.unit) || read.range?.reversed) return null;
  const span = tokens.span(read.first, read.next);
  return {
    quantities: [{ low: read.low, high: read.high, unit: read.unit, approx: read.approx, span }],
    next: read.next,
  };
}
