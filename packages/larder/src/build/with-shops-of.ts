import type { Food, Kitchen } from '@retare/core';
import type { KitchenEntry } from '../schema/kitchen-schema.js';

/** A kitchen that extends another has that one's shops and words, where a food says nothing of its own for it. */
export function withShopsOf(
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
