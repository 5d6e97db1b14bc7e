import type { Food } from '../food.js';

/** Whether some kitchen's shops sell a food in such a container. */
export function comesIn({ sold }: Food, ...words: readonly string[]): boolean {
  return Object.values(sold).some(({ packs }) => packs.some(({ word }) => words.includes(word)));
}

/** Whether a food comes in tins and in no other way. */
export function isOnlyTinned({ sold }: Food): boolean {
  const shops = Object.values(sold);
  const packs = shops.flatMap((each) => each.packs);
  return (
    packs.length > 0 &&
    packs.every(({ word }) => word === 'can' || word === 'tin') &&
    shops.every(({ loose, singly }) => !loose && !singly)
  );
}

/** Whether a food is picked out or weighed off in a shop. */
export function isLoose({ sold }: Food): boolean {
  return Object.values(sold).some(({ loose, singly }) => loose || singly);
}

/** Raw meat, fish or poultry, which has to be cooked through, and not what is left of a roast. */
export function isRaw(food: Food): boolean {
  return food.coreClass !== null && !hasNameWord(food, 'cooked');
}

/** What grows, and is neither meat nor made. */
export function isPlant(food: Food): boolean {
  const { role, allergens, contains } = food;
  return (
    (role === 'bulk' || role === 'acid') &&
    !isRaw(food) &&
    allergens.every((allergen) => allergen === 'celery') &&
    contains.length === 0
  );
}

/** A fruit or a vegetable as it grows, picked out in the shop. */
export function isFreshProduce(food: Food): boolean {
  return (
    isPlant(food) &&
    isLoose(food) &&
    food.pieces.some(({ unit }) => unit === 'count' || unit === 'bunch' || unit === 'head')
  );
}

/** Whether some name of a food has one of these words. */
export function hasNameWord({ names }: Food, ...words: readonly string[]): boolean {
  return Object.values(names).some((list) =>
    list.some(({ one }) =>
      one
        .toLowerCase()
        .split(' ')
        .some((word) => words.includes(word)),
    ),
  );
}
