import { type ReadQuantity, readQuantity } from '../quantity/quantity.js';
import type { LengthReading } from '../reading.js';
import { isLengthUnit } from '../size.js';
import { passOfArticle } from '../token/number-parts.js';
import type { Tokens } from '../token/token.js';
import { tokenize } from '../token/tokenize.js';
import type { LengthUnit } from '../unit.js';
import { hyphenedInch } from './hyphened-inch.js';

/** A length among the tokens. */
export interface ReadLength extends ReadQuantity {
  unit: LengthUnit;
}

/**
 * Reads a length at an index: `2-inch`, `½ inch`, `1 to 2 inches`, `3/4 of an inch`, `an inch or two`, `1/4"`, `1 cm - 2 cm`.
 *
 * @returns `null` where no number with a unit of length stands.
 */
export function readLengthAt(tokens: Tokens, index: number): ReadLength | null {
  const read = readQuantity(tokens, index);
  if (read === null || read.bare || read.range?.reversed || read.unit === null || !isLengthUnit(read.unit)) return null;
  return { ...read, unit: read.unit };
}

/**
 * Reads the first length of a label: `2 in`, `2-inch`, `½ inch`, `5 cm`, `1 to 2 inches`, `1/4"`.
 *
 * @returns `null` where no length is written.
 */
export function readLength(text: string): LengthReading | null {
  const tokens = tokenize(hyphenedInch(text));
  for (let at = 0; at < tokens.length; at += 1) {
    const read = readLengthAt(tokens, at);
    if (read === null) continue;
    const start = tokens.at(passOfArticle(tokens, read.first)).start;
    return {
      low: read.low,
      high: read.high,
      unit: read.unit,
      span: { start: Math.min(start, tokens.at(read.first).start), end: tokens.at(read.next - 1).end },
    };
  }
  return null;
}
