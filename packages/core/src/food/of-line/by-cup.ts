import type { LineReading } from '../../amount/reading.js';
import type { Foods } from '../find/name-index.js';
import type { Food } from '../food.js';

const cups = new Set(['cup', 'tbsp', 'handful']);

/** Words of what comes in a can: its own, that for the liquid in it, and what factories alone do to it. */
const canned = new Set(
  `can cans canned tin tins tinned jar jars jarred carton drained undrained juice juices juicy liquid roasted stewed seasoned italian-style
  petite`.split(/\s+/),
);

/** A cup of diced tomatoes is cut at home, where a food says so and the line speaks of no can. Common practice, no source. */
export function byCup(food: Food, { amounts, pack, text }: LineReading, foods: Foods): Food {
  const cupped = food.cupped === undefined ? undefined : foods.get(food.cupped);
  if (cupped === undefined || pack !== null || !cups.has(amounts[0]?.unit ?? '')) return food;
  const words = text
    .toLowerCase()
    .split(/[^\p{L}-]+/u)
    .flatMap((word) => [word, ...word.split('-')]);
  return words.some((word) => canned.has(word)) ? food : cupped;
}
