import { isInnerHyphen } from '../token/dash.js';
import type { Tokens } from '../token/token.js';
import { leadingPreparation, modifiers, modifiersOf, nameEnders, plainAdjectives, sharedHeads } from './line-words.js';
import { passHyphened } from './preparation.js';

const notParticiples = new Set([
  'bread', 'seed', 'aniseed', 'flaxseed', 'linseed', 'rapeseed', 'hempseed', 'seaweed', 'shred', 'red', 'feed', 'breed', 'cornbread',
  'gingerbread', 'shortbread', 'flatbread', 'reed', 'mixed', 'dried', 'sweetbread', 'spread', 'poppyseed', 'unsalted', 'salted',
]); // biome-ignore format: a word list is read in rows

/** Whether a name that has begun ends before this word. */
export function endsName(tokens: Tokens, at: number): boolean {
  const { lower } = tokens.at(at);
  if (isInnerHyphen(tokens, at + 1)) return false;
  // `dried mixed herbs`, but `two eggs mixed with milk`.
  if (lower === 'mixed' && tokens.at(at + 1).kind === 'word' && !nameEnders.has(tokens.word(at + 1))) return false;
  // `salt and freshly ground pepper` names two foods.
  if (nameEnders.has(lower))
    return !(lower.endsWith('ly') && tokens.word(at - 1) === 'and' && tokens.at(at + 1).kind === 'word');
  const participle = lower.length > 4 && lower.endsWith('ed') && !notParticiples.has(lower);
  if (!participle) return false;
  const behind = tokens.at(at + 1);
  return leadingPreparation.has(lower) || behind.kind !== 'word' || nameEnders.has(behind.lower);
}

/** Whether the names on both sides share their head noun: `chicken or beef broth`, but not `butter or ghee`. */
export function joinsNames(tokens: Tokens, at: number, found: readonly number[]): boolean {
  const before = found.at(-1);
  if (before === undefined) return false;
  const names = namesFrom(tokens, at + 1);
  const head = names.at(-1) ?? '';
  if (plainAdjectives.has(tokens.word(before)) && names.length > 1) return true;
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
