import type { LineReading } from '../../amount/reading.js';
import { isSpoonOrPinch } from '../../amount/unit-kind.js';
import type { Foods } from '../find/name-index.js';
import type { Food } from '../food.js';
import { saidOfFood } from './said-of-food.js';

/** Words that make it the fresh one, or the one that was made of it. */
const otherwise = new Set(
  `fresh freshly chopped diced minced sliced torn shredded grated peeled crushed snipped picked packed leaf leaves sprig sprigs root paste puree
  zest zested rind peel pulp segments flesh
  brewed strong hot cold iced cooled`.split(/\s+/),
);

/** A spoon of a bare herb is the dried one, and a spoon of tea its leaves, where a food says so. */
export function bySpoon(food: Food, reading: LineReading, foods: Foods): Food {
  const spooned = food.spooned === undefined ? undefined : foods.get(food.spooned);
  if (spooned === undefined || !isSpoonOrPinch(reading.amounts[0]?.unit ?? '')) return food;
  const said = saidOfFood(reading)
    .toLowerCase()
    .split(/[^\p{L}]+/u);
  return said.some((word) => otherwise.has(word)) ? food : spooned;
}
