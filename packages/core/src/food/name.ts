import type { Food, FoodName } from './food.js';

/** The name that a kitchen gives a food. */
export function nameIn(food: Food, kitchen: string): FoodName {
  const name = food.names[kitchen]?.[0] ?? food.names.any?.[0];
  return name ?? { one: food.id.replaceAll('-', ' '), many: food.id.replaceAll('-', ' ') };
}

/**
 * The word to show for a food in another kitchen.
 *
 * @param written The food as the author wrote it.
 * @returns The kitchen's name in the number of the written word, or null where a cook there knows the written word.
 */
export function translateName(food: Food, written: string, kitchen: string): string | null {
  const folded = written.toLowerCase();
  const understood = [...(food.names[kitchen] ?? []), ...(food.names.any ?? [])];
  if (understood.some(({ one, many }) => folded === one.toLowerCase() || folded === many.toLowerCase())) return null;
  const foreign = Object.entries(food.names)
    .filter(([id]) => id !== kitchen)
    .flatMap(([, names]) => names);
  const hit = foreign.find(({ one, many }) => folded === one.toLowerCase() || folded === many.toLowerCase());
  if (hit === undefined) return null;
  const name = nameIn(food, kitchen);
  return folded === hit.many.toLowerCase() && hit.many !== hit.one ? name.many : name.one;
}
