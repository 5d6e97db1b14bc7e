import { allergensAdded } from '../../food/allergens.js';
import type { Foods } from '../../food/find/name-index.js';
import type { Food } from '../../food/food.js';
import { nameIn } from '../../food/name.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { soldIn } from '../../kitchen/shop/buy.js';
import type { Line } from '../../recipe/recipe.js';
import type { LineNote } from '../version.js';

/** What a line of an author's version is held against. */
export interface BesideNative {
  /** Native lines of the same part. */
  lines: readonly Line[];
  native: Kitchen;
  kitchen: Kitchen;
  foods: Foods;
}

/**
 * The allergens that a stand-in adds are said of it in an author's version too: an accepted draft is the author's, and its reader the same.
 *
 * @returns Nothing where the food is in a native line, or takes the place of none that the kitchen does not sell.
 */
export function addedByAuthor({ food }: Line, { lines, native, kitchen, foods }: BesideNative): LineNote[] {
  if (food === null || lines.some((line) => line.food?.id === food.id)) return [];
  return lines.flatMap((line): LineNote[] => {
    if (line.food === null || !standsInFor(food, line.food, kitchen)) return [];
    const allergens = allergensAdded(line.food, [food], foods);
    if (allergens.length === 0) return [];
    return [{ kind: 'stand-in', food: nameIn(line.food, native.id).many, kitchen: kitchen.name, allergens }];
  });
}

function standsInFor(food: Food, unsold: Food, kitchen: Kitchen): boolean {
  const sold = soldIn(unsold, kitchen.id);
  if (sold === null || sold.sold) return false;
  return sold.standIns.some(({ parts }) => parts.some((part) => part.food === food.id));
}
