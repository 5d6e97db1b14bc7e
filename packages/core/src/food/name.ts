import type { Food, FoodName } from './food.js';

/** The name that a kitchen gives a food. */
export function nameIn(food: Food, kitchen: string): FoodName {
  const name = food.names[kitchen]?.[0] ?? food.names.any?.[0];
  return name ?? { one: food.id.replaceAll('-', ' '), many: food.id.replaceAll('-', ' ') };
}

/** Whether a line has one of a food, several, or an amount that is not counted. */
export type HowMany = 'one' | 'many' | 'uncounted';

/**
 * The word to show for a food in another kitchen.
 *
 * @param written The food as the author wrote it.
 * @param howMany What the line has of it: `2 zucchini` are `courgettes`, though `zucchini` shows no number.
 * @returns The kitchen's name in the number of the written word, or of the line where that word has none; null where a cook
 *   there knows the written word. A capital stays one.
 */
export function translateName(
  food: Food,
  written: string,
  kitchen: string,
  howMany: HowMany = 'uncounted',
): string | null {
  const folded = written.toLowerCase();
  const isWritten = ({ one, many }: FoodName) => folded === one.toLowerCase() || folded === many.toLowerCase();
  const understood = [...(food.names[kitchen] ?? []), ...(food.names.any ?? [])];
  if (understood.some(isWritten)) return null;
  const hit = Object.entries(food.names)
    .filter(([id]) => id !== kitchen)
    .flatMap(([, names]) => names)
    .find(isWritten);
  if (hit === undefined) return null;
  const name = nameIn(food, kitchen);
  const many = hit.one === hit.many ? howMany === 'many' : folded === hit.many.toLowerCase();
  return likeWritten(many ? name.many : name.one, written);
}

/** The written name in the other number, `egg` for `eggs`; null where it is none of the food's names, or has no other. */
export function inNumber(food: Food, written: string, many: boolean): string | null {
  const folded = written.toLowerCase();
  const name = Object.values(food.names)
    .flat()
    .find(({ one, many: several }) => folded === (many ? one : several).toLowerCase());
  return name === undefined || name.one === name.many ? null : likeWritten(many ? name.many : name.one, written);
}

/** `Cilantro` at the head of a line becomes `Coriander`. */
function likeWritten(name: string, written: string): string {
  const first = written[0] ?? '';
  const isCapital = first !== first.toLowerCase();
  return isCapital ? name.charAt(0).toUpperCase() + name.slice(1) : name;
}
