import { isVolumeUnit, millilitresIn } from '../amount/size.js';
import type { Stated } from '../amount/stated.js';
import { isMeasuredSum } from '../kitchen/measured-sum.js';
import type { Conversion } from './convert-amount.js';

/**
 * Whether a range of spoons or cups is kept as it was written: the other kitchen has the same spoon, and measures both ends exactly, if
 * with more than one tool.
 */
export function ownRange(
  { statements, pack }: Stated,
  { native, kitchen }: Pick<Conversion, 'native' | 'kitchen'>,
): boolean {
  const [term, ...others] = statements[0] ?? [];
  if (term === undefined || others.length > 0 || pack !== null || term.high === null || !isVolumeUnit(term.unit))
    return false;
  if (!kitchen.writes.volume.includes(term.unit)) return false;
  const [theirs, ours] = [native, kitchen].map(({ units }) => millilitresIn(term.unit as 'ml', units));
  if (theirs == null || ours == null || !theirs.equals(ours)) return false;
  return [term.low, term.high].every((end) => isMeasuredSum(end.times(ours), kitchen));
}
