import type { Exact } from '../../exact.js';
import type { Weighed } from '../../food/weigh.js';

/** Signed share by which the chosen amount differs from the native one. */
export function driftOf(native: Weighed, chosen: Weighed): Exact | null {
  if (native.grams !== null && chosen.grams !== null && !native.grams.isZero())
    return chosen.grams.dividedBy(native.grams).minus(1);
  if (native.millilitres !== null && chosen.millilitres !== null && !native.millilitres.isZero()) {
    return chosen.millilitres.dividedBy(native.millilitres).minus(1);
  }
  return null;
}
