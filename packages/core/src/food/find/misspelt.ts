import { isOneSlipFrom } from '../../amount/quantity/misspelling.js';
import { singularKey } from './name-key.js';

/** Shorter words are too close to each other: `rub` is no slip of `rib`. */
const shortest = 6;
const shortestSlip = 5;

/** Known words by what a writer may make of them. */
export interface SlipIndex {
  /** By what is left of them when one letter is missing: two words that are a letter apart share an entry. */
  rests: ReadonlyMap<string, readonly string[]>;
  /** By their letters with no letter twice in a row. */
  singles: ReadonlyMap<string, readonly string[]>;
}

/** The index of slips of the words that are long enough for one. */
export function slipIndex(words: Iterable<string>): SlipIndex {
  const rests = new Map<string, string[]>();
  const singles = new Map<string, string[]>();
  for (const word of words) {
    if (word.length >= shortestSlip) enter(singles, singled(word), word);
    if (word.length < shortest) continue;
    for (const rest of [word, ...withoutOne(word)]) enter(rests, rest, word);
  }
  return { rests, singles };
}

function enter(index: Map<string, string[]>, key: string, word: string): void {
  const entry = index.get(key);
  if (entry === undefined) index.set(key, [word]);
  else entry.push(word);
}

/**
 * The one known word that is a single letter away from a word nobody knows, `jalepeno` for `jalapeno`, or that has other letters
 * doubled, `brocolli` for `broccoli`.
 *
 * @param word A word that is not known itself.
 * @returns Null for a short word, and where two words are as near. The first letter must be right.
 */
export function meantBy(word: string, { rests, singles }: SlipIndex): string | null {
  if (word.length < shortestSlip) return null;
  const near = [word, ...withoutOne(word)].flatMap((rest) => rests.get(rest) ?? []);
  return (
    onlyOf(near.filter((other) => isOneSlip(word, other) && !isQuality(word, other))) ??
    onlyOf(singles.get(singled(word)) ?? [])
  );
}

/** The one word among these; a word and its plural are one word here. */
function onlyOf(words: readonly string[]): string | null {
  const [first] = words;
  if (first === undefined) return null;
  return words.every((other) => singularKey(other) === singularKey(first)) ? first : null;
}

const singled = (word: string): string => word.replace(/(.)\1+/gu, '$1');

/** A word less each of its letters in turn, but for the first. */
function withoutOne(word: string): string[] {
  const rests: string[] = [];
  for (let at = 1; at < word.length; at += 1) rests.push(word.slice(0, at) + word.slice(at + 1));
  return rests;
}

/** No one gets the first letter wrong. */
const isOneSlip = (one: string, other: string): boolean => one[0] === other[0] && isOneSlipFrom(one, other);

/** `Cheesy` and `smokey` say how a thing is: no slips of `cheese` and `smoked`. */
const isQuality = (word: string, other: string): boolean => word.endsWith('y') && !other.endsWith('y');
