import { Exact, type Food, type Pack, type Setting, type Sold } from '@retare/core';
import { kitchen, kitchenIds } from './setting.js';

/** A pack in short; sizes and weights in grams unless a unit is named. */
export interface ShortPack {
  size: number;
  unit?: Pack['unit'];
  word?: string;
  grams?: number;
  drained?: number;
  whole?: Pack['whole'];
  usual?: boolean;
}

/** A pack that a shop has. */
export function packOf({
  size,
  unit = 'g',
  word = 'tin',
  grams = size,
  drained,
  whole = 'no',
  usual = false,
}: ShortPack): Pack {
  return {
    size: new Exact(size),
    unit,
    word,
    grams: new Exact(grams),
    drainedGrams: drained === undefined ? null : new Exact(drained),
    whole,
    usual,
    marks: null,
  };
}

/** How a shop sells a food: in packs, or otherwise as `how` says. */
export function soldAs(packs: readonly ShortPack[], how: Partial<Sold> = {}): Sold {
  return {
    sold: true,
    packs: packs.map(packOf),
    loose: false,
    singly: false,
    tap: false,
    standIns: [],
    source: 'made up for a test',
    ...how,
  };
}

/** A made-up food, `gloop` unless named, that weighs a gram a millilitre and outlasts any plan. */
export function foodOf(sold: Food['sold'], more: Partial<Food> = {}): Food {
  const name = more.id ?? 'gloop';
  return {
    id: name,
    names: { any: [{ one: name, many: name }] },
    role: 'bulk',
    pours: false,
    byEye: null,
    densities: [{ form: null, gramsPerMl: new Exact(1), source: 'made up for a test' }],
    pieces: [],
    keeps: { where: 'cupboard', days: null, freezes: false, leastGrams: new Exact(0), source: 'made up for a test' },
    coreClass: null,
    allergens: [],
    contains: [],
    sold,
    ...more,
  };
}

/** A larder of a few made-up foods in the built-in kitchens. */
export function larderOf(...foods: readonly Food[]): Setting {
  return {
    foods: new Map(foods.map((food) => [food.id, food])),
    kitchens: new Map(kitchenIds.map((id) => [id, kitchen(id)])),
    tolerance: new Exact('0.05'),
  };
}
