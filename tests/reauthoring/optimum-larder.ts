import { Exact, type Food, type Kitchen, type Sold } from '@retare/core';
import { builtInLarder } from '@retare/larder';

const larder = builtInLarder();

function packed(grams: readonly number[], whole: 'yes' | 'half' | 'no'): Sold {
  const packs = grams.map((each) => ({
    size: new Exact(each),
    unit: 'g' as const,
    word: 'pack',
    grams: new Exact(each),
    drainedGrams: null,
    whole,
    usual: false,
    marks: null,
  }));
  return { sold: true, packs, loose: false, singly: false, tap: false, standIns: [], source: 'made by hand' };
}

function food(id: string, role: Food['role'], sold: Sold, more: Partial<Food> = {}): Food {
  return {
    id,
    names: { any: [{ one: id, many: id }] },
    role,
    pours: false,
    byEye: null,
    densities: [{ form: null, gramsPerMl: new Exact('0.8'), source: 'made by hand' }],
    pieces: [],
    keeps: { where: 'cupboard', days: null, freezes: false, leastGrams: new Exact(0), source: 'made by hand' },
    coreClass: null,
    allergens: [],
    contains: [],
    sold: { any: sold },
    ...more,
  };
}

const fresh = { where: 'fridge', days: 3, freezes: false, leastGrams: new Exact(0), source: 'made by hand' } as const;

/** No longer under a week, and no longer under two: the days at which a leftover counts otherwise. */
const aWeek = { ...fresh, days: 7 } as const;

const twoWeeks = { ...fresh, days: 14 } as const;

const frozen = { ...fresh, freezes: true } as const;

/** Weighed off by the shop, and nothing else. */
const atCounter: Sold = { ...packed([], 'no'), loose: true };

/** Six or four to a bag, 50 g a piece. */
const bags: Sold = {
  ...packed([200, 300], 'no'),
  packs: packed([200, 300], 'no').packs.map((pack) => ({
    ...pack,
    size: pack.grams.dividedBy(50),
    unit: 'count' as const,
  })),
};

/**
 * Foods of the built-in larder, and a few made by hand: tins used whole or by halves that are kept or go off, a soup that goes off, a fat in
 * blocks, mince and roots from the counter, buns by the bag.
 */
export const foods: ReadonlyMap<string, Food> = new Map([
  ...larder.foods,
  ...[
    food('half-tin', 'bulk', packed([180, 420], 'half')),
    food('big-tin', 'bulk', packed([500], 'yes')),
    food('frozen-half-tin', 'bulk', packed([180, 420], 'half'), { keeps: frozen }),
    food('no-half-tin', 'bulk', packed([250], 'half'), { keeps: fresh }),
    food('loose-mince', 'bulk', atCounter, { keeps: fresh }),
    food('loose-root', 'bulk', { ...atCounter, singly: true }),
    food('bun', 'bulk', bags, {
      keeps: fresh,
      pieces: [{ unit: 'count', size: null, grams: new Exact(50), source: 'made by hand' }],
    }),
    food('thin-soup', 'liquid', packed([250, 600], 'no'), { pours: true, keeps: fresh }),
    food('block-fat', 'fat', packed([200], 'no'), { keeps: fresh }),
    food('long-soup', 'liquid', packed([300, 700], 'no'), { pours: true, keeps: aWeek }),
    food('hard-fat', 'fat', packed([150], 'no'), { keeps: twoWeeks }),
    food('soft-block', 'fat', packed([180, 450], 'no'), { byEye: 'only', keeps: fresh }),
    food('setting-powder', 'gelling', packed([12], 'no')),
  ].map((each) => [each.id, each] as const),
]);

function built(id: string): Kitchen {
  const kitchen = larder.kitchens.get(id);
  if (kitchen === undefined) throw new RangeError(`There is no kitchen ${id}.`);
  return kitchen;
}

const quarter = new Exact('0.25');
const half = new Exact('0.5');

/** Kitchens with few tools, so that ratios bind often: a third-cup set and one spoon; a coarse scale and a coarse jug. */
const coarse: readonly Kitchen[] = [
  {
    ...built('us'),
    id: 'few-cups',
    spoons: { tsp: { wholes: 2, fractions: [half] }, tbsp: { wholes: 2, fractions: [] } },
    cups: { wholes: 6, fractions: [quarter, half, new Exact('0.75')], plusTablespoons: 0 },
  },
  {
    ...built('uk'),
    id: 'coarse-scale',
    spoons: { tsp: { wholes: 3, fractions: [quarter, half] }, tbsp: { wholes: 2, fractions: [half] } },
    jug: { unit: 'ml', marks: [{ from: new Exact(50), to: new Exact(1000), step: new Exact(25) }] },
    scale: { unit: 'g', marks: [{ from: new Exact(10), to: new Exact(1000), step: new Exact(10) }] },
  },
];

/** Built-in kitchens and coarse ones. */
export const kitchens: ReadonlyMap<string, Kitchen> = new Map(
  [...['us', 'uk', 'eu', 'au', 'ca'].map(built), ...coarse].map((each) => [each.id, each]),
);
