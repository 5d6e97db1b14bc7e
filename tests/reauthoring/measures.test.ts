import { Exact, type Measure, measuresBy, nearestOf, writeStatement } from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { converted, rulesOf, textOf } from './recipe-of.js';
import { kitchen, kitchenIds } from './setting.js';

const ways = ['spoon', 'cup', 'jug', 'scale'] as const;
type Way = (typeof ways)[number];

// What a cook would write down, worked out here from the sizes alone: a numerator over 12 keeps every fraction whole.
const quarters = [3, 6, 9];
const cupParts = [3, 4, 6, 8, 9];
const units = {
  us: { tsp: '4.92892159375', tbsp: '14.78676478125', cup: '236.5882365', source: 'NIST SP 430 and CLDR 48, exact' },
  ca: { tsp: '5', tbsp: '15', cup: '250', source: 'GNU Units 3.15; CLDR 48' },
  uk: { tsp: '5', tbsp: '15', cup: null, source: 'GNU Units 3.15' },
  eu: { tsp: '5', tbsp: '15', cup: null, source: 'GNU Units 3.15' },
  au: { tsp: '5', tbsp: '20', cup: '250', source: 'GNU Units 3.15; NSW Government healthy-kids conversion chart' },
} as const;

const rows = Object.entries(units).map(([id, row]) => ({ id, ...row }));

/** Amounts of one tool: wholes up to `most`, alone or with one fraction. */
function counted(each: string, most: number, parts: readonly number[]): Exact[] {
  const twelfths = Array.from({ length: most + 1 }, (_, whole) => [0, ...parts].map((part) => whole * 12 + part));
  return twelfths
    .flat()
    .filter((twelfth) => twelfth > 0)
    .map((twelfth) => new Exact(each).times(twelfth).dividedBy(12));
}

function steps(...stretches: readonly (readonly [from: number, to: number, step: number])[]): Exact[] {
  return stretches.flatMap(([from, to, step]) =>
    Array.from({ length: (to - from) / step + 1 }, (_, index) => new Exact(from + index * step)),
  );
}

/** The sizes as text, each once, ascending. Thirds are rounded to 30 digits on both sides. */
function sizes(list: readonly Exact[]): string[] {
  const rounded = list.map((size) => size.toSignificantDigits(30).toString());
  return [...new Set(rounded)].sort((a, b) => new Exact(a).comparedTo(b));
}

const sizesOf = (id: string, way: Way): string[] => sizes(measuresBy(kitchen(id), way).map(({ size }) => size));

