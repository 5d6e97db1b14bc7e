import { Exact, eggSizeNamed, wholeEggsFor } from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { converted, rulesOf, textOf } from './recipe-of.js';
import { kitchen, kitchenIds } from './setting.js';

const classes = kitchenIds.flatMap((id) => kitchen(id).eggs.sizes.map((size) => ({ id, name: size.name, size })));

test.for(classes)('a $name egg of the $id kitchen is edible for 0.88 of its weight in the shell', ({ size }) => {
  expect(size.edibleGrams.dividedBy(size.typicalGrams).toDecimalPlaces(20).toString()).toBe('0.88');
});

// Typical weights in the shell, grams: US large 56.699 (AMS 56), Canadian large 56, UK and EU medium 58 and large 68
// (Regulation 589/2008), Australian 700 g carton 58.333.
const worked = [
  {
    from: 'us',
    line: '4 large eggs',
    to: 'uk',
    becomes: '4 medium eggs',
    drift: '2.3',
    by: '4 × 58 for 4 × 56.699; 3 large −10.1 %',
  },
  { from: 'us', line: '6 large eggs', to: 'uk', becomes: '5 large eggs', drift: '-0.1', by: '5 × 68 for 6 × 56.699' },
  {
    from: 'us',
    line: '12 large eggs',
    to: 'uk',
    becomes: '10 large eggs',
    drift: '-0.1',
    by: '10 × 68 for 12 × 56.699',
  },
  { from: 'us', line: '3 large eggs', to: 'eu', becomes: '3 medium eggs', drift: '2.3', by: '58 for 56.699' },
  { from: 'us', line: '2 large eggs', to: 'ca', becomes: '2 large eggs', drift: '-1.2', by: '56 for 56.699' },
  { from: 'us', line: '4 large eggs', to: 'au', becomes: '4 eggs', drift: '2.9', by: '58.333 for 56.699' },
  { from: 'uk', line: '5 large eggs', to: 'us', becomes: '6 large eggs', drift: '0.1', by: '6 × 56.699 for 5 × 68' },
  {
    from: 'uk',
    line: '1 large egg',
    to: 'us',
    becomes: '1 extra large egg',
    drift: '-6.2',
    by: '63.786 for 68, on the shelf where a jumbo (+4.2 %) seldom is; one large −16.6 %',
  },
  { from: 'uk', line: '3 medium eggs', to: 'us', becomes: '3 large eggs', drift: '-2.2', by: '56.699 for 58' },
  { from: 'uk', line: '2 large eggs', to: 'au', becomes: '2 eggs (800 g carton)', drift: '-2', by: '66.667 for 68' },
  { from: 'au', line: '4 eggs', to: 'us', becomes: '4 eggs', drift: '-2.8', by: '56.699 for 58.333' },
  // White and yolk are the same part of any egg.
  {
    from: 'us',
    line: '4 large egg whites',
    to: 'uk',
    becomes: '4 medium egg whites',
    drift: '2.3',
    by: '4 × 58 for 4 × 56.699',
  },
  { from: 'us', line: '6 egg yolks', to: 'uk', becomes: '5 egg yolks', drift: '-0.1', by: '5 × 68 for 6 × 56.699' },
  { from: 'us', line: '4 large egg whites', to: 'au', becomes: '4 egg whites', drift: '2.9', by: '58.333 for 56.699' },
  { from: 'uk', line: '2 yolks', to: 'au', becomes: '2 yolks (800 g carton)', drift: '-2', by: '66.667 for 68' },
  { from: 'au', line: '3 egg whites', to: 'nz', becomes: '3 egg whites', drift: '-9.1', by: '53 for 58.333' },
];

