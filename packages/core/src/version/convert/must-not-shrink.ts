import type { Food } from '../../food/food.js';
import { mayBeCured } from '../../recipe/has-cure.js';
import type { Conversion } from './convert-amount.js';

/** Whether less of a food than was written will not do: less meat for as much of a cure is more of it in the meat. */
export function mustNotShrink(food: Food | null, { besideCure }: Conversion): boolean {
  return besideCure && mayBeCured(food);
}
