import { isDash } from '../token/dash.js';
import type { Token, Tokens } from '../token/token.js';
import { leadingPreparation, modifiers, nameEnders } from './line-words.js';
import { endsName, joinsNames } from './name-end.js';
import { isStop, passHyphened, passPreparation, type Taken } from './preparation.js';

/** A food's name among the tokens. */
export interface FoodPhrase {
  /** Indexes of its tokens, in order: a bracket between them is left out. */
  tokens: number[];
  text: string;
  next: number;
}

/**
 * Reads the food's plain name from an index: preparation before it is passed over, and the name ends where preparation,
 * a preposition, an alternative or a sign begins.
 *
 * @param list Foods joined by commas are one phrase (`1 tsp each: paprika, oregano`).
 * @returns `null` where no name stands before `stop`.
 */
export function readFoodPhrase(
  tokens: Tokens,
  from: number,
  stop: number,
  taken: Taken,
  list = false,
): FoodPhrase | null {
  const start = passPreparation(tokens, from, stop, taken);
  const found = collect(tokens, start, stop, taken, list);
  if (found !== null || (start === from && !list)) return found;
  // Nothing but preparation: then it is the name (`leftovers`, `2 quarters`).
  return collect(tokens, firstWord(tokens, from, stop, taken), stop, taken, list);
}

function firstWord(tokens: Tokens, from: number, stop: number, taken: Taken): number {
  let at = from;
  while (at < stop && (taken(at) || tokens.at(at).kind !== 'word' || tokens.word(at) === 'of')) at += 1;
  return at;
}

function collect(tokens: Tokens, from: number, stop: number, taken: Taken, list: boolean): FoodPhrase | null {
  const found: number[] = [];
  let at = from;
  while (at < stop && !taken(at)) {
    if (isStillPreparation(tokens, at, found)) {
      found.length = 0;
      at += 1;
      continue;
    }
    const step = stepInto(tokens, at, found, list);
    if (step === null) break;
    if (step.take) for (let index = at; index < step.next; index += 1) found.push(index);
    at = step.next;
  }
  const trimmed = trimEnd(tokens, found);
  if (trimmed.length === 0) return null;
  return { tokens: trimmed, text: phraseText(tokens, trimmed), next: at };
}

/** `White sliced bread`, `uncooked peeled shrimp`, `burrito sized tortillas`: what was taken for the name only led to it. */
function isStillPreparation(tokens: Tokens, at: number, found: readonly number[]): boolean {
  if (found.length === 0) return false;
  const { lower } = tokens.at(at);
  const behind = tokens.at(at + 1);
  // `Chicken cooked and diced` has had its name.
  const goesOn =
    behind.kind === 'word' &&
    behind.lower !== 'and' &&
    !nameEnders.has(behind.lower) &&
    !leadingPreparation.has(behind.lower);
  if (!goesOn) return false;
  if (lower === 'sized' || lower === 'size') return found.length < 3;
  if (!leadingPreparation.has(lower) || !lower.endsWith('ed')) return false;
  return found.every((index) => {
    const word = tokens.word(index);
    return modifiers.has(word) || leadingPreparation.has(word) || word.endsWith('ed');
  });
}

interface Step {
  take: boolean;
  next: number;
}

function stepInto(tokens: Tokens, at: number, found: readonly number[], list: boolean): Step | null {
  const token = tokens.at(at);
  const partner = tokens.partner[at] ?? -1;
  if (partner > at) return stepOverBracket(tokens, at, partner, found);
  if (list && token.lower === ',' && !endsName(tokens, at + 1)) return { take: true, next: at + 1 };
  if (list && token.lower === ';') return { take: true, next: at + 1 };
  if (isStop(tokens, at)) return null;
  if (token.kind === 'number')
    return found.length === 0 || isGluedNumber(tokens, at) ? { take: true, next: at + 1 } : null;
  if (token.kind === 'mark') return stepOverMark(tokens, at, found);
  if (token.lower === 'or') return joinsNames(tokens, at, found) ? { take: true, next: at + 1 } : null;
  if (token.lower === 'and' && stopsAtAnd(tokens, at)) {
    const alternative = isDashOrSlash(tokens.word(at + 1)) ? at + 2 : at + 1;
    const joined = tokens.word(alternative) === 'or' && joinsNames(tokens, alternative, found);
    return joined ? { take: true, next: alternative + 1 } : null;
  }
  if (token.lower === 'of' && endsAtOf(tokens.word(at + 1))) return null;
  if (found.length > 0 && endsName(tokens, at)) return null;
  return { take: true, next: passHyphened(tokens, at, tokens.length) };
}

/** `breast(s)` and `black (or green) tea` go on behind the bracket. */
function stepOverBracket(tokens: Tokens, at: number, partner: number, found: readonly number[]): Step | null {
  if (tokens.word(at + 1) === 's' && !tokens.at(at).gap) return { take: false, next: partner + 1 };
  const alternative = tokens.word(at + 1) === 'or' && found.length > 0;
  const behind = tokens.at(partner + 1);
  return alternative && behind.kind === 'word' && !endsName(tokens, partner + 1)
    ? { take: false, next: partner + 1 }
    : null;
}

function stepOverMark(tokens: Tokens, at: number, found: readonly number[]): Step | null {
  const token = tokens.at(at);
  const glued = !token.gap && !tokens.at(at + 1).gap && tokens.at(at + 1).kind === 'word';
  if (token.lower === '/') return glued && joinsNames(tokens, at, found) ? { take: true, next: at + 1 } : null;
  if (isDash(token.lower)) return glued ? { take: true, next: at + 1 } : null;
  return { take: true, next: at + 1 };
}

function isDashOrSlash(sign: string): boolean {
  return sign === '/' || isDash(sign);
}

function isGluedNumber(tokens: Tokens, at: number): boolean {
  return !tokens.at(at).gap && tokens.at(at - 1).kind === 'mark';
}

const partsOfFruit = new Set(['juice', 'zest', 'rind', 'peel']);

function stopsAtAnd(tokens: Tokens, at: number): boolean {
  const behind = tokens.at(at + 1);
  // `zest of 2 lemons and juice of 1`
  if (partsOfFruit.has(behind.lower) && tokens.word(at + 2) === 'of') return true;
  return behind.lower === '/' || behind.lower === 'or' || behind.kind !== 'word' || endsName(tokens, at + 1);
}

function endsAtOf(behind: string): boolean {
  return (
    behind === 'choice' ||
    behind === 'your' ||
    behind === 'any' ||
    behind === 'each' ||
    behind === 'some' ||
    behind === 'the'
  );
}

const looseEnds = new Set([
  'and',
  'or',
  '&',
  '-',
  '–',
  'fresh',
  'large',
  'small',
  'medium',
  'cold',
  'warm',
  'raw',
  'ripe',
  'extra',
  'more',
  '/',
  'of',
  'a',
  'the',
  '.',
]);

function trimEnd(tokens: Tokens, found: readonly number[]): number[] {
  let length = found.length;
  while (length > 0 && looseEnds.has(tokens.word(found[length - 1] ?? -1))) length -= 1;
  return found.slice(0, length);
}

/** The words as they stand, mark-up and left out brackets taken off. */
export function phraseText(tokens: Tokens, indexes: readonly number[]): string {
  let text = '';
  let before: Token | null = null;
  for (const index of indexes) {
    const token = tokens.at(index);
    const apart = before !== null && (token.gap || before.end < token.start - 1);
    text += apart ? ` ${token.text}` : token.text;
    before = token;
  }
  return text;
}
