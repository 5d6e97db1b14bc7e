import { type EggSize, Exact, type Kitchen, type Setting, weightsStatedIn } from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { converted, lineOf, rulesOf, textOf, versionOf } from './recipe-of.js';
import { kitchen, kitchenIds, setting } from './setting.js';

const classes = kitchenIds.flatMap((id) => kitchen(id).eggs.sizes.map((size) => ({ id, name: size.name, size })));

/** What is counted of eggs, and which part of their weight it is. */
const kinds = [
  { id: 'egg', one: 'egg', many: 'eggs', part: 1 },
  { id: 'egg-white', one: 'egg white', many: 'egg whites', part: '0.66' },
  { id: 'egg-yolk', one: 'yolk', many: 'yolks', part: '0.34' },
];

/** Lines of US eggs, each worded in another way. */
const wordings: readonly ((count: number, kind: (typeof kinds)[number]) => string)[] = [
  (count, kind) => `${count} ${named(count, kind)}`,
  (count, kind) => `${count} large ${named(count, kind)}`,
  (count, kind) => `${count} ${named(count, kind)} (large)`,
  (count, kind) => `${count} ${named(count, kind)}, large, beaten`,
  (count, kind) => `${count} large ${named(count, kind)} (at room temperature), beaten`,
  (count, kind) => `${count}–${count + 1} large ${kind.many}`,
  (count, kind) => `about ${count} ${named(count, kind)}, at room temperature`,
  (count, kind) => `${kind.many}, ${count}`,
  (count, kind) => `${kind.many}: ${count} large`,
];

function named(count: number, { one, many }: (typeof kinds)[number]): string {
  return count === 1 ? one : many;
}

/** A kitchen where the shops sell eggs of one size only, which has to be named. */
function sellingOnly(size: EggSize, id: string): Kitchen {
  return { ...kitchen(id), id: 'one-size', eggs: { ...kitchen(id).eggs, usual: 'another', sizes: [size] } };
}

/** A line of the eggs of one size, worded in another kitchen. */
function worded(text: string, size: EggSize, id: string): string {
  const native = {
    ...kitchen('us'),
    id: 'home',
    eggs: { ...kitchen('us').eggs, usual: 'large', sizes: [large(size)] },
  };
  const kitchens = new Map([native, sellingOnly(size, id)].map((each) => [each.id, each]));
  const within: Setting = { ...setting, kitchens };
  return textOf(converted(text, 'home', 'one-size', within));
}

function large(size: EggSize): EggSize {
  return { ...size, name: 'large', also: [] };
}

describe('a size of eggs that a version names', () => {
  test.for(classes)('is read back in $id: $name', ({ id, name, size }) => {
    fc.assert(
      fc.property(
        fc.constantFrom(...wordings),
        fc.constantFrom(...kinds),
        fc.integer({ min: 1, max: 13 }),
        (wording, kind, count) => {
          const text = worded(wording(count, kind), size, id);
          const { reading, food } = lineOf(text, id);
          const read = [food?.id, reading.size?.text, reading.amounts.map(({ unit }) => unit), reading.pack];
          expect([text, ...read]).toEqual([text, kind.id, name, ['count'], null]);
          expect([text, reading.amounts[0]?.low.toNumber()]).toEqual([text, count]);
          const weight = versionOf({ kitchen: id, lines: [text] }, id).parts[0]?.lines[0]?.chosen.grams;
          expect([text, weight?.toFixed(20)]).toEqual([
            text,
            size.edibleGrams.times(kind.part).times(count).toFixed(20),
          ]);
        },
      ),
      { numRuns: 300 },
    );
  });

  test.for(['peewee', 'king size', 'M/L', 'size 60', 'class 2', '53+'])('may be any that a site sells: %s', (name) => {
    const size: EggSize = { ...large(weighing(50)), name };
    const site: Kitchen = { ...kitchen('uk'), id: 'site', eggs: { ...kitchen('uk').eggs, sizes: [size] } };
    const within: Setting = { ...setting, kitchens: new Map([...setting.kitchens, ['site', site]]) };
    const text = textOf(converted('4 eggs, beaten', 'us', 'site', within));
    expect(text).toBe(`4 eggs (${name}), beaten`);
    expect(lineOf(text, 'site', text, within).reading.size?.text).toBe(name);
  });
});

function weighing(grams: number): EggSize {
  const typicalGrams = new Exact(grams).dividedBy('0.88');
  return { name: '', also: [], typicalGrams, edibleGrams: new Exact(grams), seldom: false };
}

