import type { Food, Kitchen, Sold } from '@retare/core';

export type { Food, Kitchen, MeasureSet, Pack, Sold } from '@retare/core';

/** How a kitchen's shops sell a food; null where nothing is said. */
export function soldFor(food: Food, kitchen: Kitchen['id']): Sold | null {
  return food.sold[kitchen] ?? food.sold.any ?? null;
}
