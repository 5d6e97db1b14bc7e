import { Exact } from '../../exact.js';
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

const units: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  eighteen: 18,
  twenty: 20,
  thirty: 30,
};

const shares: Readonly<Record<string, number>> = { half: 2, third: 3, thirds: 3, quarter: 4, quarters: 4, eighth: 8 };

/** The value of a word such as `two`, or `null`. */
function numberWord(word: string): Exact | null {
  const value = Object.hasOwn(units, word) ? units[word] : undefined;
  return value === undefined ? null : new Exact(value);
}

function shareWord(word: string): Exact | null {
  const below = Object.hasOwn(shares, word) ? shares[word] : undefined;
  return below === undefined ? null : new Exact(1).div(below);
}

export function isDash(sign: string): boolean {
  return sign === '-' || sign === '–' || sign === '—' || sign === '‐' || sign === '‑' || sign === '‒' || sign === '−';
}

/**
 * Reads one number at an index: `2`, `1 1/2`, `1-1/2`, `2 and 1/4`, `½`, `two`, `half a`, `one and a half`, `a couple`, `two dozen`.
 *
 * @returns `null` where no number stands.
 */
export function readNumber(tokens: Tokens, index: number): ReadNumber | null {
  return readFigures(tokens, index) ?? readWords(tokens, index);
}

function plainNumber(value: Exact, next: number): ReadNumber {
  return { value, next, article: false, couple: false, neighbours: false, fraction: false };
}

function readFigures(tokens: Tokens, index: number): ReadNumber | null {
  const read = readFigure(tokens, index);
  if (read === null || tokens.at(read.next - 1).form !== 'fraction') return read;
  return fractionEnds.has(tokens.word(read.next)) ? { ...read, next: read.next + 1 } : read;
}

/** `3/4th cup`, `1/4 th tsp`, `2/3rds cup` */
const fractionEnds = new Set(['th', 'ths', 'rd', 'rds']);

/** `1 quarter`, `3 quarters`; but `2 quarter pound burgers` are two. */
function figureShare(tokens: Tokens, value: Exact, index: number): ReadNumber | null {
  const share = shareWord(tokens.word(index));
  if (share === null || isHyphened(tokens, index)) return null;
  const says = value.eq(1) || tokens.word(index).endsWith('s');
  const part = value.times(share);
  return says && part.lt(1) ? { ...plainNumber(part, articleBehind(tokens, index + 1)), fraction: true } : null;
}

function readFigure(tokens: Tokens, index: number): ReadNumber | null {
  const token = tokens.at(index);
  if (token.value === null) return null;
  if (token.form !== 'whole') {
    const fraction = token.form === 'fraction';
    // `½ dozen`, `1½ dozen`
    const dozen = dozens(tokens, token.value, index + 1);
    if (dozen.next > index + 1 && dozen.value.isInteger()) return dozen;
    return { ...plainNumber(token.value, index + 1), fraction, neighbours: fraction && areNeighbours(token.text) };
  }
  const thousands = groupedBehind(tokens, index);
  if (thousands !== null) return thousands;
  const spaced = spacedFraction(tokens, index);
  if (spaced !== null) return spaced;
  const mixed = fractionBehind(tokens, index + 1);
  if (mixed !== null) return plainNumber(token.value.plus(mixed.value), mixed.next);
  return figureShare(tokens, token.value, index + 1) ?? dozens(tokens, token.value, index + 1);
}

/** `1 000`: a group of three noughts behind a blank is part of the number. */
function groupedBehind(tokens: Tokens, index: number): ReadNumber | null {
  const group = tokens.at(index + 1);
  if (group.lower !== '000') return null;
  return plainNumber(new Exact(`${tokens.at(index).lower}000`), index + 2);
}

/** `1 / 2`, with blanks. */
function spacedFraction(tokens: Tokens, index: number): ReadNumber | null {
  const [above, sign, below] = [tokens.at(index), tokens.at(index + 1), tokens.at(index + 2)];
  if (sign.text !== '/' || below.form !== 'whole' || above.value === null || below.value === null) return null;
  if (!above.value.lt(below.value) || below.value.gt(16)) return null;
  return { ...plainNumber(above.value.div(below.value), index + 3), fraction: true };
}

