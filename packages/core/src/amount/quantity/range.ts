import type { Exact } from '../../exact.js';
import { isDash } from '../token/dash.js';
import { readNumber } from '../token/number.js';
import type { ReadNumber } from '../token/number-parts.js';
import type { Tokens } from '../token/token.js';

/** A number or a range of the text, without its unit. */
export interface ReadRange {
  low: Exact;
  high: Exact | null;
  /** Index of the first token of the number (words for about stand before it). */
  first: number;
  next: number;
  approx: boolean;
  article: boolean;
  neighbours: boolean;
  fraction: boolean;
  /** A dash stands between the numbers. */
  dashed: boolean;
  /** The upper end is not above the lower: not a range that a person would write on purpose. */
  reversed: boolean;
}

/**
 * Reads a number or a range: `2-3`, `2 – 3`, `1/2 to 1`, `1 or 2`, `15~20`, `3- to 4-`, `between 2 and 3`, `1 (or 2)`.
 *
 * @returns `null` where no number stands.
 */
export function readRange(tokens: Tokens, index: number): ReadRange | null {
  const between = tokens.word(index) === 'between';
  const start = between || tokens.word(index) === 'from' ? index + 1 : index;
  const low = readNumber(tokens, start);
  if (low === null || (start !== index && low.article)) return null;
  const single = rangeOf(low, null, start, low.next, false);
  return upperEnd(tokens, low, { first: start, between }) ?? single;
}

function rangeOf(low: ReadNumber, high: ReadNumber | null, first: number, next: number, dashed: boolean): ReadRange {
  return {
    low: low.value,
    high: high?.value ?? null,
    first,
    next,
    approx: low.couple,
    article: low.article,
    neighbours: low.neighbours,
    fraction: low.fraction,
    dashed,
    reversed: high !== null && !high.value.gt(low.value),
  };
}

function upperEnd(
  tokens: Tokens,
  low: ReadNumber,
  { first, between }: { first: number; between: boolean },
): ReadRange | null {
  if (low.article || low.couple) return null;
  const bracketed = bracketedEnd(tokens, low, first);
  if (bracketed !== null) return bracketed;
  const joint = tokens.word(low.next);
  const dashed = isDash(joint) || joint === '~';
  const worded = joint === 'to' || joint === 'or' || (between && joint === 'and');
  if (!dashed && !worded) return null;
  // `2 -- 3` has two signs for one; in `3- to 4-pound` the unit hangs over.
  const second = tokens.word(low.next + 1);
  const hangs = isDash(joint) && (second === 'to' || second === 'or');
  const high = readNumber(tokens, hangs || isDash(second) ? low.next + 2 : low.next + 1);
  if (high === null || high.article || high.couple) return null;
  const range = rangeOf(low, high, first, high.next, dashed && !hangs);
  // `1 or 1/2` are two thoughts; with a dash or `to` it is a slip.
  return range.reversed && joint === 'or' ? null : range;
}

/** `1 (or 2)` */
function bracketedEnd(tokens: Tokens, low: ReadNumber, first: number): ReadRange | null {
  if (tokens.word(low.next) !== '(') return null;
  const joint = tokens.word(low.next + 1);
  if (joint !== 'or' && joint !== 'to' && !isDash(joint)) return null;
  const high = readNumber(tokens, low.next + 2);
  if (high === null || high.article || tokens.word(high.next) !== ')' || !high.value.gt(low.value)) return null;
  return rangeOf(low, high, first, high.next + 1, false);
}
