import { shortSizes, sizeWords } from '../quantity/adjective-words.js';
import type { Span } from '../reading.js';
import type { Tokens } from '../token/token.js';
import { tokenize } from '../token/tokenize.js';

/** The size class of a line's eggs, where it is more than a plain word for a size. */
export interface ReadEggSize {
  /** The class as a kitchen's data spells it: `700 g carton`, `size 7`, `large` for `size L`. */
  text: string;
  span: Span;
  /** Token indexes of the stretch that says nothing else, its brackets or comma with it. */
  first: number;
  next: number;
}

/** Whether a size stands before the word `eggs`: `3 extra large eggs`. Any other stands in brackets behind it: `3 eggs (size 7)`. */
export function isSizeWord(size: string): boolean {
  return size.split(' ').every((word) => sizeWords.has(word) || word === 'extra');
}

/**
 * Reads a size class of eggs that could be taken for something else: `5 eggs (600 g carton)` does not weigh its eggs, and
 * `3 size 7 eggs` does not count sevens.
 *
 * @param names Size classes of the kitchen where the line was written, as its data spells them.
 * @returns Null where no eggs are named, or no such size.
 */
export function readEggSize(tokens: Tokens, names: readonly string[]): ReadEggSize | null {
  const egg = tokens.list.findIndex(({ lower }) => eggWords.has(lower));
  if (egg < 0) return null;
  const phrases = names.filter((name) => !isSizeWord(name)).map((name) => ({ name, words: wordsOf(name) }));
  for (let at = Math.max(0, egg - farthest); at < tokens.length; at += 1) {
    const found = at <= egg ? before(tokens, at, egg, phrases) : behind(tokens, at, phrases);
    if (found !== null) return found;
  }
  return null;
}

const eggWords = new Set(['egg', 'eggs', 'yolk', 'yolks', 'whites']);
/** Tokens between a size and the eggs behind it. */
const farthest = 6;

interface Phrase {
  name: string;
  words: readonly string[];
}

function wordsOf(name: string): string[] {
  return tokenize(name).list.map(({ lower }) => lower);
}

/** `3 size 7 eggs` */
function before(tokens: Tokens, at: number, egg: number, phrases: readonly Phrase[]): ReadEggSize | null {
  const size = named(tokens, at, phrases) ?? sized(tokens, at);
  return size === null || size.next > egg ? null : { ...size, span: tokens.span(at, size.next), first: at };
}

/** `3 eggs (size 7)`, `3 eggs, from a 700 g carton`, `3 eggs size 7` */
function behind(tokens: Tokens, at: number, phrases: readonly Phrase[]): ReadEggSize | null {
  const close = tokens.partner[at] ?? -1;
  const sign = tokens.word(at);
  const isBracket = close > at;
  const isClause = isBracket || sign === ',' || sign === ';';
  if (!isClause && sign !== 'size' && sign !== 'from') return null;
  const start = isClause ? at + 1 : at;
  const lead = passLead(tokens, start);
  const size =
    named(tokens, lead, phrases) ??
    sized(tokens, lead) ??
    carton(tokens, lead) ??
    country(tokens, lead) ??
    (isClause && lead === start && tokens.at(at).gap ? letter(tokens, lead) : null) ??
    (sign === ',' && lead === start ? letter(tokens, lead) : null);
  if (size === null || !endsClause(tokens, size.next, isBracket ? close : tokens.length)) return null;
  const span = tokens.span(start, size.next);
  if (!isBracket) return { ...size, span, first: at };
  return size.next === close
    ? { ...size, span, first: at, next: close + 1 }
    : { ...size, span, first: start, next: size.next + 1 };
}

/** `from a 700 g carton` */
function passLead(tokens: Tokens, at: number): number {
  if (tokens.word(at) !== 'from') return at;
  const article = tokens.word(at + 1);
  return article === 'a' || article === 'an' || article === 'the' ? at + 2 : at + 1;
}

function endsClause(tokens: Tokens, at: number, stop: number): boolean {
  const sign = tokens.word(at);
  return at >= stop || sign === ',' || sign === ';' || (stop === tokens.length && sign === '(');
}

type Size = Pick<ReadEggSize, 'text' | 'next'>;

function named(tokens: Tokens, at: number, phrases: readonly Phrase[]): Size | null {
  const found = phrases
    .filter(({ words }) => words.every((word, offset) => tokens.word(at + offset) === word))
    .sort((one, other) => other.words.length - one.words.length)[0];
  return found === undefined ? null : { text: found.name, next: passOther(tokens, at + found.words.length) };
}

const letters: Readonly<Record<string, string>> = { s: 'small', m: 'medium', l: 'large', ...shortSizes };

function letter(tokens: Tokens, at: number): Size | null {
  const word = tokens.word(at);
  const size = Object.hasOwn(letters, word) ? letters[word] : undefined;
  return size === undefined ? null : { text: size, next: at + 1 };
}

/** `size 7`, `size L`, `size-7`, `size large` */
function sized(tokens: Tokens, at: number): Size | null {
  if (tokens.word(at) !== 'size') return null;
  const value = tokens.word(at + 1) === '-' ? at + 2 : at + 1;
  const { kind, lower } = tokens.at(value);
  if (kind === 'number') return { text: `size ${lower}`, next: passOther(tokens, value + 1) };
  return letter(tokens, value) ?? (sizeWords.has(lower) ? { text: lower, next: value + 1 } : null);
}

/** `size 6 or 7`: either will do. */
function passOther(tokens: Tokens, at: number): number {
  const joint = tokens.word(at);
  const other = tokens.word(at + 1) === 'size' ? at + 2 : at + 1;
  const isOther =
    (joint === 'or' || joint === '/' || joint === '-' || joint === '–') && tokens.at(other).kind === 'number';
  return isOther ? other + 1 : at;
}

const countries = new Set(['us', 'uk', 'eu']);

/** `US large`: the size says whose it is. */
function country(tokens: Tokens, at: number): Size | null {
  const size = tokens.word(at + 1);
  return countries.has(tokens.word(at)) && sizeWords.has(size) ? { text: size, next: at + 2 } : null;
}

const grams = new Set(['g', 'gr', 'gram', 'grams']);
const cartons = new Set(['carton', 'cartons']);

/** `700 g carton`, `700g carton`: what a dozen of the eggs weighs at least. */
function carton(tokens: Tokens, at: number): Size | null {
  const { kind, lower } = tokens.at(at);
  const unit = tokens.word(at + 1) === '-' ? at + 2 : at + 1;
  if (kind !== 'number' || !grams.has(tokens.word(unit)) || !cartons.has(tokens.word(unit + 1))) return null;
  return { text: `${lower} g carton`, next: unit + 2 };
}
