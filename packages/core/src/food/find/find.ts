import type { Food } from '../food.js';
import { alternative, jointProduct, partOf } from './alternative.js';
import { inColours, infused } from './joined.js';
import { longestName } from './longest-name.js';
import { ofMaker } from './maker.js';
import { type Foods, indexOf } from './name-index.js';
import { nameWords } from './name-words.js';
import { ofKind } from './of-kind.js';
import { isPlain } from './plain-words.js';
import { powder } from './powder.js';
import { respelt } from './respelt.js';
import { type Measured, type Named, notMeasured, type PhraseWord, type Speech } from './speech.js';
import { variety } from './variety.js';

export type { Foods } from './name-index.js';

/** A food, and the stretch of the words that names it. */
export interface FoundFood {
  food: Food;
  start: number;
  end: number;
}

/** No name is longer: what stands behind so many words is a sentence, and would be read in square or cubic time. */
const mostWords = 20;

/**
 * The larder entry that a line's words mean, in the language of a kitchen.
 *
 * The whole phrase is looked up first. Only words that never change a food are then left out one by one from either end, so that
 * `butter beans` is never butter and `coconut milk` never milk. Of foods joined by `or` the first is taken, with the head word
 * that they share (`white or yellow onions`). A word that no food has may be one letter off a word that some food has.
 * A word that is left out has to fit the food: no powder is `fresh`.
 *
 * @param words A food as written: `fresh cilantro`, `All-Purpose Flour`.
 * @param foods The larder's foods.
 * @param kitchen Kitchen id of the writer: `cornflour` is another food in a UK kitchen than in a US one.
 * @param measured What the rest of a line says of the food; nothing if it is left out.
 * @returns The food with its place in the words, or null: an unknown food is better than a wrong one.
 */
export function findFoodIn(
  words: string,
  foods: Foods,
  kitchen: string,
  measured: Measured = notMeasured,
): FoundFood | null {
  const index = indexOf(foods);
  const speech = { foods, index, kitchen, measured };
  const phrase = nameWords(words)
    .slice(0, mostWords)
    .map((word) => ({
      ...word,
      known: index.knows(word.text),
      plain: isPlain(word.text),
      capital: isCapital(words[word.start]),
    }));
  const found =
    meant(phrase, speech) ?? respelt(phrase, speech, meant) ?? variety(phrase, speech) ?? ofMaker(phrase, speech);
  const food = found === null ? undefined : foods.get(found.id);
  return found === null || food === undefined ? null : { food, start: found.start, end: found.end };
}

/** The larder entry that words mean, as `findFoodIn`, without its place. */
export function findFood(words: string, foods: Foods, kitchen: string): Food | null {
  return findFoodIn(words, foods, kitchen)?.food ?? null;
}

const isCapital = (letter = ''): boolean => letter !== letter.toLowerCase();

/** What words mean as they are spelt. */
function meant(words: readonly PhraseWord[], speech: Speech): Named | null {
  return (
    longestName(words, speech) ??
    alternative(words, speech) ??
    inColours(words, speech) ??
    jointProduct(words, speech) ??
    infused(words, speech) ??
    partOf(words, speech) ??
    ofKind(words, speech) ??
    powder(words, speech)
  );
}
