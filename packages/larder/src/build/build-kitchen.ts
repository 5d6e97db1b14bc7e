import type { Kitchen } from '@retare/core';
import { exactOf } from '../schema/exact-number.js';
import type { KitchenEntry } from '../schema/kitchen-schema.js';
import { buildEggs } from './build-eggs.js';
import { buildOven } from './build-oven.js';
import { buildPans } from './build-pans.js';
import { buildSafe } from './build-safe.js';
import { buildCups, buildMarks, buildSpoons, buildUnits } from './build-tools.js';

/** Hands on a block that must be there by now. */
export type Needs = <Value>(key: string, value: Value | undefined) => Value;

/**
 * A kitchen out of its checked data.
 *
 * @param base The kitchen that is extended or overridden. Units, egg sizes, oven blocks and safe temperatures are overridden
 *   one by one, pans are added, and every other block is overridden whole.
 * @throws {RangeError} If a block is in neither: data that was not checked.
 */
export function buildKitchen(id: string, entry: KitchenEntry, base?: Kitchen): Kitchen {
  const needs: Needs = (key, value) => {
    if (value === undefined) throw new RangeError(`Kitchen ${id} was built without ${key}`);
    return value;
  };
  const { writes, measures, counter } = entry;
  return {
    id,
    name: needs('name', entry.name ?? base?.name),
    adjective: needs('adjective', entry.adjective ?? base?.adjective),
    // A region is offered one kitchen first: the one that is extended, unless the other asks for it.
    regions: entry.regions?.codes ?? (base?.id === id ? base.regions : []),
    units: { ...base?.units, ...buildUnits(entry.units ?? {}) },
    writes: writes === undefined ? needs('writes', base?.writes) : withoutSource(writes),
    spoons: entry.spoons === undefined ? needs('spoons', base?.spoons) : buildSpoons(entry.spoons),
    cups: entry.cups === undefined ? needs('cups', base?.cups) : buildCups(entry.cups),
    jug: entry.jug === undefined ? needs('jug', base?.jug) : buildMarks(entry.jug),
    scale: entry.scale === undefined ? needs('scale', base?.scale) : buildMarks(entry.scale),
    fill: needs('fill', entry.fill?.as ?? base?.fill),
    measures: measures === undefined ? needs('measures', base?.measures) : withoutSource(measures),
    counter:
      counter === undefined ? needs('counter', base?.counter) : { unit: counter.unit, step: exactOf(counter.step) },
    oven: buildOven(entry.oven ?? {}, needs, base?.oven),
    pans: buildPans(entry.pans ?? [], base?.pans ?? []),
    eggs: buildEggs(entry.eggs ?? {}, needs, base?.eggs),
    safe: buildSafe(entry.safe ?? {}, base?.safe ?? []),
  };
}

function withoutSource<Block extends { source: string }>({ source: _, ...block }: Block): Omit<Block, 'source'> {
  return block;
}
