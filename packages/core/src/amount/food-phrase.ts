import { keptPairs, leadingPreparation, modifiers, modifiersOf, nameEnders, sharedHeads } from './line-words.js';
import { isDash } from './number.js';
import type { Token, Tokens } from './token.js';

/** A food's name among the tokens. */
export interface FoodPhrase {
  /** Indexes of its tokens, in order: a bracket between them is left out. */
  tokens: number[];
  text: string;
  next: number;
}

const kept = new Map(Object.entries(keptPairs));
const notAdverbs = new Set(['jelly', 'belly', 'curly', 'early', 'chilly', 'family', 'homely', 'bubbly', 'piccalilly']);
const notParticiples = new Set([
  'bread', 'seed', 'aniseed', 'flaxseed', 'linseed', 'rapeseed', 'hempseed', 'seaweed', 'shred', 'red', 'feed', 'breed', 'cornbread',
  'gingerbread', 'shortbread', 'flatbread', 'reed', 'mixed', 'dried', 'sweetbread', 'spread', 'poppyseed', 'unsalted', 'salted',
]); // biome-ignore format: a word list is read in rows

/** Where the reading of a name may not go: tokens of the amount, and words already used. */
export type Taken = (index: number) => boolean;

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

function passPreparation(tokens: Tokens, from: number, stop: number, taken: Taken): number {
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
    } else if (isLooseNumber(tokens, at)) at += 1;
    else if (passed && isJoint(tokens, at)) at += 1;
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
  if (kept.get(lower)?.includes(tokens.word(at + 1))) return false;
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

function isInnerHyphen(tokens: Tokens, at: number): boolean {
  const [dash, behind] = [tokens.at(at), tokens.at(at + 1)];
  return isDash(dash.lower) && !dash.gap && !behind.gap && behind.kind === 'word';
}

function passHyphened(tokens: Tokens, index: number, stop: number): number {
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
function isStop(tokens: Tokens, at: number): boolean {
  const token = tokens.at(at);
  if (stops.has(token.lower) || ((token.lower === '(' || token.lower === '[') && (tokens.partner[at] ?? -1) < at))
    return true;
  if (token.lower === '.') return tokens.at(at + 1).gap;
  return isDash(token.lower) && token.gap && tokens.at(at + 1).gap;
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
  const goesOn = behind.kind === 'word' && !nameEnders.has(behind.lower) && !leadingPreparation.has(behind.lower);
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

function stopsAtAnd(tokens: Tokens, at: number): boolean {
  const behind = tokens.at(at + 1);
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

/** Whether a name that has begun ends before this word. */
function endsName(tokens: Tokens, at: number): boolean {
  const { lower } = tokens.at(at);
  if (isInnerHyphen(tokens, at + 1)) return false;
  if (nameEnders.has(lower)) return true;
  const participle = lower.length > 4 && lower.endsWith('ed') && !notParticiples.has(lower);
  if (!participle) return false;
  const behind = tokens.at(at + 1);
  return leadingPreparation.has(lower) || behind.kind !== 'word' || nameEnders.has(behind.lower);
}

/** Whether the names on both sides share their head noun: `chicken or beef broth`, but not `butter or ghee`. */
function joinsNames(tokens: Tokens, at: number, found: readonly number[]): boolean {
  const before = found.at(-1);
  if (before === undefined) return false;
  const names = namesFrom(tokens, at + 1);
  const head = names.at(-1) ?? '';
  if (modifies(tokens.word(before), head) && names.length > 1 && sharedHeads.has(head)) return true;
  if (tokens.at(at).lower !== '/') return false;
  // `peanuts/sesame` and `Kalamon/Kalamata olives` are one name to their writer, `Milk/Sweet Cream` two.
  return names.length === 1 || (found.length === 1 && !modifiers.has(names[0] ?? ''));
}

const ownModifiers = new Map(Object.entries(modifiersOf));

function modifies(word: string, head: string): boolean {
  return modifiers.has(word) || ownModifiers.get(word)?.includes(head) === true;
}

/** The next few words of a name, for a look ahead. */
function namesFrom(tokens: Tokens, from: number): string[] {
  const names: string[] = [];
  let at = from;
  while (
    names.length < 4 &&
    tokens.at(at).kind === 'word' &&
    !endsName(tokens, at) &&
    tokens.word(at) !== 'or' &&
    tokens.word(at) !== 'and'
  ) {
    names.push(tokens.word(at));
    at = passHyphened(tokens, at, tokens.length);
  }
  return names;
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
