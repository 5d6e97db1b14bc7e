import { Exact } from '../../exact.js';
import { isDash } from './dash.js';
import {
  dozens,
  fractionBehind,
  isHyphened,
  passOfArticle,
  plainNumber,
  type ReadNumber,
  shareWord,
} from './number-parts.js';
import type { Tokens } from './token.js';

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

/** The value of a word such as `two`, or `null`. */
function numberWord(word: string): Exact | null {
  const value = Object.hasOwn(units, word) ? units[word] : undefined;
  return value === undefined ? null : new Exact(value);
}

/** A number that begins with a word: `two`, `half a`, `one and a half`, `a couple`. */
export function readWords(tokens: Tokens, index: number): ReadNumber | null {
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

function readMixedWords(tokens: Tokens, index: number, value: Exact): ReadNumber {
  const mixed = fractionBehind(tokens, index + 1);
  if (mixed !== null) return dozens(tokens, value.plus(mixed.value), mixed.next);
  return dozens(tokens, value, index + 1);
}

/** `two thirds`, `three-quarters`, `one half`. */
function readShareOf(tokens: Tokens, index: number, value: Exact): ReadNumber | null {
  const at = isDash(tokens.word(index + 1)) ? index + 2 : index + 1;
  const share = shareWord(tokens.word(at));
  if (share === null) return null;
  return { ...plainNumber(value.times(share), passOfArticle(tokens, at + 1)), fraction: true };
}

/** `half`, `half a`, `half of a`, `quarter`, `half dozen`; but not `half and half`, which is a food. */
function readHalf(tokens: Tokens, index: number): ReadNumber | null {
  const value = shareWord(tokens.word(index));
  const behind = tokens.word(index + 1);
  if (value === null || behind === '&' || (behind === 'and' && tokens.word(index + 2) === 'half')) return null;
  const next = passOfArticle(tokens, index + 1);
  if (tokens.word(next) === 'dozen') return plainNumber(value.times(12), next + 1);
  return { ...plainNumber(value, next), fraction: true };
}

function readAfterArticle(tokens: Tokens, index: number): ReadNumber | null {
  const behind = tokens.word(index + 1);
  if (behind === 'couple') return readCouple(tokens, index + 1);
  if (behind === 'dozen') return plainNumber(new Exact(12), index + 2);
  if (behind === 'half' || behind === 'quarter' || behind === 'third') {
    const share = shareWord(behind);
    if (share === null || isHyphened(tokens, index + 1)) return null;
    const next = passOfArticle(tokens, index + 2);
    if (tokens.word(next) === 'dozen') return plainNumber(share.times(12), next + 1);
    return { ...plainNumber(share, next), fraction: true };
  }
  return { ...plainNumber(new Exact(1), index + 1), article: true };
}

function readCouple(tokens: Tokens, index: number): ReadNumber {
  const next = tokens.word(index + 1) === 'of' ? index + 2 : index + 1;
  return { ...plainNumber(new Exact(2), next), couple: true };
}
