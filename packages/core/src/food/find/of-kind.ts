import type { Food } from '../food.js';
import { longestName } from './longest-name.js';
import { foodNamed } from './name-index.js';
import type { Named, PhraseWord, Speech } from './speech.js';
import { isPlant, isRaw } from './traits.js';

type IsOfKind = (food: Food) => boolean;

const holds =
  (allergen: string): IsOfKind =>
  ({ allergens }) =>
    allergens.includes(allergen);
const isOf =
  (role: Food['role']): IsOfKind =>
  (food) =>
    food.role === role;
const isMeat: IsOfKind = (food) => isRaw(food) && food.allergens.length === 0;

/** What a word for a kind says of every food of it: `fusilli pasta` is fusilli, since that holds gluten. */
const kinds: ReadonlyMap<string, IsOfKind> = new Map([
  ['cheese', holds('milk')],
  ['pasta', holds('gluten')],
  ['noodles', holds('gluten')],
  ['bread', holds('gluten')],
  ['fish', holds('fish')],
]);

/** Such words of which a line may name one in brackets only: `nuts (pecans)`. */
const wideKinds: ReadonlyMap<string, IsOfKind> = new Map([
  ...kinds,
  ['meat', isMeat],
  ['fat', isOf('fat')],
  ['oil', isOf('fat')],
  ['sweetener', isOf('sugar')],
  ['nuts', holds('nuts')],
  ['berries', isPlant],
  ['fruit', isPlant],
  ['fruits', isPlant],
  ['vegetable', isPlant],
  ['vegetables', isPlant],
  ['herbs', isOf('seasoning')],
  ['spice', isOf('seasoning')],
  ['spices', isOf('seasoning')],
]);

/** A name without the word for its kind, if what is left is of that kind. */
export function ofKind(words: readonly PhraseWord[], speech: Speech): Named | null {
  const isOfKind = kinds.get(words.at(-1)?.text ?? '');
  if (isOfKind === undefined) return null;
  // `Light cream cheese` is no light cream, since cream cheese has a name of its own.
  for (let from = 1; from < words.length - 1; from += 1) {
    if (nameOf(words.slice(from), speech) !== null) return null;
  }
  const found = longestName(words.slice(0, -1), speech);
  const food = found === null ? undefined : speech.foods.get(found.id);
  return food !== undefined && isOfKind(food) ? found : null;
}

const nameOf = (words: readonly PhraseWord[], { index, kitchen }: Speech): string | null =>
  foodNamed(index, words.map(({ text }) => text).join(' '), kitchen);

/** Whether a food is of the kind that a word names: `meat`, `cheese`. */
export function isOfKindNamed(word: string, food: Food): boolean {
  return wideKinds.get(word)?.(food) ?? false;
}
