import { centimetresIn } from '../../amount/size.js';
import type { Term } from '../../amount/stated.js';
import type { LengthUnit } from '../../amount/unit.js';
import { Exact, toStep } from '../../exact.js';
import type { Kitchen } from '../kitchen.js';

/** A length as a cook there would judge it: quarter inches, or millimetres, half and whole centimetres. */
export function lengthFor(value: Exact, unit: LengthUnit, kitchen: Kitchen): Term {
  const cm = value.times(centimetresIn(unit));
  if (kitchen.writes.length === 'in') {
    const inches = cm.dividedBy(centimetresIn('in'));
    // Under half an inch an eighth is still seen on a ruler, and a sixteenth of what is thinner than either.
    const step = new Exact(inches.lessThan('0.09375') ? '0.0625' : inches.lessThan('0.5') ? '0.125' : '0.25');
    return { low: Exact.max(toStep(inches, step), step), high: null, unit: 'in' };
  }
  if (cm.lessThan('0.95')) return { low: Exact.max(cm.times(10).round(), 1), high: null, unit: 'mm' };
  // Half an inch is 1.25 cm on a ruler; half a centimetre would bend it by a fifth.
  const step = new Exact(cm.lessThan(2) ? '0.25' : cm.lessThan(10) ? '0.5' : 1);
  return { low: toStep(cm, step), high: null, unit: 'cm' };
}

/** Whether a cook there reads lengths in a unit: inches, or centimetres and millimetres. */
export function isLengthRead(unit: LengthUnit, kitchen: Kitchen): boolean {
  return (unit === 'in') === (kitchen.writes.length === 'in');
}

/** A second statement of a length is within this of the first: half an inch is a centimetre to some. Common practice, no source. */
const sameWithin = new Exact('0.3');

/** A length that may be stated twice. */
interface Stretch {
  low: Exact;
  unit: LengthUnit;
}

/** Whether one length says another again, in inches for centimetres or the other way round: `½ inch (1 cm)`. */
export function isSameLength(one: Stretch, other: Stretch): boolean {
  if ((one.unit === 'in') === (other.unit === 'in')) return false;
  const [first, second] = [one, other].map(({ low, unit }) => low.times(centimetresIn(unit)));
  if (first === undefined || second === undefined || second.isZero()) return false;
  return first.dividedBy(second).minus(1).abs().lessThanOrEqualTo(sameWithin);
}
