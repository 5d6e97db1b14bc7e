import type { Pan } from '@retare/core';
import { exactOf } from '../schema/exact-number.js';
import type { KitchenYaml } from '../schema/kitchen-schema.js';

/** The base's pans with the added ones; one of the same name, sides and depth takes the old one's place. */
export function buildPans(added: KitchenYaml['pans'], base: readonly Pan[]): Pan[] {
  const pans = new Map<string, Pan>();
  for (const pan of [...base, ...added.map(buildPan)]) pans.set(identity(pan), pan);
  return [...pans.values()];
}

function buildPan(pan: KitchenYaml['pans'][number]): Pan {
  return {
    name: pan.name,
    byName: pan['by-name'] ?? false,
    shape: pan.shape,
    sides: pan.sides.map(exactOf).sort((one, other) => one.comparedTo(other)),
    depth: pan.depth === undefined ? null : exactOf(pan.depth),
    unit: pan.unit,
    tradeSizes: (pan['trade-sizes'] ?? []).map(({ size, unit }) => ({ size: exactOf(size), unit })),
    millilitres: pan.millilitres === undefined ? null : exactOf(pan.millilitres),
  };
}

const identity = ({ name, sides, depth, unit }: Pan): string => `${name} ${sides.join('x')} ${depth ?? ''} ${unit}`;
