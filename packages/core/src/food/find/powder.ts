import { longestName } from './longest-name.js';
import type { Named, PhraseWord, Speech } from './speech.js';

/** `Powdered mustard` is `mustard powder`, and `cinnamon powder` is `ground cinnamon`. */
export function powder(words: readonly PhraseWord[], speech: Speech): Named | null {
  const [first, last] = [words[0], words.at(-1)];
  if (first === undefined || last === undefined || words.length < 2) return null;
  const isBefore = first.text === 'ground' || first.text === 'powdered';
  if (isBefore === (last.text === 'powder')) return null;
  const rest = isBefore ? words.slice(1) : words.slice(0, -1);
  const word = (text: string): PhraseWord => ({ ...first, text, known: true, plain: false });
  const turned = isBefore ? [...rest, word('powder')] : [word('ground'), ...rest];
  const found = longestName(turned, speech);
  if (found === null || speech.foods.get(found.id)?.role !== 'seasoning') return null;
  return { id: found.id, start: first.start, end: last.end };
}
