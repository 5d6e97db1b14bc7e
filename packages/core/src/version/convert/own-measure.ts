import { isVolumeUnit, millilitresIn } from '../../amount/size.js';
import type { Stated, Term } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import { isMeasuredSum } from '../../kitchen/measure/measured-sum.js';
import type { Conversion } from './convert-amount.js';

/** Spoons this near are the same spoon: 14.8 and 15 ml. Nobody heaps more exactly. */
const sameSpoon = new Exact('0.02');

/**
 * How much a spoon of the author's holds in another kitchen, where the amount is kept as it was written: the spoon is the same and a range
 * of it is measured exactly, if with more than one tool, or it is heaped.
 *
 * @returns The reader's spoon over the author's; null for any other amount.
 */
export function ownMeasure(
  { statements, pack }: Stated,
  { native, kitchen }: Pick<Conversion, 'native' | 'kitchen'>,
): Exact | null {
  const [term, ...others] = statements[0] ?? [];
  if (term === undefined || others.length > 0 || pack !== null || !isVolumeUnit(term.unit)) return null;
  if (!kitchen.writes.volume.includes(term.unit)) return null;
  const [theirs, ours] = [native, kitchen].map(({ units }) => millilitresIn(term.unit as 'ml', units));
  if (theirs == null || ours == null) return null;
  const ratio = ours.dividedBy(theirs);
  const isKept = term.fill == null ? isOwnRange(term, ratio, ours, kitchen) : ratio.minus(1).abs().lessThan(sameSpoon);
  return isKept ? ratio : null;
}

/** Where nothing is weighed a spoon that is hardly another will do. */
function isOwnRange({ low, high }: Term, ratio: Exact, each: Exact, kitchen: Conversion['kitchen']): boolean {
  const within = kitchen.scale === null ? sameSpoon : new Exact(0);
  if (high === null || ratio.minus(1).abs().greaterThan(within)) return false;
  return [low, high].every((end) => isMeasuredSum(end.times(each), kitchen));
}
