import type { Exact } from '../../exact.js';
import type { Foods } from '../../food/find/find.js';
import type { Food } from '../../food/food.js';
import type { Kitchen } from '../kitchen.js';
import { soldIn } from './buy.js';

/** A food with its share of the mass whose place it takes. */
export interface StandInFood {
  food: Food;
  share: Exact;
}

/**
 * What takes a food's place in a kitchen whose shops do not sell it: the first stand-in of which the larder has every food.
 *
 * @returns Null where the food is sold, where nothing is known of that, and where nothing takes its place.
 */
export function standInOf(food: Food, kitchen: Kitchen, foods: Foods): StandInFood[] | null {
  const sold = soldIn(food, kitchen.id);
  if (sold === null || sold.sold) return null;
  for (const { parts } of sold.standIns) {
    const known = parts.flatMap(({ food: id, share }) => {
      const part = foods.get(id);
      return part === undefined ? [] : [{ food: part, share }];
    });
    if (known.length === parts.length) return known;
  }
  return null;
}
