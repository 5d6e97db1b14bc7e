import type { Food } from './food.js';
import { meantBy } from './misspelt.js';
import { type Foods, foodNamed, indexOf, type ReadyIndex } from './name-index.js';
import { type NameWord, nameWords } from './name-words.js';
import { plainWords } from './plain-words.js';

export type { Foods } from './name-index.js';

/** A food, and the stretch of the words that names it. */
export interface FoundFood {
  food: Food;
  start: number;
  end: number;
}

/** No name is longer: what stands behind so many words is a sentence, and would be read in square or cubic time. */
const mostWords = 20;

/** Where names are looked up: an index, in the language of a kitchen. */
interface Speech {
  foods: Foods;
  index: ReadyIndex;
  kitchen: string;
}

/**
 * The larder entry that a line's words mean, in the language of a kitchen.
 *
 * The whole phrase is looked up first. Only words that never change a food are then left out one by one from either end, so that
 * `butter beans` is never butter and `coconut milk` never milk. Of foods joined by `or` the first is taken, with the head word
 * that they share (`white or yellow onions`). A word that no food has may be one letter off a word that some food has.
 *
 * @param words A food as written: `fresh cilantro`, `All-Purpose Flour`.
 * @param foods The larder's foods.
 * @param kitchen Kitchen id of the writer: `cornflour` is another food in a UK kitchen than in a US one.
 * @returns The food with its place in the words, or null: an unknown food is better than a wrong one.
 */
export function findFoodIn(words: string, foods: Foods, kitchen: string): FoundFood | null {
  const speech = { foods, index: indexOf(foods), kitchen };
  const phrase = nameWords(words).slice(0, mostWords);
  const found = meant(phrase, speech) ?? respelt(phrase, speech);
  const food = found === null ? undefined : foods.get(found.id);
  return found === null || food === undefined ? null : { food, start: found.start, end: found.end };
}

/** The larder entry that words mean, as `findFoodIn`, without its place. */
export function findFood(words: string, foods: Foods, kitchen: string): Food | null {
  return findFoodIn(words, foods, kitchen)?.food ?? null;
}

interface Named {
  id: string;
  start: number;
  end: number;
}

/** What words mean as they are spelt. */
function meant(words: readonly NameWord[], speech: Speech): Named | null {
  return named(words, speech) ?? alternative(words, speech) ?? partOf(words, speech) ?? ofKind(words, speech);
}

/** The longest name among the words, plain words taken off the ends, or one of them from inside (`whole raw chicken`). */
function named(words: readonly NameWord[], { index, kitchen }: Speech): Named | null {
  let [from, to] = [0, words.length];
  while (from < to) {
    const [first, last] = [words[from], words[to - 1]];
    if (first === undefined || last === undefined) return null;
    let id = foodNamed(index, keyOf(words, from, to), kitchen);
    for (let inner = from + 1; id === null && inner < to - 1; inner += 1) {
      if (plainWords.has(words[inner]?.text ?? '')) id = foodNamed(index, keyOf(words, from, to, inner), kitchen);
    }
    if (id !== null) return { id, start: first.start, end: last.end };
    if (plainWords.has(first.text)) from += 1;
    else if (plainWords.has(last.text)) to -= 1;
    else return null;
  }
  return null;
}

function keyOf(words: readonly NameWord[], from: number, to: number, without = -1): string {
  let key = words[from]?.text ?? '';
  for (let at = from + 1; at < to; at += 1) if (at !== without) key += ` ${words[at]?.text}`;
  return key;
}

/** `swiss or rainbow chard`: swiss chard, else what stands before `or`, else what stands behind it. */
function alternative(words: readonly NameWord[], speech: Speech): Named | null {
  const at = words.findIndex(({ text }) => text === 'or' || text === '/');
  if (at < 1 || at === words.length - 1) return null;
  const [one, other] = [words.slice(0, at), words.slice(at + 1)];
  for (let from = 1; from < other.length; from += 1) {
    const found = named([...one, ...other.slice(from)], speech);
    if (found !== null) return found;
  }
  const first = named(one, speech);
  // `crushed peanuts/sesame` may be a mixture: its second half alone would be the wrong food.
  if (first !== null || (words[at]?.text === '/' && at > 1)) return first;
  return named(other, speech) ?? alternative(other, speech);
}

/** `breast of chicken` is `chicken breast`; `a pot of water` is water. */
function partOf(words: readonly NameWord[], speech: Speech): Named | null {
  const at = words.findIndex(({ text }) => text === 'of');
  if (at < 1 || at === words.length - 1) return null;
  const [part, whole] = [words.slice(0, at), words.slice(at + 1)];
  const turned = named([...whole, ...part], speech);
  const [first, last] = [words[0], words.at(-1)];
  if (turned !== null && first !== undefined && last !== undefined) {
    return { id: turned.id, start: first.start, end: last.end };
  }
  return named(whole, speech);
}

/** What a word for a kind says of every food of it: `fusilli pasta` is fusilli, since that holds gluten. */
const kinds: ReadonlyMap<string, string> = new Map([
  ['cheese', 'milk'],
  ['pasta', 'gluten'],
  ['noodles', 'gluten'],
  ['bread', 'gluten'],
  ['fish', 'fish'],
]);

/** A name without the word for its kind, if what is left is of that kind. */
function ofKind(words: readonly NameWord[], speech: Speech): Named | null {
  const allergen = kinds.get(words.at(-1)?.text ?? '');
  if (allergen === undefined) return null;
  const found = named(words.slice(0, -1), speech);
  return found !== null && speech.foods.get(found.id)?.allergens.includes(allergen) ? found : null;
}

/** One word for each of these, which are spelt in many ways. */
const spellings: ReadonlyMap<string, readonly string[]> = new Map(
  [
    ['chili', 'chile', 'chilli'],
    ['chilies', 'chiles', 'chillies', 'chilis', 'chillis'],
    ['yogurt', 'yoghurt'],
    ['flavored', 'flavoured'],
  ].flatMap((group) => group.map((word) => [word, group.filter((other) => other !== word)])),
);

/** The words with slips of the pen put right, then in another spelling; null where there is neither. */
function respelt(words: readonly NameWord[], speech: Speech): Named | null {
  const known = speech.index.words();
  let changed = false;
  const corrected = words.map((word) => {
    if (known.has(word.text) || plainWords.has(word.text)) return word;
    const right = meantBy(word.text, speech.index.slips());
    changed ||= right !== null;
    return right === null ? word : { ...word, text: right };
  });
  return (changed ? meant(corrected, speech) : null) ?? spelled(corrected, speech);
}

function spelled(words: readonly NameWord[], speech: Speech): Named | null {
  const at = words.findIndex(({ text }) => spellings.has(text));
  for (const other of spellings.get(words[at]?.text ?? '') ?? []) {
    const found = meant(
      words.map((word, index) => (index === at ? { ...word, text: other } : word)),
      speech,
    );
    if (found !== null) return found;
  }
  return null;
}
