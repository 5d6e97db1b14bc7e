import { isVolumeUnit, millilitresIn } from '../../amount/size.js';
import type { Stated, Term } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import type { Food } from '../../food/food.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { isMeasuredSum } from '../../kitchen/measure/measured-sum.js';
import { unitRatio } from '../../kitchen/measure/unit-ratio.js';
import { marksOn } from '../../kitchen/measure/wrapper.js';
import type { Conversion } from './convert-amount.js';

/** Spoons this near are the same spoon: 14.8 and 15 ml. Nobody heaps more exactly. */
const sameSpoon = new Exact('0.02');

/** Past the spoons that a table of measures counts, an author's own are counted out up to here. Common practice, no source. */
const mostCounted = 6;

/**
 * How much a spoon of the author's holds in another kitchen, where the amount is kept as it was written: the spoon is the same, and a range
 * of it is measured exactly, if with more than one tool, or it is more spoons than are counted out by themselves (4 tsp), or it is heaped.
 *
 * @returns The reader's spoon over the author's; null for any other amount.
 */
export function ownMeasure(
  { statements, pack }: Stated,
  food: Food | null,
  { native, kitchen }: Pick<Conversion, 'native' | 'kitchen'>,
): Exact | null {
  const [term, ...others] = statements[0] ?? [];
  if (term === undefined || others.length > 0 || pack !== null) return null;
  const { unit } = term;
  if (!isVolumeUnit(unit) || !kitchen.writes.volume.includes(unit)) return null;
  const [ratio, ours] = [unitRatio(unit, kitchen, native), millilitresIn(unit, kitchen.units)];
  if (ratio === null || ours === null) return null;
  if (!saysTheSame(term, native, kitchen)) return null;
  const isSame = ratio.minus(1).abs().lessThan(sameSpoon);
  const isKept =
    term.fill != null
      ? isSame
      : term.high === null
        ? isSame && marksOn(food, native) === null && isOwnCount(term, ours, kitchen)
        : isOwnRange(term, ratio, ours, kitchen);
  return isKept ? ratio : null;
}

/** Whether the larger unit that the words of a sum name is the same spoon in another kitchen: `1 tbsp + 1 tsp` is more where a tablespoon is 20 ml. */
export function saysTheSame({ beside }: Term, native: Kitchen, kitchen: Kitchen): boolean {
  if (beside === undefined || !isVolumeUnit(beside)) return true;
  if (beside !== 'tbsp' || !kitchen.writes.volume.includes(beside)) return native === kitchen;
  return unitRatio(beside, kitchen, native)?.minus(1).abs().lessThan(sameSpoon) ?? false;
}

/** Four teaspoons, five tablespoons: whole spoons, past what a table of measures has, that two tools measure. */
function isOwnCount({ low, unit }: Term, each: Exact, kitchen: Conversion['kitchen']): boolean {
  const set = unit === 'tsp' || unit === 'tbsp' ? kitchen.spoons[unit] : null;
  if (set === null || !low.isInteger() || low.lessThanOrEqualTo(set.wholes)) return false;
  return low.lessThanOrEqualTo(mostCounted) && isMeasuredSum(low.times(each), kitchen);
}

/** Where nothing is weighed a spoon that is hardly another will do. */
function isOwnRange({ low, high }: Term, ratio: Exact, each: Exact, kitchen: Conversion['kitchen']): boolean {
  const within = kitchen.scale === null ? sameSpoon : new Exact(0);
  if (high === null || ratio.minus(1).abs().greaterThan(within)) return false;
  return [low, high].every((end) => isMeasuredSum(end.times(each), kitchen));
}
