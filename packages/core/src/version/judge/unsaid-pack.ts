import { unsizedContainer } from '../../amount/container.js';
import type { Stated } from '../../amount/stated.js';
import { isContainer } from '../../amount/unit-kind.js';
import type { Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { soldIn } from '../../kitchen/shop/buy.js';
import { sameContainer } from '../../kitchen/shop/unsized-pack.js';
import type { Line } from '../../recipe/recipe.js';
import type { PlacedProblem } from '../version.js';
import { amountSpan, amountWords } from './judge-line.js';

/**
 * A finding where an author's pot or packet of no known size comes to a kitchen whose shops sell the food in other containers: nobody there
 * can tell how much it is.
 *
 * @param weighed What it weighs in its own kitchen.
 */
export function unsaidPack(line: Line, stated: Stated | null, weighed: Weighed, kitchen: Kitchen): PlacedProblem[] {
  const { food } = line;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  const unit = stated?.statements[0]?.[0]?.unit;
  const container = unsizedContainer(line.reading)?.word;
  if (food === null || sold === null || sold.packs.length === 0 || stated === null || stated.pack !== null) return [];
  if (unit === undefined || !isContainer(unit) || weighed.grams !== null || weighed.millilitres !== null) return [];
  if (container === undefined || sold.packs.some(({ word }) => sameContainer(word, container))) return [];
  const span = amountSpan(line);
  const text = amountWords(line);
  return [
    { span, problem: { rule: 'unbuyable', reason: 'pack-size', text, food, packs: [...sold.packs], nearest: [] } },
  ];
}
