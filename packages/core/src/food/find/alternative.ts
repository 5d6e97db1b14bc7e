import { longestName } from './longest-name.js';
import type { Named, PhraseWord, Speech } from './speech.js';

/** `swiss or rainbow chard`: swiss chard, else what stands before `or`, else what stands behind it. */
export function alternative(words: readonly PhraseWord[], speech: Speech): Named | null {
  const at = words.findIndex(({ text }) => text === 'or' || text === '/');
  if (at < 1 || at === words.length - 1) return null;
  const [one, other] = [words.slice(0, at), words.slice(at + 1)];
  const shared = withHeadOf(one, other, speech);
  if (shared !== null) return shared;
  const first = longestName(one, speech);
  // `crushed peanuts/sesame` may be a mixture: its second half alone would be the wrong food, unless both are of one sort.
  const isMixture = words[at]?.text === '/' && at > 1 && one.at(-1)?.text !== other.at(-1)?.text;
  if (first !== null || isMixture) return first;
  return longestName(other, speech) ?? alternative(other, speech);
}

/** The first words with as many of the last words of the others as make a name. */
function withHeadOf(one: readonly PhraseWord[], other: readonly PhraseWord[], speech: Speech): Named | null {
  for (let from = 1; from < other.length; from += 1) {
    const found = longestName([...one, ...other.slice(from)], speech);
    if (found !== null) return found;
  }
  return null;
}

/** What is made of a food, so that two joined by `and` share the word: `onion and garlic powder`. */
const products = new Set('powder juice zest stock broth seeds oil vinegar flour extract'.split(' '));

/** `lemon and lime juice`: the juice of the first, where both have one. */
export function jointProduct(words: readonly PhraseWord[], speech: Speech): Named | null {
  const at = words.findIndex(({ text }) => text === 'and');
  const head = words.at(-1);
  if (at < 1 || at >= words.length - 2 || head === undefined || !products.has(head.text)) return null;
  const both = longestName(words.slice(at + 1), speech);
  return both === null ? null : longestName([...words.slice(0, at), head], speech);
}

/** `breast of chicken` is `chicken breast`; `a pot of water` is water. */
export function partOf(words: readonly PhraseWord[], speech: Speech): Named | null {
  const at = words.findIndex(({ text }) => text === 'of' || text === 'o');
  if (at < 1 || at === words.length - 1) return null;
  const [part, whole] = [words.slice(0, at), words.slice(at + 1)];
  const turned = longestName([...whole, ...part], speech);
  const [first, last] = [words[0], words.at(-1)];
  if (turned !== null && first !== undefined && last !== undefined) {
    return { id: turned.id, start: first.start, end: last.end };
  }
  // `Cream of celery` is neither.
  return longestName(part, speech) === null ? longestName(whole, speech) : null;
}
