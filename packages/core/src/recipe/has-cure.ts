import type { Food } from '../food/food.js';
import type { Recipe } from './recipe.js';
import { withPlus } from './with-plus.js';

/** Whether a curing salt is among a recipe's native lines: it is measured for what stands beside it, of which there must never be less. */
export function hasCure({ parts }: Recipe): boolean {
  return parts.some(({ native }) => withPlus(native.lines).some(({ food }) => food?.role === 'cure'));
}

/** Whether a food may be what a cure is measured for: meat and fish, a brine and its salt, and whatever the larder does not know. */
export function mayBeCured(food: Food | null): boolean {
  return food === null || food.role === 'liquid' || food.role === 'salt' || food.coreClass !== null;
}
