import { celsiusOf, millilitresIn } from '@retare/core';
import * as larder from '@retare/larder';
import data from '@retare/larder/larder.json' with { type: 'json' };
import { describe, expect, test } from 'vitest';

const { foods, kitchens, digest } = larder.builtInLarder();

test('the package exports these names and no others', () => {
  expect(Object.keys(larder).toSorted()).toEqual([
    'builtInData',
    'builtInLarder',
    'defaultSettings',
    'extendLarder',
    'loadSettings',
    'problemLine',
    'readSettings',
    'readSiteLarder',
    'ruleNames',
    'safeClasses',
  ]);
});

describe('the built-in larder', () => {
  test('holds the five kitchens served by default, in the order of the chooser, and two that extend one of them', () => {
    expect([...kitchens.keys()]).toEqual([...larder.defaultSettings.kitchens, 'nz', 'us-scale']);
  });

  test('is read once', () => {
    expect(larder.builtInLarder()).toBe(larder.builtInLarder());
    expect(digest).toMatch(/^[0-9a-f]{64}$/);
  });

  test('has a source for every number', () => {
    // The numbers of a pack have the source of the block above them.
    expect(unsourced(data.kitchens, []).concat(unsourced(data.foods, []))).toEqual([]);
  });
});

/** Paths of numbers that no block around them gives a source for. */
function unsourced(value: unknown, path: readonly string[]): string[] {
  if (typeof value !== 'object' || value === null) {
    return typeof value === 'number' || /^\d[\d./]*$/.test(String(value)) ? [path.join('.')] : [];
  }
  if ('source' in value && String(value.source).trim() !== '') return [];
  return Object.entries(value).flatMap(([key, inner]) => unsourced(inner, [...path, key]));
}

describe.for([...kitchens.values()])('the $id kitchen', (kitchen) => {
  test('has a least core temperature for every class', () => {
    expect(kitchen.safe.map((safe) => safe.class).toSorted()).toEqual(larder.safeClasses.toSorted());
  });

  test('has none below 60 °C, the least that any authority gives', () => {
    const cold = kitchen.safe.filter((safe) => celsiusOf(safe.temperature, safe.unit).lessThan(60));
    expect(cold).toEqual([]);
  });

  test('sizes its spoons, its cup and every unit that it writes', () => {
    const units = [...kitchen.writes.volume, 'tsp', 'tbsp', 'cup'] as const;
    expect(units.filter((unit) => millilitresIn(unit, kitchen.units) === null)).toEqual([]);
  });

  test('has its scale and jug marks in ascending order without a gap', () => {
    for (const { marks } of [kitchen.scale, kitchen.jug].filter((tool) => tool !== null)) {
      expect(marks.slice(1).map(({ from }) => from.toString())).toEqual(
        marks.slice(0, -1).map(({ to }) => to.toString()),
      );
      expect(marks.filter(({ from, to, step }) => !to.minus(from).modulo(step).isZero())).toEqual([]);
    }
  });

  test('has regions of its own, or none, so that a browser is offered one kitchen first', () => {
    const others = [...kitchens.values()].filter(({ id }) => id !== kitchen.id).flatMap(({ regions }) => regions);
    expect(kitchen.regions.filter((region) => others.includes(region))).toEqual([]);
    expect(kitchen.regions.length > 0).toBe(kitchen.id !== 'us-scale');
  });

  test('sells or replaces every food, or says that it does not', () => {
    const unsaid = [...foods.values()].filter(({ sold }) => (sold[kitchen.id] ?? sold.any) === undefined);
    expect(unsaid.map(({ id }) => id)).toEqual([]);
  });
});

const tools = [
  { kitchen: 'us', cup: true, jug: false, scale: false, oven: '°F by 25, fan 25 lower', eggs: 'large' },
  { kitchen: 'ca', cup: true, jug: true, scale: false, oven: '°F by 25, fan 25 lower', eggs: 'large' },
  { kitchen: 'uk', cup: false, jug: true, scale: true, oven: '°C by 10, fan 20 lower', eggs: 'large' },
  { kitchen: 'eu', cup: false, jug: true, scale: true, oven: '°C by 10, fan 20 lower', eggs: 'medium' },
  { kitchen: 'au', cup: true, jug: true, scale: true, oven: '°C by 10, fan 20 lower', eggs: '700 g carton' },
  { kitchen: 'nz', cup: true, jug: true, scale: true, oven: '°C by 10, fan 20 lower', eggs: 'size 6' },
  { kitchen: 'us-scale', cup: true, jug: false, scale: true, oven: '°F by 25, fan 25 lower', eggs: 'large' },
] as const;

test.for(tools)('the $kitchen kitchen has its tools: oven in $oven, $eggs eggs', ({ kitchen: id, ...expected }) => {
  const { cups, jug, scale, oven, eggs } = kitchens.get(id) ?? {};
  expect({
    cup: cups !== null,
    jug: jug !== null,
    scale: scale !== null,
    oven: `°${oven?.unit} by ${oven?.step}, fan ${oven?.fanDifference} lower`,
    eggs: eggs?.usual,
  }).toEqual(expected);
});
