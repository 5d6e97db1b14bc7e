import type { Food } from '../../food/food.js';
import type { Line, Recipe } from '../../recipe/recipe.js';
import { anchorLine } from '../anchor-line.js';
import type { SearchInput } from '../search/search-recipe.js';

/** The same search with a line in the place of the one of its key. */
export function withLine(input: SearchInput, line: Line): SearchInput {
  const recipe = mapLines(input.recipe, (each) => (each.key === line.key ? [line] : [each]));
  return { ...input, recipe };
}

/** The same search with lines left out, and no anchor where one of them was it. */
export function without(input: SearchInput, lines: readonly Line[]): SearchInput {
  const keys = new Set(lines.map(({ key }) => key));
  const recipe = mapLines(input.recipe, (each) => (keys.has(each.key) ? [] : [each]));
  const isGone = input.anchor !== null && anchorLine(input.anchor, lines) !== null;
  return { ...input, recipe, anchor: isGone ? null : input.anchor };
}

/** The same search with another entry of a food. */
export function withFood(input: SearchInput, food: Food): SearchInput {
  const recipe = mapLines(input.recipe, (each) => [each.food?.id === food.id ? { ...each, food } : each]);
  return { ...input, recipe, foods: new Map([...input.foods, [food.id, food]]) };
}

function mapLines(recipe: Recipe, change: (line: Line) => Line[]): Recipe {
  const parts = recipe.parts.map((part) => ({
    ...part,
    native: { ...part.native, lines: part.native.lines.flatMap(change) },
  }));
  return { ...recipe, parts };
}
