import { createHash } from 'node:crypto';
import type { Food, Kitchen } from '@retare/core';
import type { Larder } from '../larder.js';
import type { Fault } from '../read/problem.js';
import type { KitchenEntry } from '../schema/kitchen-schema.js';
import type { LarderData } from '../schema/larder-schema.js';
import { buildFood, type UnitsOf } from './build-food.js';
import { buildKitchen } from './build-kitchen.js';
import { checkFood } from './check-food.js';
import { checkKitchen } from './check-kitchen.js';
import { checkForgotten, checkNames, checkRemoved, unknownKitchen } from './check-names.js';

/** The larder with nothing in it. */
export const emptyLarder: Larder = { foods: new Map(), kitchens: new Map(), digest: '' };

/** A larder, and what is wrong with the data put into it: with faults, what they concern is left out. */
export interface Assembly {
  larder: Larder;
  faults: Fault[];
}

/** Puts data that its schema has let through on top of a larder. */
export function assemble(base: Larder, data: LarderData): Assembly {
  const kitchens = assembleKitchens(base.kitchens, data.kitchens ?? {});
  const foods = assembleFoods(base.foods, kitchens.kitchens, data.foods ?? {});
  const digest = createHash('sha256').update(base.digest).update(JSON.stringify(data)).digest('hex');
  return {
    larder: {
      foods: withShopsOf(kitchens.kitchens, data.kitchens ?? {}, foods.foods),
      kitchens: kitchens.kitchens,
      digest,
    },
    faults: [...kitchens.faults, ...foods.faults],
  };
}

function assembleKitchens(base: ReadonlyMap<string, Kitchen>, entries: Readonly<Record<string, KitchenEntry>>) {
  const kitchens = new Map(base);
  const faults: Fault[] = [];
  const waiting = new Map(Object.entries(entries));
  // A kitchen may extend one that stands further down: go round until nothing moves.
  for (let before = -1; waiting.size !== before; ) {
    before = waiting.size;
    for (const [id, entry] of waiting) {
      const other = entry.extends === id ? undefined : entry.extends;
      if (other !== undefined && (waiting.has(other) || !kitchens.has(other))) continue;
      const from = kitchens.get(entry.extends ?? id);
      const kitchen = buildKitchen(id, entry, from);
      faults.push(...checkKitchen(kitchen, from).map((fault) => ({ ...fault, path: ['kitchens', id, ...fault.path] })));
      kitchens.set(id, kitchen);
      waiting.delete(id);
    }
  }
  for (const [id, entry] of waiting) {
    const path = ['kitchens', id, 'extends'];
    const wanted = String(entry.extends);
    faults.push(
      waiting.has(wanted)
        ? {
            path,
            message: `\`${id}\` and \`${wanted}\` extend each other, so that neither has values of its own. Leave out one \`extends\``,
          }
        : unknownKitchen(path, wanted, kitchens),
    );
  }
  return { kitchens, faults };
}

function assembleFoods(
  base: ReadonlyMap<string, Food>,
  kitchens: ReadonlyMap<string, Kitchen>,
  entries: NonNullable<LarderData['foods']>,
) {
  const foods = new Map(base);
  const faults: Fault[] = [];
  const fault = (id: string) => (each: Fault) => faults.push({ ...each, path: ['foods', id, ...each.path] });
  const unitsOf: UnitsOf = (kitchen) => kitchens.get(kitchen)?.units ?? {};
  for (const [id, entry] of Object.entries(entries)) {
    if (entry.remove === true) {
      foods.delete(id);
      continue;
    }
    const found = checkFood(entry, unitsOf, base.get(id));
    found.forEach(fault(id));
    if (found.length === 0) foods.set(id, buildFood(id, entry, unitsOf, base.get(id)));
  }
  for (const [id, entry] of Object.entries(entries)) {
    const food = foods.get(id);
    const named =
      entry.remove === true
        ? checkRemoved(id, foods)
        : [...checkNames(entry, { base, entries, kitchens }), ...(food ? checkForgotten(food, kitchens) : [])];
    named.forEach(fault(id));
  }
  return { foods, faults };
}

/** A kitchen that extends another has that one's shops and words, where a food says nothing of its own for it. */
function withShopsOf(
  kitchens: ReadonlyMap<string, Kitchen>,
  entries: Readonly<Record<string, KitchenEntry>>,
  foods: ReadonlyMap<string, Food>,
): ReadonlyMap<string, Food> {
  // In the order they were built in, so that an extension of an extension finds its own.
  const pairs = [...kitchens.keys()].flatMap((id) => {
    const from = entries[id]?.extends;
    return from === undefined ? [] : [{ id, from }];
  });
  if (pairs.length === 0) return foods;
  const withShops = (food: Food): Food => {
    let { names, sold } = food;
    for (const pair of pairs) {
      names = copied(names, pair);
      sold = copied(sold, pair);
    }
    return { ...food, names, sold };
  };
  return new Map([...foods].map(([id, food]) => [id, withShops(food)]));
}

function copied<Value>(record: Readonly<Record<string, Value>>, { id, from }: { id: string; from: string }) {
  const value = record[from];
  return value === undefined || id in record ? record : { ...record, [id]: value };
}
