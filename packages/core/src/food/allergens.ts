import type { Foods } from './find/name-index.js';
import type { Food } from './food.js';

/** Every allergen that a food brings: those that it lists, and those of what it is composed of. */
export function allergensOf(food: Food, foods: Foods): ReadonlySet<string> {
  return gathered(food, foods, (each) => each.allergens, new Set());
}

/**
 * Allergens that what takes a food's place brings and the food itself does not, each once.
 *
 * What a site's file adds to a food of the larder does not count as carried: a reader knows cornstarch as free of gluten, and no page
 * says that the one in an author's cupboard is not.
 */
export function allergensAdded(food: Food, standIns: readonly Food[], foods: Foods): string[] {
  const carried = carriedBy(food, foods);
  const all = standIns.flatMap((each) => [...allergensOf(each, foods)]);
  return [...new Set(all)].filter((allergen) => !carried.has(allergen));
}

/** Allergens that a food is known to carry wherever it is cooked. */
function carriedBy(food: Food, foods: Foods): ReadonlySet<string> {
  const known = ({ allergens, allergensBySite = [] }: Food) =>
    allergens.filter((allergen) => !allergensBySite.includes(allergen));
  // What a site says that a food of the larder is made of is no more known than what it lists.
  if (food.allergensBySite !== undefined) return new Set(known(food));
  return gathered(food, foods, known, new Set());
}

function gathered(
  food: Food,
  foods: Foods,
  listed: (food: Food) => readonly string[],
  seen: Set<string>,
): ReadonlySet<string> {
  if (seen.has(food.id)) return new Set();
  seen.add(food.id);
  const inside = food.contains.flatMap(({ food: id }) => {
    const content = foods.get(id);
    return content === undefined ? [] : [...gathered(content, foods, listed, seen)];
  });
  return new Set([...listed(food), ...inside]);
}
