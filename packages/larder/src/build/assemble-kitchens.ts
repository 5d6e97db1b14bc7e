import type { Kitchen } from '@retare/core';
import type { Fault } from '../read/problem.js';
import type { KitchenEntry } from '../schema/kitchen-schema.js';
import { buildKitchen } from './build-kitchen.js';
import { checkKitchen } from './check-kitchen.js';
import { unknownKitchen } from './check-names.js';

/** Kitchens with entries added to or put over them, in the order they could be built in, and what is wrong with the entries. */
export function assembleKitchens(base: ReadonlyMap<string, Kitchen>, entries: Readonly<Record<string, KitchenEntry>>) {
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
