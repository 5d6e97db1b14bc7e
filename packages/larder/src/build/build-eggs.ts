import { type EggSize, ediblePart, type Kitchen } from '@retare/core';
import { exactOf } from '../schema/exact-number.js';
import type { KitchenEntry } from '../schema/kitchen-schema.js';
import type { Needs } from './build-kitchen.js';

type Eggs = Kitchen['eggs'];

/** The egg sizes sold, each from the entry or from the base, the lightest first. */
export function buildEggs(
  { usual, typical, sizes }: NonNullable<KitchenEntry['eggs']>,
  needs: Needs,
  base?: Eggs,
): Eggs {
  const byName = new Map<string, EggSize>((base?.sizes ?? []).map((size) => [size.name, size]));
  for (const [name, size] of Object.entries(sizes ?? {})) {
    if (size === 'none') {
      byName.delete(name);
      continue;
    }
    const typicalGrams = exactOf(size.typical);
    byName.set(name, {
      name,
      typicalGrams,
      also: size.also ?? [],
      edibleGrams: typicalGrams.times(ediblePart),
      seldom: size.seldom ?? false,
    });
  }
  return {
    usual: needs('eggs.usual', usual ?? base?.usual),
    typical: needs('eggs.typical', typical ?? base?.typical),
    sizes: [...byName.values()].sort((one, other) => one.typicalGrams.comparedTo(other.typicalGrams)),
  };
}
