import type { LineReading } from '../../amount/reading.js';
import { firstStatement, type Stated, type Term } from '../../amount/stated.js';
import type { Food } from '../../food/food.js';
import { partOfEgg } from '../../kitchen/egg.js';

/**
 * Whether a line takes a part of an egg: `½ egg`, `1½ egg whites`. No shop sells one and no size comes near to it: it is beaten, and
 * measured as anything else that is.
 */
export function takesPartOfEgg({ amounts: [amount], pack }: LineReading, food: Food | null): boolean {
  if (partOfEgg(food) === null || amount === undefined || amount.unit !== 'count' || pack !== null) return false;
  return !(amount.low.isInteger() && (amount.high?.isInteger() ?? true));
}

/** Half an egg to glaze with is an egg: what is left of it is little, and of no use. */
export function wholeOnes(stated: Stated): Stated {
  const up = ({ low, high, ...term }: Term): Term => ({ ...term, low: low.ceil(), high: high?.ceil() ?? null });
  return { ...firstStatement(stated), statements: stated.statements.slice(0, 1).map((terms) => terms.map(up)) };
}
