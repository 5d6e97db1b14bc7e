import { Exact } from '../../exact.js';
import { isDash, isInnerHyphen } from './dash.js';
import type { Tokens } from './token.js';

/** A single number of the text, in figures or words. */
export interface ReadNumber {
  value: Exact;
  /** Index of the token behind it. */
  next: number;
  /** `a` or `an`: a one that must be followed by something countable. */
  article: boolean;
  /** `couple`: about two. */
  couple: boolean;
  /** A slash fraction of two neighbouring numbers (`2/3`, `5/6`), which some writers mean as a range. */
  neighbours: boolean;
  fraction: boolean;
}

const shares: Readonly<Record<string, number>> = { half: 2, third: 3, thirds: 3, quarter: 4, quarters: 4, eighth: 8 };

/** The value of a word for a part, `half`, `thirds`; null for any other word. */
export function shareWord(word: string): Exact | null {
  const below = Object.hasOwn(shares, word) ? shares[word] : undefined;
  return below === undefined ? null : new Exact(1).div(below);
}

/** A number of which nothing more is to be said. */
export function plainNumber(value: Exact, next: number): ReadNumber {
  return { value, next, article: false, couple: false, neighbours: false, fraction: false };
}

/** The fraction of a mixed number, from the token behind the whole number. */
export function fractionBehind(tokens: Tokens, index: number): { value: Exact; next: number } | null {
  const token = tokens.at(index);
  if (token.form === 'fraction' && token.value !== null) return { value: token.value, next: index + 1 };
  const joined = tokens.at(index + 1);
  const isAnd = token.lower === 'and' || token.lower === '&';
  if ((isDash(token.lower) || isAnd) && joined.form === 'fraction' && joined.value !== null) {
    return { value: joined.value, next: index + 2 };
  }
  if (!isAnd) return null;
  const article = joined.lower === 'a' || joined.lower === 'one';
  const share = article ? shareWord(tokens.word(index + 2)) : null;
  return share === null ? null : { value: share, next: index + 3 };
}

/** A number, times twelve where `dozen` stands behind it. */
export function dozens(tokens: Tokens, value: Exact, index: number): ReadNumber {
  const word = tokens.word(index);
  if (word === 'doz') return plainNumber(value.times(12), tokens.word(index + 1) === '.' ? index + 2 : index + 1);
  return word === 'dozen' || word === 'dozens' ? plainNumber(value.times(12), index + 1) : plainNumber(value, index);
}

const hyphenedMeasures: ReadonlySet<string> = new Set(['inch', 'dozen', 'pound', 'ounce', 'cup']);

/** Whether a word is hyphened to another that is no measure: `half-fat`, but not `half-inch`. */
export function isHyphened(tokens: Tokens, index: number): boolean {
  const word = tokens.word(index + 2);
  return isInnerHyphen(tokens, index + 1) && shareWord(word) === null && !hyphenedMeasures.has(word);
}

/** Passes over `a`, `an`, `of a` and `of an`, which belong to the fraction before them: `1/3 of a pineapple`, `1/4 a stick`. */
export function passOfArticle(tokens: Tokens, index: number): number {
  const at = tokens.word(index) === 'of' ? index + 1 : index;
  return tokens.word(at) === 'a' || tokens.word(at) === 'an' ? at + 1 : index;
}