describe('a size of eggs as authors write it', () => {
  test.for([
    ['au', '2 eggs (700 g carton)', '700 g carton'],
    ['au', '2 eggs (800g carton), lightly beaten', '800 g carton'],
    ['au', '3 free-range eggs, from a 600 g carton', '600 g carton'],
    ['au', '3 eggs (from an 800-gram carton, at room temperature)', '800 g carton'],
    ['au', 'Eggs, 3 (800 g carton)', '800 g carton'],
    ['au', '2 large eggs', '600 g carton'],
    ['au', '2 extra-large eggs', '700 g carton'],
    ['nz', '2 eggs (size 7)', 'size 7'],
    ['nz', '2 size 7 eggs', 'size 7'],
    ['nz', '2 size-8 free-range eggs, beaten', 'size 8'],
    ['nz', '2 eggs, size 5', 'size 5'],
    ['eu', '4 eggs (size L)', 'large'],
    ['eu', '4 eggs (L)', 'large'],
    ['eu', '4 eggs, size M', 'medium'],
    ['eu', '4 eggs (XL)', 'extra large'],
    ['eu', '4 very large eggs', 'extra large'],
    ['uk', '4 eggs, size large', 'large'],
    ['us', '1 extra-large egg', 'extra large'],
    ['us', '1 XL egg', 'extra large'],
    ['us', '3 jumbo eggs', 'jumbo'],
  ] as const)('in the %s kitchen, %s, is that of the shops: %s', ([id, text, name]) => {
    const size = kitchen(id).eggs.sizes.find((each) => each.name === name);
    const line = versionOf({ kitchen: id, lines: [text] }, id).parts[0]?.lines[0];
    const count = line?.stated?.statements[0]?.[0]?.low ?? new Exact(0);
    expect(line?.line.food?.id).toBe('egg');
    expect(line?.chosen.grams?.dividedBy(count).toFixed(20)).toBe(size?.edibleGrams.toFixed(20));
    expect(line === undefined ? null : rulesOf(line)).toEqual([]);
  });

  test('is no second statement of what they weigh', () => {
    const lines = [lineOf('2 eggs (800 g carton)', 'au'), lineOf('1 egg', 'au')];
    expect(weightsStatedIn(lines, kitchen('au')).eggs.size).toBe(0);
  });

  test('leaves a weight that states the amount again alone', () => {
    const { reading } = lineOf('2 eggs (100 g)', 'au');
    expect(reading.amounts.map(({ unit, low }) => `${low} ${unit}`)).toEqual(['2 count', '100 g']);
    expect(lineOf('1 cup stock (500 g carton)', 'au').reading.size).toBeNull();
  });

  test.for([
    ['au', '2 eggs (800 g carton), beaten', 'uk', '2 large eggs, beaten'],
    ['eu', '5 eggs (size M)', 'us', '5 large eggs'],
    ['us', '2 XL eggs', 'uk', '2 large eggs'],
    ['us', '2 eggs (US large), beaten', 'au', '2 eggs, beaten'],
    ['us', '2 eggs (US large)', 'uk', '2 medium eggs'],
    ['us', '2 egg(s)', 'uk', '2 medium egg(s)'],
    ['us', '2 eggs, large (100 g)', 'au', '2 eggs'],
    ['uk', '4 eggs — medium', 'au', '4 eggs'],
    ['nz', '3 size 6 or 7 eggs', 'us', '3 large eggs'],
    ['us', '1 large egg, plus 1 large egg yolk', 'uk', '1 medium egg, plus 1 medium egg yolk'],
    ['us', '2 large eggs plus 2 large yolks', 'au', '2 eggs plus 2 yolks'],
    ['us', '2 large eggs or 3 small eggs', 'uk', '2 medium eggs or 3 small eggs'],
    ['uk', '2 large eggs (UK)', 'au', '2 eggs (800 g carton) (UK)'],
    ['us', '½ dozen large eggs', 'uk', '5 large eggs'],
    ['us', '1½ dozen eggs', 'eu', '18 eggs'],
    ['au', '3 x 700 g eggs', 'us', '3 eggs'],
    ['uk', '2 large eggs (at room temperature)', 'au', '2 eggs (800 g carton, at room temperature)'],
    ['nz', '3 size 6 eggs', 'us', '3 large eggs'],
    ['nz', '3 eggs (size 7, at room temperature)', 'au', '3 eggs (at room temperature)'],
    ['nz', '3 size 6 eggs, beaten', 'au', '3 eggs (600 g carton), beaten'],
  ] as const)('from %s, %s, reads in %s: %s', ([from, text, to, becomes]) => {
    expect(textOf(converted(text, from, to))).toBe(becomes);
  });
});

test.for(['egg yolks', 'egg whites', 'eggs'])('a size word is no part of the name in 3 medium %s', (name) => {
  expect(lineOf(`3 medium ${name}`, 'uk').reading.food?.text).toBe(name);
  expect(lineOf('250 g medium egg noodles', 'uk').reading.food?.text).toBe('medium egg noodles');
});

test('what an author says that eggs of one size weigh does not make others as heavy', () => {
  const [, small, big] =
    versionOf({ kitchen: 'us', lines: ['2 large eggs (104 g)', '1 small egg', '1 egg'] }, 'us').parts[0]?.lines ?? [];
  expect(small?.chosen.grams?.toDecimalPlaces(2).toString()).toBe('37.42');
  expect(big?.chosen.grams?.toString()).toBe('52');
});
