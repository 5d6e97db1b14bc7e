import type { SafeTemperature } from '@retare/core';
import { exactOf } from '../schema/exact-number.js';
import type { KitchenEntry } from '../schema/kitchen-schema.js';

/** The safe temperatures, each from the entry or from the base. */
export function buildSafe(
  added: NonNullable<KitchenEntry['safe']>,
  base: readonly SafeTemperature[],
): SafeTemperature[] {
  const byClass = new Map(base.map((safe) => [safe.class, safe]));
  for (const [name, safe] of Object.entries(added)) {
    if (safe === undefined) continue;
    const { temperature, hold = '', ...words } = safe;
    byClass.set(name, { class: name, temperature: exactOf(temperature), hold, ...words });
  }
  return [...byClass.values()];
}
