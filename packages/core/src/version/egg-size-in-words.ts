import { isSizeWord } from '../amount/egg-size.js';
import type { Span } from '../amount/reading.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Line } from '../recipe/recipe.js';
import type { Edit } from './version.js';

/** How a line says the size of its eggs. */
export interface EggSizeWords {
  /** A word that goes with the number: `3 extra large`; null where none does. */
  beforeName: string | null;
  edits: Edit[];
}

/**
 * The size of eggs belongs to its country, and its words do: a US large egg is a UK medium one. A word takes the place of the author's; a
 * class that is no plain word stands in brackets behind the eggs.
 *
 * @param eggSize Null for the usual one of the kitchen, which needs no word.
 * @param stands Whether the number stays as the author wrote it.
 */
export function eggSizeInWords(line: Line, eggSize: string | null, { eggs }: Kitchen, stands: boolean): EggSizeWords {
  const { text, reading, name } = line;
  const { size } = reading;
  const named = eggSize ?? eggs.usual;
  if (size === null) {
    const isWord = eggSize === null || isSizeWord(eggSize);
    return { beforeName: isWord ? eggSize : null, edits: isWord ? [] : inBrackets(line, eggSize) };
  }
  const gone: Edit = { ...withBrackets(text, size.span), text: '' };
  const isPlain = isSizeWord(text.slice(size.span.start, size.span.end).toLowerCase());
  // `3 eggs (size M)` are `3 large eggs`.
  if (isSizeWord(named) && !isPlain && !stands) return { beforeName: named, edits: [gone] };
  if (isSizeWord(named)) return { beforeName: null, edits: [{ ...size.span, text: named }] };
  const isBehind = name !== null && size.span.start >= name.span.end;
  // The usual carton goes without saying.
  if (eggSize === null) return { beforeName: null, edits: [gone] };
  if (!isBehind) return { beforeName: null, edits: [gone, ...inBrackets(line, eggSize)] };
  return { beforeName: null, edits: [{ ...size.span, text: standsAlone(text, size.span) ? named : `(${named})` }] };
}

/** `3 eggs (size 7)`, or first in the brackets that stand there: `3 eggs (size 7, at room temperature)`. */
function inBrackets({ text, name }: Line, size: string): Edit[] {
  if (name === null) return [];
  const { end } = name.span;
  const opens = text.slice(end, end + 2) === ' (';
  const at = opens ? end + 2 : end;
  return [{ start: at, end: at, text: opens ? `${size}, ` : ` (${size})` }];
}

/** Whether a size is in brackets or behind a comma already. */
function standsAlone(text: string, { start }: Span): boolean {
  const before = text.slice(0, start).trimEnd().at(-1);
  return before === '(' || before === ',' || before === ';';
}

/** A word to be taken away with what joined it: `eggs (large)`, `eggs, large`, `large eggs`, `Eggs: 3 large`. */
function withBrackets(text: string, { start, end }: Span): Span {
  if (text[start - 1] === '(' && text[end] === ')')
    return { start: start - (text[start - 2] === ' ' ? 2 : 1), end: end + 1 };
  // `eggs (size 7, at room temperature)`
  if (text[start - 1] === '(' && text.slice(end, end + 2) === ', ') return { start, end: end + 2 };
  if (text.slice(start - 2, start) === ', ' && /^(?:,|$)/.test(text.slice(end))) return { start: start - 2, end };
  if (end === text.length && text[start - 1] === ' ') return { start: start - 1, end };
  return { start, end: text[end] === ' ' ? end + 1 : end };
}
