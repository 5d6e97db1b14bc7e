import { millilitresIn } from '../../amount/size.js';
import type { VolumeUnit } from '../../amount/unit.js';
import { type Exact, ratioOf } from '../../exact.js';
import type { Kitchen } from '../kitchen.js';

/** What a unit holds in one kitchen over what it holds in another; null where one of them does not say. */
export function unitRatio(unit: VolumeUnit, kitchen: Kitchen, native: Kitchen): Exact | null {
  return ratioOf(millilitresIn(unit, kitchen.units), millilitresIn(unit, native.units));
}
