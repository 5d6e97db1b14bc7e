import { sizeWords } from '../../amount/quantity/adjective-words.js';
import { partOfEgg } from '../../kitchen/egg.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import type { PlacedProblem } from '../version.js';

/** A size of eggs that no shop of the kitchen sells: nobody there knows what it weighs, and the usual one would be taken in silence. */
export function judgeEggSize({ food, reading }: Line, kitchen: Kitchen): PlacedProblem[] {
  const { size } = reading;
  if (food === null || size === null || partOfEgg(food) === null || !namesSize(size.text)) return [];
  const { sizes } = kitchen.eggs;
  const named = size.text.toLowerCase();
  if (sizes.some(({ name, also }) => [name, ...also].some((each) => each.toLowerCase() === named))) return [];
  const sold = sizes.map(({ name }) => name);
  return [{ problem: { rule: 'unbuyable', reason: 'egg-size', text: size.text, food, sizes: sold }, span: size.span }];
}

function namesSize(text: string): boolean {
  return text
    .toLowerCase()
    .split(' ')
    .some((word) => sizeWords.has(word));
}
