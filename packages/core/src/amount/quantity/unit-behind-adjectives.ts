import { leadingPreparation } from '../line/line-words.js';
import type { Tokens } from '../token/token.js';
import { longestRow } from './about.js';
import { measureAdjectives, shortSizes } from './adjective-words.js';
import { type ReadUnit, readUnit } from './unit-reading.js';

/** Passes over the words that may stand between a number and its unit. */
export function passAdjectives(tokens: Tokens, index: number): number {
  let at = index;
  while (at < index + longestRow && (measureAdjectives.has(tokens.word(at)) || isInnerSign(tokens, at, index))) at += 1;
  return at;
}

/** The hyphen of `medium-sized`, the comma of `small, heaped`, the full stop of `sm.` and the first half of `thumb-sized`. */
function isInnerSign(tokens: Tokens, at: number, from: number): boolean {
  const sign = tokens.word(at);
  const behind = tokens.word(at + 1);
  if (sign === 'thumb')
    return behind === 'sized' || behind === 'size' || (behind === '-' && tokens.word(at + 2).startsWith('size'));
  if (at === from) return false;
  if (sign === '.') return !tokens.at(at).gap && Object.hasOwn(shortSizes, tokens.word(at - 1));
  return (sign === '-' || sign === ',') && measureAdjectives.has(behind);
}

/** The unit behind adjectives (`2 heaped tbsp`): no single letter, and no `in`, which is a preposition there. */
export function readUnitBehindAdjectives(tokens: Tokens, article: number, adjectives: number): ReadUnit | null {
  const prepared = readPreparedUnit(tokens, article);
  if (prepared !== null) return prepared;
  if (adjectives === article || tokens.at(adjectives).text.length < 2 || tokens.word(adjectives) === 'in') return null;
  return readUnit(tokens, adjectives, { afterNumber: tokens.at(adjectives).kind === 'word' });
}

/** `4 thinly cut slices of ham`: preparation before a counting unit with `of` behind it. */
function readPreparedUnit(tokens: Tokens, index: number): ReadUnit | null {
  let at = index;
  while (at < index + longestRow && (leadingPreparation.has(tokens.word(at)) || measureAdjectives.has(tokens.word(at))))
    at += 1;
  const unit = at > index ? readUnit(tokens, at, { afterNumber: false }) : null;
  return unit !== null && unit.loose === '' && tokens.word(unit.next) === 'of' ? unit : null;
}
