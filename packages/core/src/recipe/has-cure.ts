import type { Food } from '../food/food.js';
import type { Line, Recipe } from './recipe.js';
import { withPlus } from './with-plus.js';

/** Whether a curing salt is among a recipe's native lines: it is measured for what stands beside it, of which there must never be less. */
export function hasCure({ parts }: Recipe): boolean {
  return parts.some(({ native }) => listsCure(native.lines));
}

/** Whether lines, or what they count within their words, name a curing salt. */
export function listsCure(lines: readonly Line[]): boolean {
  return withPlus(lines).some(({ food }) => food?.role === 'cure');
}

/** Whether a food may be what a cure is measured for: meat and fish, a brine and its salt, and whatever the larder does not know. */
export function mayBeCured(food: Food | null): boolean {
  return food === null || food.role === 'liquid' || food.role === 'salt' || food.coreClass !== null;
}
