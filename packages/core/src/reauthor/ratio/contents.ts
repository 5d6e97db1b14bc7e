import type { Foods } from '../../food/find/find.js';
import type { Food, Role } from '../../food/food.js';

/** A food's mass by what it really is: self-raising flour is mostly flour, a little leavening and salt. */
export interface Content {
  role: Role;
  /** Food id of the content. */
  food: string;
  share: number;
}

/** What a food's mass counts as in ratios; shares add up to 1. */
export function contentsOf(food: Food, foods: Foods): Content[] {
  const inside = food.contains.flatMap(({ food: id, share }): Content[] => {
    const content = foods.get(id);
    return content === undefined ? [] : [{ role: content.role, food: id, share: share.toNumber() }];
  });
  const rest = 1 - inside.reduce((sum, { share }) => sum + share, 0);
  return [{ role: food.role, food: food.id, share: Math.max(rest, 0) }, ...inside];
}