/** The fraction of a mixed number, from the token behind the whole number. */
function fractionBehind(tokens: Tokens, index: number): { value: Exact; next: number } | null {
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

function areNeighbours(text: string): boolean {
  const [above, below] = text.split(/[/\u2044\u2215]/u);
  return above !== '1' && Number(above) + 1 === Number(below);
}

function dozens(tokens: Tokens, value: Exact, index: number): ReadNumber {
  const word = tokens.word(index);
  if (word === 'doz') return plainNumber(value.times(12), tokens.word(index + 1) === '.' ? index + 2 : index + 1);
  return word === 'dozen' || word === 'dozens' ? plainNumber(value.times(12), index + 1) : plainNumber(value, index);
}

function readWords(tokens: Tokens, index: number): ReadNumber | null {
  const word = tokens.word(index);
  // `Half-fat`, `five-spice`: hyphened to another word, it is part of that word.
  if (isHyphened(tokens, index)) return null;
  if (word === 'a' || word === 'an') return readAfterArticle(tokens, index);
  if (word === 'couple') return readCouple(tokens, index);
  if (word === 'dozen') return plainNumber(new Exact(12), index + 1);
  if (word === 'half' || word === 'quarter') return readHalf(tokens, index);
  const value = numberWord(word);
  if (value === null) return null;
  return readShareOf(tokens, index, value) ?? readMixedWords(tokens, index, value);
}

function isHyphened(tokens: Tokens, index: number): boolean {
  const dash = tokens.at(index + 1);
  const behind = tokens.at(index + 2);
  if (!isDash(dash.lower) || dash.gap || behind.gap || behind.kind !== 'word') return false;
  const measure = shareWord(behind.lower) !== null || behind.lower === 'inch' || behind.lower === 'dozen';
  return !measure && behind.lower !== 'pound' && behind.lower !== 'ounce' && behind.lower !== 'cup';
}

function readMixedWords(tokens: Tokens, index: number, value: Exact): ReadNumber {
  const mixed = fractionBehind(tokens, index + 1);
  if (mixed !== null) return plainNumber(value.plus(mixed.value), mixed.next);
  return dozens(tokens, value, index + 1);
}

/** `two thirds`, `three-quarters`, `one half`. */
function readShareOf(tokens: Tokens, index: number, value: Exact): ReadNumber | null {
  const at = isDash(tokens.word(index + 1)) ? index + 2 : index + 1;
  const share = shareWord(tokens.word(at));
  if (share === null) return null;
  return { ...plainNumber(value.times(share), articleBehind(tokens, at + 1)), fraction: true };
}

/** `half`, `half a`, `half of a`, `quarter`, `half dozen`; but not `half and half`, which is a food. */
function readHalf(tokens: Tokens, index: number): ReadNumber | null {
  const value = shareWord(tokens.word(index));
  const behind = tokens.word(index + 1);
  if (value === null || behind === '&' || (behind === 'and' && tokens.word(index + 2) === 'half')) return null;
  const next = articleBehind(tokens, index + 1);
  if (tokens.word(next) === 'dozen') return plainNumber(value.times(12), next + 1);
  return { ...plainNumber(value, next), fraction: true };
}

/** Passes over `a`, `an`, `of a` and `of an`, which belong to the fraction before them. */
function articleBehind(tokens: Tokens, index: number): number {
  const at = tokens.word(index) === 'of' ? index + 1 : index;
  return tokens.word(at) === 'a' || tokens.word(at) === 'an' ? at + 1 : index;
}

function readAfterArticle(tokens: Tokens, index: number): ReadNumber | null {
  const behind = tokens.word(index + 1);
  if (behind === 'couple') return readCouple(tokens, index + 1);
  if (behind === 'dozen') return plainNumber(new Exact(12), index + 2);
  if (behind === 'half' || behind === 'quarter' || behind === 'third') {
    const share = shareWord(behind);
    if (share === null || isHyphened(tokens, index + 1)) return null;
    const next = articleBehind(tokens, index + 2);
    if (tokens.word(next) === 'dozen') return plainNumber(share.times(12), next + 1);
    return { ...plainNumber(share, next), fraction: true };
  }
  return { ...plainNumber(new Exact(1), index + 1), article: true };
}

function readCouple(tokens: Tokens, index: number): ReadNumber {
  const next = tokens.word(index + 1) === 'of' ? index + 2 : index + 1;
  return { ...plainNumber(new Exact(2), next), couple: true };
}

/** Passes over `of a`, `of an` and `a` behind a fraction in figures: `1/3 of a pineapple`, `1/4 a stick`. */
export function passOfArticle(tokens: Tokens, index: number): number {
  return articleBehind(tokens, index);
}
