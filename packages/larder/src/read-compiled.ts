import { type Food, type Kitchen, type NameIndex, useNameIndex } from '@retare/core';
import { buildFood, type UnitsOf } from './build/build-food.js';
import { buildKitchen } from './build/build-kitchen.js';
import { shopsGiver } from './build/with-shops-of.js';
import type { Larder } from './larder.js';
import type { FoodEntry } from './schema/food-schema.js';
import type { KitchenEntry } from './schema/kitchen-schema.js';
import { Shelf } from './shelf.js';

/**
 * The larder out of the bytes of the text that `compiledText` wrote. Nothing is checked: that was done before it was written. Foods and
 * kitchens are built when they are first asked for.
 *
 * @throws {Error} If the text is another: not ours, or cut off.
 */
export function readCompiled(bytes: Buffer): Larder {
  const { head, foodsFrom } = splitHead(bytes);
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
  for (const [id, json] of foodLines(textAt(bytes, foodsFrom, bytes.length))) {
    foods.put(id, () => giveShops(buildFood(id, JSON.parse(json) as FoodEntry, unitsOf)));
  }
  useNameIndex(foods, () => part(head, 'names') as NameIndex);
  return { foods, kitchens, digest: String(part(head, 'digest')) };
}

/** The JSON of a part, made a string when it is asked for: one of the whole file would set off the garbage collector. */
type Json = () => string;

interface Head {
  /** The parts before the foods, by key. */
  head: ReadonlyMap<string, Json>;
  /** Where the line of the first food begins. */
  foodsFrom: number;
}

const newLine = '\n'.charCodeAt(0);

/** Each part before the foods has a line. */
function splitHead(bytes: Buffer): Head {
  const head = new Map<string, Json>();
  for (let from = bytes.indexOf(newLine) + 1; from > 0; ) {
    const end = bytes.indexOf(newLine, from);
    if (end < 0) break;
    const colon = bytes.indexOf(':', from);
    const key = textAt(bytes, from + 1, colon - 1);
    if (key === 'foods') return { head, foodsFrom: end + 1 };
    head.set(key, () => textAt(bytes, colon + 1, end - 1));
    from = end + 1;
  }
  throw new Error('larder.json has no foods: build the package again');
}

/** Each food's JSON, by id. */
function foodLines(text: string): Map<string, string> {
  const lines = new Map<string, string>();
  for (let from = 0; text[from] === '"'; ) {
    const end = text.indexOf('\n', from);
    const colon = text.indexOf(':', from);
    if (end < 0) throw new Error('larder.json is cut off: build the package again');
    lines.set(text.slice(from + 1, colon - 1), text.slice(colon + 1, text[end - 1] === ',' ? end - 1 : end));
    from = end + 1;
  }
  return lines;
}

const textAt = (bytes: Buffer, from: number, to: number): string => bytes.toString('latin1', from, to);

function part(head: Head['head'], key: string): unknown {
  const json = head.get(key);
  if (json === undefined) throw new Error(`larder.json has no ${key}: build the package again`);
  return JSON.parse(json());
}
