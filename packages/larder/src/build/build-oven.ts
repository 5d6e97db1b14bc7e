import type { Kitchen } from '@retare/core';
import { exactOf } from '../schema/exact-number.js';
import type { KitchenEntry, KitchenYaml } from '../schema/kitchen-schema.js';
import type { Needs } from './build-kitchen.js';

type Oven = Kitchen['oven'];

/** The oven: dial, fan difference, gas marks and what a recipe there states, each from the entry or from the base. */
export function buildOven(
  { dial, fan, gas, states }: NonNullable<KitchenEntry['oven']>,
  needs: Needs,
  base?: Oven,
): Oven {
  return {
    ...needs('oven.dial', dial ? buildDial(dial) : base && dialOf(base)),
    fanDifference: needs('oven.fan', fan ? exactOf(fan.lower) : base?.fanDifference),
    gas: needs('oven.gas', gas ? buildGas(gas) : base?.gas),
    states: needs('oven.states', states?.settings ?? base?.states),
  };
}

function buildDial({ unit, min, max, step }: KitchenYaml['oven']['dial']) {
  return { unit, min: exactOf(min), max: exactOf(max), step: exactOf(step) };
}

function dialOf({ unit, min, max, step }: Oven) {
  return { unit, min, max, step };
}

function buildGas(gas: KitchenYaml['oven']['gas']): Oven['gas'] {
  if (gas === 'none') return [];
  return gas.marks.map(({ mark, celsius }) => ({ mark: String(mark), celsius: exactOf(celsius) }));
}
