import { isDash, isInnerHyphen } from '../token/dash.js';
import type { Tokens } from '../token/token.js';
import { keptPairs, leadingPreparation, nameEnders } from './line-words.js';

const kept = new Map(Object.entries(keptPairs));
const notAdverbs = new Set(['jelly', 'belly', 'curly', 'early', 'chilly', 'family', 'homely', 'bubbly', 'piccalilly']);

/** Whether a token belongs to the amount or has been used otherwise. */
export type Taken = (index: number) => boolean;

/** Passes over what stands before a food's name: `finely chopped fresh`, `bone-in, skin-on`, a bracket, the 2% of `2% milk`. */
export function passPreparation(tokens: Tokens, from: number, stop: number, taken: Taken): number {
  let at = from;
  let passed = false;
  while (at < stop) {
    const token = tokens.at(at);
    const partner = tokens.partner[at] ?? -1;
    if (taken(at) || token.lower === 'of') at += 1;
    else if (partner > at) at = partner + 1;
    else if (isPreparation(tokens, at)) {
      passed = true;
      at = passHyphened(tokens, at, stop);
    } else if (sizeCountEnd(tokens, at) > at) at = sizeCountEnd(tokens, at);
    else if (isLooseNumber(tokens, at)) at += 1;
    else if (passed && isJoint(tokens, at)) at += 1;
    else if (isQuotedNumber(tokens, at)) at += 3;
    else if (token.kind === 'mark' && !isStop(tokens, at)) at += 1;
    else break;
  }
  return at;
}

/** `1 pack of 8 tortillas`, `1 cup 2% milk`: a number that says a kind is no part of the name; but `5-spice powder` is one. */
function isLooseNumber(tokens: Tokens, at: number): boolean {
  const token = tokens.at(at);
  if (token.lower === '%' || (token.lower === '.' && !token.gap && shortSizes.has(tokens.word(at - 1)))) return true;
  const isNumber = token.kind === 'number' || (token.kind === 'word' && /^\p{Nd}[\p{Nd}./]*$/u.test(token.text));
  return isNumber && !isInnerHyphen(tokens, at + 1) && tokens.at(at + 1).lower !== '-';
}

/** `"00" flour`: the kind in quotation marks. */
function isQuotedNumber(tokens: Tokens, at: number): boolean {
  return quotes.has(tokens.word(at)) && isLooseNumber(tokens, at + 1) && quotes.has(tokens.word(at + 2));
}

/** Behind the `16-20 count` or `21/25 ct` of shrimp: how many make a pound says their size. */
function sizeCountEnd(tokens: Tokens, at: number): number {
  if (tokens.at(at).kind !== 'number') return at;
  const ranged = isDash(tokens.word(at + 1)) && tokens.at(at + 2).kind === 'number';
  const behind = ranged ? at + 3 : at + 1;
  return tokens.word(behind) === 'count' || tokens.word(behind) === 'ct' ? behind + 1 : at;
}

const quotes = new Set(['"', '“', '”', '„', "'", '‘', '’']);
const shortSizes = new Set(['lg', 'lrg', 'med', 'sm', 'xl', 'approx']);

function isJoint(tokens: Tokens, at: number): boolean {
  const { lower } = tokens.at(at);
  const behind = tokens.at(at + 1);
  if (lower === ',' || lower === '/')
    return behind.kind === 'word' && (!nameEnders.has(behind.lower) || isPreparation(tokens, at + 1));
  if (lower === 'or' && (tokens.word(at - 1) === 'and' || behind.kind === 'number')) return true;
  if (lower === 'to') return isPreparation(tokens, at + 1);
  return (
    (lower === 'or' || lower === 'and' || lower === '&') &&
    (isPreparation(tokens, at + 1) || tokens.word(at + 1) === 'or')
  );
}

function isPreparation(tokens: Tokens, at: number): boolean {
  const { lower, kind } = tokens.at(at);
  if (kind !== 'word') return false;
  const compound = compoundAt(tokens, at);
  if (compound !== null && compound !== lower) return leadingPreparation.has(compound) || isPreparedCompound(compound);
  const next = tokens.word(at + 1);
  const isKept = (pair: string): boolean => pair === next || pair === `${next} ${tokens.word(at + 2)}`;
  if (kept.get(lower)?.some(isKept)) return false;
  if (leadingPreparation.has(lower) || isAdverb(lower)) return true;
  // `mixed toasted crushed peanuts`, but `mixed spice` and `toasted sesame oil`.
  return kindOrPreparation.has(lower) && isPreparation(tokens, at + 1);
}

const kindOrPreparation = new Set([
  'mixed',
  'toasted',
  'roasted',
  'dried',
  'frozen',
  'assorted',
  'pure',
  'organic',
  'pressed',
]);

function isPreparedCompound(compound: string): boolean {
  const tail = compound.slice(compound.lastIndexOf('-') + 1);
  return (
    tail === 'sized' ||
    tail === 'size' ||
    tail === 'cut' ||
    tail === 'quality' ||
    tail === 'squeezed' ||
    tail === 'chopped'
  );
}

function isAdverb(word: string): boolean {
  return word.length > 5 && word.endsWith('ly') && !notAdverbs.has(word);
}

/** The whole of a word with hyphens that begins at an index, or `null` in the middle of one. */
function compoundAt(tokens: Tokens, index: number): string | null {
  let text = tokens.word(index);
  let at = index;
  while (at < index + 8 && isInnerHyphen(tokens, at + 1)) {
    text = `${text}-${tokens.word(at + 2)}`;
    at += 2;
  }
  return text;
}

/** Index behind the words that hyphens join to one: behind `low-sodium`. */
export function passHyphened(tokens: Tokens, index: number, stop: number): number {
  let at = index + 1;
  while (at + 1 < stop && isInnerHyphen(tokens, at)) at += 2;
  return at;
}

const stops = new Set([
  ',',
  ';',
  ':',
  ')',
  ']',
  '|',
  '=',
  '+',
  '~',
  '≈',
  '!',
  '?',
  '…',
  '"',
  '“',
  '”',
  '<',
  '>',
  '^',
  '{',
  '}',
]);

/** A sign behind which no part of the name stands. */
export function isStop(tokens: Tokens, at: number): boolean {
  const token = tokens.at(at);
  if (stops.has(token.lower) || ((token.lower === '(' || token.lower === '[') && (tokens.partner[at] ?? -1) < at))
    return true;
  if (token.lower === '.') return tokens.at(at + 1).gap;
  return isDash(token.lower) && token.gap && tokens.at(at + 1).gap;
}
