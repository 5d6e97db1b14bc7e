import { longestName } from './longest-name.js';
import type { Named, PhraseWord, Speech } from './speech.js';

/** Colours that a shop sells one plant in. */
const colours: ReadonlySet<string> = new Set('green red yellow orange white brown black purple'.split(' '));

/** `red and yellow bell peppers`: the first of the two, else what their last words name. Of more there may be one of each. */
export function inColours(words: readonly PhraseWord[], speech: Speech): Named | null {
  const [first, joint, second, ...head] = words;
  if (first === undefined || joint?.text !== 'and' || !isColour(first) || !isColour(second)) return null;
  return longestName([first, ...head], speech) ?? longestName(words.slice(2), speech) ?? longestName(head, speech);
}

const isColour = (word: PhraseWord | undefined): boolean => word !== undefined && colours.has(word.text);

/** `garlic-infused olive oil` is olive oil: what gave it a taste has been taken out again. */
export function infused(words: readonly PhraseWord[], speech: Speech): Named | null {
  const at = words.findIndex(({ text }) => text === 'infused');
  if (at < 1 || at > 3 || at === words.length - 1) return null;
  const found = longestName(words.slice(at + 1), speech);
  return found !== null && speech.foods.get(found.id)?.role === 'fat' ? found : null;
}
