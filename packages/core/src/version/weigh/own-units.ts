import type { LineReading, Quantity } from '../../amount/reading.js';
import { gramsIn, isMassUnit, isVolumeUnit, millilitresIn } from '../../amount/size.js';
import type { Exact } from '../../exact.js';
import type { Kitchen } from '../../kitchen/kitchen.js';

/** A second statement further off is a slip of the pen, or of something else. An author's pound is often 500 g. Common practice, no source. */
const sameAmount = 0.12;

/**
 * A line as a kitchen reads it: of an amount that its author states in two units, `10 oz (300 g)`, first the one that is used there.
 *
 * @param native Kitchen of the author, whose cups and pints are meant.
 */
export function inOwnUnits(reading: LineReading, native: Kitchen, kitchen: Kitchen): LineReading {
  const [first, ...others] = reading.amounts;
  if (first === undefined || others.length === 0 || reading.pack !== null || isUsed(first, kitchen)) return reading;
  const own = others.find((each) => isUsed(each, kitchen) && isSame(first, each, native));
  if (own === undefined) return reading;
  return { ...reading, amounts: [{ ...own, approx: first.approx }, ...reading.amounts.filter((each) => each !== own)] };
}

/** Spoons are used everywhere; cups are another size in each kitchen. */
function isUsed({ unit }: Quantity, { writes, counter }: Kitchen): boolean {
  if (unit === 'tsp' || unit === 'tbsp') return true;
  if (isMassUnit(unit))
    return writes.mass.includes(unit) && (counter.unit === 'lb') === (unit === 'oz' || unit === 'lb');
  return (unit === 'ml' || unit === 'l') && writes.volume.includes(unit);
}

function isSame(one: Quantity, other: Quantity, native: Kitchen): boolean {
  if ((one.high === null) !== (other.high === null)) return false;
  const [theirs, own] = [one, other].map((each) => sizeOf(each, native));
  if (theirs == null || own == null || theirs.base !== own.base) return false;
  return Math.abs(Math.log(own.size.dividedBy(theirs.size).toNumber())) <= sameAmount;
}

function sizeOf({ low, unit }: Quantity, native: Kitchen): { base: 'g' | 'ml'; size: Exact } | null {
  if (low.isZero()) return null;
  if (isMassUnit(unit)) return { base: 'g', size: low.times(gramsIn(unit)) };
  const each = isVolumeUnit(unit) ? millilitresIn(unit, native.units) : null;
  return each === null ? null : { base: 'ml', size: low.times(each) };
}
