import type { Exact } from '../../exact.js';
import { readRange } from '../quantity/range.js';
import { readUnit } from '../quantity/unit-reading.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';

/** A size among the tokens: up to three measures multiplied. */
export interface ReadSize {
  measures: { low: Exact; high: Exact | null }[];
  unit: UnitId;
  first: number;
  next: number;
}

/** Reads one to three measures with a unit at an index: `9 x 13-inch`, `9" x 13"`, `8 by 12 inches`, `4 to 5 quart`, `2cm x 2cm`. */
export function readSizeAt(tokens: Tokens, index: number): ReadSize | null {
  const measures: ReadSize['measures'] = [];
  let unit: UnitId | null = null;
  let at = index;
  for (;;) {
    const range = readRange(tokens, at);
    if (range === null || range.article || range.reversed) return null;
    measures.push({ low: range.low, high: range.high });
    const word = readUnit(tokens, range.next, { afterNumber: true });
    const sized = word !== null && word.loose === '' && word.container === '' ? word : null;
    if (sized !== null && unit !== null && sized.unit !== unit) return null;
    unit = sized?.unit ?? unit;
    at = sized?.next ?? range.next;
    const further = measures.length < 3 ? crossAt(tokens, at) : null;
    if (further === null || readRange(tokens, further) === null) break;
    at = further;
  }
  return unit === null ? null : { measures, unit, first: index, next: at };
}

/** Index behind the sign between two sides: `x`, `×`, `by`, `-by-`. */
function crossAt(tokens: Tokens, index: number): number | null {
  const at = tokens.word(index) === '-' ? index + 1 : index;
  const sign = tokens.word(at);
  if (sign !== 'x' && sign !== '×' && sign !== '✕' && sign !== 'by' && sign !== '*') return null;
  return tokens.word(at + 1) === '-' ? at + 2 : at + 1;
}