describe('what a kitchen can measure', () => {
  const spoons = '$id spoons: up to 3 tsp by quarters, 3 tbsp by halves, 1 or 2 tbsp and some tsp: $source';
  test.for(rows)(spoons, ({ id, tsp, tbsp }) => {
    const added = id === 'au' ? [1, 2, 3] : [1, 2];
    const sums = [1, 2].flatMap((count) =>
      added.map((more) => new Exact(tbsp).times(count).plus(new Exact(tsp).times(more))),
    );
    expect(sizesOf(id, 'spoon')).toEqual(sizes([...counted(tsp, 3, quarters), ...counted(tbsp, 3, [6]), ...sums]));
  });

  test.for(rows)('$id cups: up to 8 by ¼ ⅓ ½ ⅔ ¾, and 1 to 3 tbsp with them: $source', ({ id, cup, tbsp }) => {
    const plain = cup === null ? [] : counted(cup, 8, cupParts);
    const spooned = plain.flatMap((size) => [1, 2, 3].map((count) => size.plus(new Exact(tbsp).times(count))));
    const written = measuresBy(kitchen(id), 'cup').filter(({ terms }) => terms[0]?.unit !== 'quart');
    expect(sizes(written.map(({ size }) => size))).toEqual(sizes([...plain, ...spooned]));
  });

  test.for(['ca', 'uk', 'eu', 'au'])(
    '%s jug: 10 ml to 300, 25 ml to 600, 50 ml to 2 litres, 250 ml to 12 in several fills',
    (id) => {
      // Common practice, no source.
      expect(sizesOf(id, 'jug')).toEqual(
        sizes(steps([10, 300, 10], [325, 600, 25], [650, 2000, 50], [2250, 12000, 250])),
      );
    },
  );

  test.for(['uk', 'eu', 'au'])('%s scale: 1 g to 20, 5 g to 500, 25 g to a kilogram, 50 g to five', (id) => {
    // Common practice, no source: what a cook would write down.
    const marks = steps([5, 20, 1], [25, 500, 5], [525, 1000, 25], [1050, 5000, 50]);
    expect(sizesOf(id, 'scale')).toEqual(sizes(marks));
  });

  test.for([
    ['us', 'jug'],
    ['us', 'scale'],
    ['ca', 'scale'],
    ['uk', 'cup'],
    ['eu', 'cup'],
  ] as const)('the %s kitchen has no %s', ([id, way]) => {
    expect(measuresBy(kitchen(id), way)).toEqual([]);
  });

  test.for(kitchenIds)('the tables of the %s kitchen ascend and hold no amount twice', (id) => {
    for (const way of ways) {
      const list = measuresBy(kitchen(id), way);
      const falling = list.filter(({ size }, index) => size.lessThanOrEqualTo(list[index - 1]?.size ?? 0));
      expect(falling.map(({ terms }) => writeStatement(terms))).toEqual([]);
    }
  });

  test.for(kitchenIds)('every measure of the %s kitchen is the exact sum of its terms', (id) => {
    for (const way of ways) {
      for (const { terms, size } of measuresBy(kitchen(id), way)) {
        const { units: own } = kitchen(id);
        const sum = terms.reduce(
          (total, { low, unit }) => total.plus(low.times(unit in own ? (own[unit as 'tsp'] ?? 0) : 1)),
          new Exact(0),
        );
        expect(sum.toString()).toBe(size.toString());
      }
    }
  });
});

describe('an amount that two tools give', () => {
  const written = (id: string, way: Way, size: string): string =>
    writeStatement(measuresBy(kitchen(id), way).find((measure) => measure.size.equals(size))?.terms ?? []);

  test.for([
    { id: 'uk', way: 'spoon', size: '15', as: '1 tbsp', because: 'one scoop, not three' },
    { id: 'uk', way: 'spoon', size: '7.5', as: '1½ tsp', because: 'a whole teaspoon comes first' },
    { id: 'au', way: 'spoon', size: '10', as: '2 tsp', because: 'few kitchens have half a tablespoon' },
    { id: 'ca', way: 'cup', size: '500', as: '2 cups', because: 'one tool, not two' },
  ] as const)('$size ml is written $as in the $id kitchen: $because', ({ id, way, size, as }) => {
    expect(written(id, way, size)).toBe(as);
  });
});

describe('how awkward a measure is', () => {
  test.for([
    ['2 cups', 0],
    ['½ cup', 0],
    ['1½ cups', 0],
    ['⅓ cup', 1],
    ['2¾ cups', 1],
    ['1 cup + 1 tbsp', 3.5],
    ['⅓ cup + 3 tbsp', 3.5],
  ] as const)('%s has awkwardness %d', ([written, awkwardness]) => {
    const measure = measuresBy(kitchen('us'), 'cup').find(({ terms }) => writeStatement(terms) === written);
    expect(measure?.awkwardness).toBe(awkwardness);
  });
});

/** The nearest by ratio, by looking at all of them. */
function nearestByScan(list: readonly Measure[], size: Exact): Measure | undefined {
  const distance = (measure: Measure): Exact => Exact.max(measure.size, size).dividedBy(Exact.min(measure.size, size));
  return list.reduce((best, each) => (distance(each).lessThan(distance(best)) ? each : best));
}

