import { readNumber } from '../token/number.js';
import type { Tokens } from '../token/token.js';

const aboutWords = new Set([
  'about',
  'around',
  'approximately',
  'approx',
  'roughly',
  'circa',
  'ca',
  '~',
  '≈',
  '∼',
  '<',
  '≤',
  '>',
  '≥',
]);

/** Words for about and open ends before a number, as sequences. */
const openings: readonly (readonly string[])[] = [
  ['close', 'to'],
  ['up', 'to'],
  ['at', 'least'],
  ['at', 'most'],
  ['no', 'more', 'than'],
  ['not', 'more', 'than'],
  ['less', 'than'],
  ['more', 'than'],
  ['no', 'less', 'than'],
];

/** Words for about and open ends behind a number or unit, as sequences. */
const endings: readonly (readonly string[])[] = [
  ['or', 'so'],
  ['or', 'more'],
  ['or', 'less'],
  ['or', 'thereabouts'],
  ['or', 'fewer'],
  ['(', 'or', 'so', ')'],
  ['(', 'or', 'more', ')'],
  ['ish'],
  ['-', 'ish'],
];

function sequenceAt(tokens: Tokens, index: number, sequences: readonly (readonly string[])[]): number {
  const found = sequences.find((words) => words.every((word, offset) => tokens.word(index + offset) === word));
  return found === undefined ? index : index + found.length;
}

/** More words in a row than any writer puts before a number or a unit: it bounds the reading of a senseless text. */
export const longestRow = 6;

/** Passes over the words for about before a number. */
export function passAbout(tokens: Tokens, index: number): number {
  let at = index;
  for (let step = 0; step < longestRow; step += 1) {
    const before = at;
    if (aboutWords.has(tokens.word(at))) at += tokens.word(at + 1) === '.' && !tokens.at(at + 1).gap ? 2 : 1;
    at = sequenceAt(tokens, at, openings);
    if (at === before) break;
  }
  return at;
}

/** Passes over `or so`, `or more`, `+` behind a number or unit. */
export function passEnding(tokens: Tokens, index: number): number {
  const sign = tokens.at(index);
  // A plus sign before another number is a sum.
  if (sign.lower === '+' && !sign.gap && readNumber(tokens, index + 1) === null) return index + 1;
  return sequenceAt(tokens, index, endings);
}
