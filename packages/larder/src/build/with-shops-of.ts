import type { Food } from '@retare/core';
import type { KitchenEntry } from '../schema/kitchen-schema.js';

/** Gives a food the shops and words of the kitchens that extend another, where it says nothing of its own for them. */
export type ShopsGiver = (food: Food) => Food;

/**
 * A kitchen that extends another has that one's shops and words.
 *
 * @param ids Kitchens in the order they were built in, so that an extension of an extension finds its own.
 * @returns Null where none extends another.
 */
export function shopsGiver(ids: Iterable<string>, entries: Readonly<Record<string, KitchenEntry>>): ShopsGiver | null {
  const pairs = [...ids].flatMap((id) => {
    const from = entries[id]?.extends;
    return from === undefined ? [] : [{ id, from }];
  });
  if (pairs.length === 0) return null;
  return (food) => {
    let { names, sold } = food;
    for (const pair of pairs) {
      names = copied(names, pair);
      sold = copied(sold, pair);
    }
    return { ...food, names, sold };
  };
}

function copied<Value>(record: Readonly<Record<string, Value>>, { id, from }: { id: string; from: string }) {
  const value = record[from];
  return value === undefined || id in record ? record : { ...record, [id]: value };
}