describe('the nearest measure', () => {
  const tables = kitchenIds.flatMap((id) =>
    ways.map((way) => measuresBy(kitchen(id), way)).filter((list) => list.length > 0),
  );
  const table = fc.constantFrom(...tables);
  const size = fc.integer({ min: 1, max: 6_000_000 }).map((thousandths) => new Exact(thousandths).dividedBy(1000));

  test('is the one that a scan of the whole table finds', () => {
    fc.assert(
      fc.property(table, size, (list, wanted) => {
        const found = nearestOf(list, wanted);
        const scanned = nearestByScan(list, wanted);
        // Floats choose, so two that are equally far may swap.
        const off = (measure: Measure | undefined): number =>
          Math.abs(Math.log((measure?.near ?? Number.NaN) / wanted.toNumber()));
        expect(off(found?.measure)).toBeCloseTo(off(scanned), 9);
      }),
    );
  });

  test('of a measure is that measure, with no error at all', () => {
    for (const list of tables) {
      for (const measure of list) {
        const found = nearestOf(list, measure.size);
        expect(found?.measure).toBe(measure);
        expect(found?.error.toString()).toBe('0');
      }
    }
  });

  test('carries its signed error, exact', () => {
    const found = nearestOf(measuresBy(kitchen('uk'), 'jug'), new Exact(340));
    expect(found?.measure.size.toString()).toBe('350');
    expect(found?.error.times(340).toDecimalPlaces(20).toString()).toBe('10');
  });

  test('of nothing to measure with is none', () => {
    expect(nearestOf([], new Exact(1))).toBeNull();
  });
});

describe('a pot too large for one jug or eight cups', () => {
  // NIST SP 430: 1 US quart is 4 cups, 946.352946 ml; litres by the quarter, worked out by hand.
  test.for([
    ['us', '4 quarts', 'uk', '3.75 l'],
    ['us', '4 quarts', 'eu', '3.75 l'],
    ['us', '4 quarts', 'au', '3.75 l'],
    ['us', '4 quarts', 'ca', '3.75 l'],
    ['us', '12 cups', 'uk', '2.75 l'],
    ['uk', '3 litres', 'us', '3¼ quarts'],
    ['uk', '5 litres', 'us', '5½ quarts'],
    ['uk', '2.5 litres', 'us', '2¾ quarts'],
  ] as const)('%s %s is never cut down to the largest tool: %s %s', ([native, amount, reader, expected]) => {
    const line = converted(`${amount} water`, native, reader);
    expect(textOf(line)).toBe(`${expected} water`);
    expect(rulesOf(line)).toEqual([]);
  });

  // Worked out by hand from 453.59237 g to the pound and counter steps of ¼ lb and 50 g.
  test.for([
    ['uk', '1 kg floury potatoes, peeled', 'us', '2¼ lb russet potatoes, peeled'],
    ['eu', '1.5 kg carrots', 'us', '3¼ lb carrots'],
    ['uk', '1 kg floury potatoes, peeled', 'ca', '1 kg russet potatoes, peeled'],
  ] as const)('and %s %s are what the shop weighs off in %s: %s', ([native, amount, reader, expected]) => {
    const line = converted(amount, native, reader);
    expect(textOf(line)).toBe(expected);
    expect(rulesOf(line)).toEqual([]);
  });

  test('but little of it is measured at home', () => {
    expect(textOf(converted('60 g carrots, diced', 'uk', 'us'))).toMatch(/cup/u);
  });

  test('and twelve cups of flour without a scale keep their weight, with a finding', () => {
    // 12 cups of 125 g (USDA SR26 20081, cup) are 1.5 kg; eight and three quarter cups would be a fifth less.
    const line = converted('12 cups all-purpose flour', 'us', 'ca');
    expect(textOf(line)).toBe('1.5 kg all-purpose flour');
    expect(rulesOf(line)).toContain('unmeasurable no-tool');
  });
});
