import type { Food, Kitchen } from '@retare/core';
import type { Fault } from '../read/problem.js';
import type { LarderData } from '../schema/larder-schema.js';
import { Shelf } from '../shelf.js';
import { buildFood, type UnitsOf } from './build-food.js';
import { checkFood } from './check-food.js';
import { checkForgotten, checkNames, checkRemoved, checkShared, checkUnsaid } from './check-names.js';
import { shopsGiver } from './with-shops-of.js';

/** Foods with entries added to, put over or taken away from them, and what is wrong with the entries. */
export function assembleFoods(
  base: ReadonlyMap<string, Food>,
  kitchens: ReadonlyMap<string, Kitchen>,
  { foods: entries = {}, kitchens: kitchenEntries = {} }: LarderData,
) {
  const built = Shelf.over(base);
  const faults: Fault[] = [];
  const fault = (id: string) => (each: Fault) => faults.push({ ...each, path: ['foods', id, ...each.path] });
  const unitsOf: UnitsOf = (kitchen) => kitchens.get(kitchen)?.units ?? {};
  for (const [id, entry] of Object.entries(entries)) {
    if (entry.remove === true) {
      built.remove(id);
      continue;
    }
    const found = checkFood(entry, unitsOf, base.get(id));
    found.forEach(fault(id));
    if (found.length === 0) built.put(id, () => buildFood(id, entry, unitsOf, base.get(id)));
  }
  const giveShops = shopsGiver(kitchens.keys(), kitchenEntries);
  const foods = giveShops === null ? built : built.each(giveShops);
  for (const [id, entry] of Object.entries(entries)) {
    const food = foods.get(id);
    const named =
      entry.remove === true
        ? checkRemoved(id, foods, base)
        : [
            ...checkNames(entry, { base, entries, kitchens }),
            // The package's own food without a list has none; a test reads its names.
            ...(base.size === 0 ? [] : checkUnsaid(entry, { base, entries, kitchens })),
            ...(food ? checkForgotten(food, kitchens) : []),
            ...(food ? checkShared(food, entry, foods) : []),
          ];
    named.forEach(fault(id));
  }
  return { foods, faults };
}
