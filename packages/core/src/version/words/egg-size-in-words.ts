import { isSizeWord } from '../../amount/line/egg-size.js';
import type { Span } from '../../amount/reading.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import type { Edit } from '../version.js';

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
  const also = sizesOfMore(line, size, isSizeWord(named) ? named : '');
  const gone: Edit = { ...withBrackets(text, size.span), text: '' };
  const isPlain = isSizeWord(text.slice(size.span.start, size.span.end).toLowerCase());
  // `3 eggs (size M)` are `3 large eggs`.
  if (isSizeWord(named) && !isPlain && !stands) return { beforeName: named, edits: [gone, ...also] };
  if (isSizeWord(named)) return { beforeName: null, edits: [{ ...size.span, text: named }, ...also] };
  const isBehind = name !== null && size.span.start >= name.span.end;
  // The usual carton goes without saying.
  if (eggSize === null) return { beforeName: null, edits: [gone, ...also] };
  if (!isBehind) return { beforeName: null, edits: [gone, ...also, ...inBrackets(line, eggSize)] };
  const placed = { ...size.span, text: standsAlone(text, size.span) ? named : `(${named})` };
  return { beforeName: null, edits: [placed, ...also] };
}

/** What is weighed of eggs has no size. */
export function withoutEggSize(line: Line): Edit[] {
  const { size } = line.reading;
  return size === null ? [] : [{ ...withBrackets(line.text, size.span), text: '' }, ...sizesOfMore(line, size, '')];
}

/** The same size again, of what else the line takes: `1 large egg, plus 1 large egg yolk`. */
function sizesOfMore({ text, plus }: Line, size: NonNullable<Line['reading']['size']>, named: string): Edit[] {
  const from = size.span.end;
  // What is counted by itself is worded by itself.
  const to = plus?.reading.amountSpans[0]?.start;
  return [...text.slice(from, to).matchAll(moreEggs)].flatMap(({ index, 1: again = '' }) => {
    if (again.toLowerCase().replace('-', ' ') !== size.text) return [];
    const start = from + index;
    return [{ start, end: start + again.length + (named === '' ? 1 : 0), text: named }];
  });
}

const moreEggs = /\b(small|medium|large|extra[- ]large|jumbo) (?=(?:egg|yolk|white)s?\b)/gi;

/** `3 eggs (size 7)`, or first in the brackets that stand there: `3 eggs (size 7, at room temperature)`. */
function inBrackets({ text, name }: Line, size: string): Edit[] {
  if (name === null) return [];
  const { end } = name.span;
  // `(at room temperature)`, not `(UK)`
  const opens = /^ \([a-z]/.test(text.slice(end, end + 3));
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
  const joined = /(?:,| [-–—]) $/.exec(text.slice(Math.max(0, start - 3), start))?.[0].length ?? 0;
  if (joined > 0 && /^(?:,|$| \()/.test(text.slice(end, end + 2))) return { start: start - joined, end };
  if (end === text.length && text[start - 1] === ' ') return { start: start - 1, end };
  return { start, end: text[end] === ' ' ? end + 1 : end };
}
