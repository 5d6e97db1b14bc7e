import type { Exact } from '../exact.js';
import type { Foods } from '../food/find/find.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Weights } from '../reauthor/weights.js';

/** Everything beside the recipe that a version depends on. */
export interface Setting {
  foods: Foods;
  kitchens: ReadonlyMap<string, Kitchen>;
  /** How far an author's amount may be from a measure, as a fraction. */
  tolerance: Exact;
  /** Weights and limits of re-authoring; the defaults where they are left out. */
  weights?: Weights;
}

/**
 * A kitchen by its id.
 *
 * @throws {RangeError} If it is not in the setting: the caller's fault, since a reader of recipes checks the author's.
 */
export function kitchenOf(id: string, { kitchens }: Setting): Kitchen {
  const kitchen = kitchens.get(id);
  if (kitchen === undefined) throw new RangeError(`There is no kitchen \`${id}\` in this setting.`);
  return kitchen;
}
