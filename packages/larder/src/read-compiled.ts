import { type Food, type Kitchen, type NameIndex, useNameIndex } from '@retare/core';
import { buildFood, type UnitsOf } from './build/build-food.js';
import { buildKitchen } from './build/build-kitchen.js';
import { shopsGiver } from './build/with-shops-of.js';
import type { Larder } from './larder.js';
import type { FoodEntry } from './schema/food-schema.js';
import type { KitchenEntry } from './schema/kitchen-schema.js';
import { Shelf } from './shelf.js';

/**
 * The larder out of the text that `compiledText` wrote. Nothing is checked: that was done before it was written. Foods and
 * kitchens are built when they are first asked for.
 *
 * @throws {Error} If the text is another: not ours, or cut off.
 */
export function readCompiled(text: string): Larder {
  const { head, foodLines } = splitLines(text);
  const entries = part(head, 'kitchens') as Record<string, KitchenEntry>;
  const kitchens = new Shelf<Kitchen>();
  for (const [id, entry] of Object.entries(entries)) {
    kitchens.put(id, () =>
      buildKitchen(id, entry, entry.extends === undefined ? undefined : kitchens.get(entry.extends)),
    );
  }
  const unitsOf: UnitsOf = (kitchen) => kitchens.get(kitchen)?.units ?? {};
  const giveShops = shopsGiver(kitchens.keys(), entries) ?? ((food) => food);
  const foods = new Shelf<Food>();
  for (const [id, line] of foodLines) {
    foods.put(id, () => giveShops(buildFood(id, JSON.parse(line) as FoodEntry, unitsOf)));
  }
  useNameIndex(foods, () => part(head, 'names') as NameIndex);
  return { foods, kitchens, digest: String(part(head, 'digest')) };
}

interface Lines {
  /** The parts before the foods, JSON by key. */
  head: ReadonlyMap<string, string>;
  /** A food's JSON by id. */
  foodLines: ReadonlyMap<string, string>;
}

function splitLines(text: string): Lines {
  const head = new Map<string, string>();
  const foodLines = new Map<string, string>();
  let into = head;
  for (let from = text.indexOf('\n') + 1; from > 0; from = text.indexOf('\n', from) + 1) {
    const end = text.indexOf('\n', from);
    if (end < 0) break;
    const colon = text.indexOf(':', from);
    if (text[from] !== '"' || colon > end) continue;
    const key = text.slice(from + 1, colon - 1);
    if (key === 'foods') into = foodLines;
    else into.set(key, text.slice(colon + 1, text[end - 1] === ',' ? end - 1 : end));
  }
  return { head, foodLines };
}

function part(head: ReadonlyMap<string, string>, key: string): unknown {
  const json = head.get(key);
  if (json === undefined) throw new Error(`larder.json has no ${key}: build the package again`);
  return JSON.parse(json);
}