describe('eggs of another kitchen', () => {
  test.for(worked)('$line from $from read $becomes in $to: $by', ({ from, line, to, becomes, drift }) => {
    const version = converted(line, from, to);
    expect([textOf(version), version.drift?.times(100).toDecimalPlaces(1).toString()]).toEqual([becomes, drift]);
  });

  test.for([
    { line: '4 large eggs, beaten', to: 'uk', becomes: '4 medium eggs, beaten', because: 'the size word is replaced' },
    { line: '2 eggs', to: 'uk', becomes: '2 medium eggs', because: 'a size that is not the usual one is named' },
    { line: '2 eggs', to: 'eu', becomes: '2 eggs', because: 'the usual one is not' },
    { line: '12 eggs', to: 'uk', becomes: '10 eggs', because: 'the usual one is not' },
    { line: '4 eggs (large)', to: 'uk', becomes: '4 eggs (medium)', because: 'the word stays where it stood' },
    { line: '4 eggs, large', to: 'au', becomes: '4 eggs', because: 'no comma is left over' },
    { line: '4 eggs (large), beaten', to: 'au', becomes: '4 eggs, beaten', because: 'no brackets are left over' },
    {
      line: '3 large free-range eggs',
      to: 'au',
      becomes: '3 free-range eggs',
      because: 'a carton is no word before eggs',
    },
    { line: '4–5 large eggs', to: 'uk', becomes: '4–5 medium eggs', because: 'both ends are of one size' },
    { line: 'about 4 large eggs', to: 'eu', becomes: 'about 4 medium eggs', because: 'about is kept' },
  ])('$line reads $becomes in $to: $because', ({ line, to, becomes }) => {
    expect(textOf(converted(line, 'us', to))).toBe(becomes);
  });

  test.for([
    { line: '2 large eggs', becomes: '2 eggs (800 g carton)' },
    { line: '2 eggs (large), beaten', becomes: '2 eggs (800 g carton), beaten' },
    { line: '2–3 large eggs', becomes: '2–3 eggs (800 g carton)' },
  ])('$line from a UK kitchen reads $becomes in Australia', ({ line, becomes }) => {
    expect(textOf(converted(line, 'uk', 'au'))).toBe(becomes);
  });

  test('that nobody can buy are not multiplied out: half an egg is a finding', () => {
    expect(rulesOf(converted('½ large egg', 'us', 'us'))).toEqual(['unbuyable part-of-piece']);
  });

  test.for(['½ egg white', '1½ egg yolks'])('nor is a part of a white or yolk: %s', (line) => {
    expect(rulesOf(converted(line, 'us', 'us'))).toEqual(['unbuyable part-of-piece']);
  });

  test('whose whites their author has weighed weigh so much there, and what their class does elsewhere', () => {
    const line = converted('5 egg whites (150 g)', 'us', 'uk');
    // 30 g each; 4 UK large whites are 4 × 39.4944 g.
    expect([textOf(line), line.drift?.times(100).toDecimalPlaces(1).toString()]).toEqual(['4 egg whites', '5.3']);
  });

  test.for(kitchenIds)('are bought one by one in %s: no carton and no remainder is named', (to) => {
    const line = converted('4 large eggs', 'us', to);
    expect([line.bought, rulesOf(line)]).toEqual([null, []]);
  });
});

describe('the size that a line names', () => {
  test.for([
    ['us', 'extra large', 'extra large'],
    ['us', 'Medium', 'medium'],
    ['us', '', 'large'],
    ['eu', '', 'medium'],
    ['au', '', '700 g carton'],
    ['uk', 'jumbo', 'large'],
  ] as const)('in the %s kitchen, for the words `%s`, is %s', ([id, words, name]) => {
    expect(eggSizeNamed(kitchen(id), words)?.name).toBe(name);
  });
});

describe('whole eggs', () => {
  const tenth = new Exact('0.1');
  const weight = fc.integer({ min: 300, max: 10_000 }).map((tenths) => new Exact(tenths).dividedBy(10));

  test('are of the usual size wherever a whole number of it is near enough', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kitchenIds), weight, (id, grams) => {
        const { usual, sizes } = kitchen(id).eggs;
        const size = sizes.find(({ name }) => name === usual);
        const counts = Array.from({ length: 40 }, (_, index) => (size?.edibleGrams ?? new Exact(0)).times(index + 1));
        const fits = counts.some((sum) => sum.dividedBy(grams).minus(1).abs().lessThanOrEqualTo(tenth));
        expect(wholeEggsFor(kitchen(id), [grams], tenth)?.[0]?.size.name === usual).toBe(fits);
      }),
    );
  });

  test('of another size are the nearest of those on every shelf, then of the seldom ones, and never beyond the limit', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kitchenIds), weight, (id, grams) => {
        const { usual, sizes } = kitchen(id).eggs;
        const found = wholeEggsFor(kitchen(id), [grams], tenth)?.[0];
        fc.pre(found?.size.name !== usual);
        // Exact, since a drift of a tenth is within the limit and its float is not.
        const nearest = (seldom: boolean): Exact | null => {
          const near = sizes
            .filter((size) => size.seldom === seldom && size.name !== usual)
            .flatMap(({ edibleGrams }) =>
              Array.from({ length: 40 }, (_, at) =>
                edibleGrams
                  .times(at + 1)
                  .dividedBy(grams)
                  .minus(1)
                  .abs(),
              ),
            )
            .filter((drift) => drift.lessThanOrEqualTo(tenth));
          return near.length === 0 ? null : Exact.min(...near);
        };
        const least = nearest(false) ?? nearest(true);
        expect(found?.drift.abs().toString() ?? null).toBe(least?.toString() ?? null);
      }),
    );
  });
});
