import { Exact } from '../../exact.js';
import type { Foods } from '../../food/find/find.js';
import type { Food } from '../../food/food.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import { weightsStatedIn } from '../weigh/stated-weights.js';
import { type AmountMention, listing } from './listing.js';
import { fractionOf, usesUp } from './share-of-line.js';

/** Nobody lists one food so often; beyond it nothing is said, so that a long post is read in linear time. */
const mostAlike = 20;

/**
 * Finds the line that an amount is said to be a share of and is more of than all lines of that food together; null where it is a share.
 *
 * @param lines Lines of one kitchen.
 */
export function oversizing(
  lines: readonly Line[],
  kitchen: Kitchen,
  foods: Foods,
): (mention: AmountMention) => Line | null {
  const listedAs = listing(lines, kitchen, foods);
  const alike = new Map<Food | string, Line[]>();
  const kindOf = ({ food, reading }: Line): Food | string => food ?? reading.food?.text.toLowerCase() ?? '';
  for (const line of lines) {
    const own = alike.get(kindOf(line));
    if (own === undefined) alike.set(kindOf(line), [line]);
    else own.push(line);
  }
  const conversion = { native: kitchen, ownWeights: weightsStatedIn(lines, kitchen) };
  return (mention) => {
    const line = listedAs(mention);
    const all = line === null ? [] : (alike.get(kindOf(line)) ?? []);
    // `2 cups flour, plus 2 tbsp for the board` lists more than its amount.
    if (all.length > mostAlike || all.some(({ reading }) => reading.further.length > 0)) return null;
    let listed = new Exact(0);
    for (const each of all) {
      const fraction = fractionOf(mention, each, conversion);
      if (fraction === null || !fraction.isPositive() || fraction.isZero()) return null;
      listed = listed.plus(mostOf(each).dividedBy(fraction));
    }
    return listed.times(usesUp.plus(1)).lessThan(1) ? line : null;
  };
}

/** The upper end of a line's range over its lower one. */
function mostOf({ reading: { amounts } }: Line): Exact {
  const [first] = amounts;
  return first === undefined || first.high === null || first.low.isZero()
    ? new Exact(1)
    : first.high.dividedBy(first.low);
}
