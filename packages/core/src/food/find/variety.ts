import { longestName } from './longest-name.js';
import type { Named, PhraseWord, Speech } from './speech.js';

/** Plants that are sold under the names of their varieties. Common practice, no source. */
const heads: ReadonlySet<string> = new Set(
  `apple apples pear pears potato potatoes tomato tomatoes onion onions grape grapes plum plums peach peaches mango mangos mangoes
  orange oranges avocado avocados cherries strawberries cucumber cucumbers`.split(/\s+/),
);

/** Words that make another plant, or a dish, of one of these: `prickly pear`, `mock apple`. */
export const otherPlants: ReadonlySet<string> = new Set(
  `prickly custard rose crab tree wood star water love balsam java sea ground mock vegan vegetarian imitation faux candy scotch asian chinese
  japanese korean thai indian`.split(/\s+/),
);

/** A variety that no name has, `Gala apples`: one or two words before the plant. */
export function variety(words: readonly PhraseWord[], speech: Speech): Named | null {
  const head = words.at(-1);
  if (head === undefined || !heads.has(head.text)) return null;
  const before = words.slice(0, -1).filter(({ plain }) => !plain);
  const isVariety = ({ text, known }: PhraseWord): boolean =>
    !known && !otherPlants.has(text) && text.length > 3 && !text.endsWith('ed');
  if (before.length < 1 || before.length > 2 || !before.every(isVariety)) return null;
  return longestName([head], speech);
}
