import { Exact, type Food, millilitresIn, type Pack } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { readCsv } from './read-csv.js';

const { foods, kitchens } = builtInLarder();
const ca = kitchens.get('ca')?.units ?? {};
const packsIn = (food: Food | undefined, kitchen: string): readonly Pack[] =>
  (food?.sold[kitchen] ?? food?.sold.any)?.packs ?? [];
const packOf = (food: string, label: string, kitchen = 'us'): Pack | undefined =>
  packsIn(foods.get(food), kitchen).find(({ size, unit }) => `${size} ${unit}` === label);

describe('numbered cans of the US', () => {
  // A can is filled to within a tenth, and a tin of fruit or tomatoes weighs little more than water.
  test.for(readCsv('numbered-cans.csv'))('a $label can of $food fills a $name of $volume_ml ml: $source', (row) => {
    const grams = packOf(row.food ?? '', row.label ?? '')?.grams ?? new Exact(0);
    const filled = grams.dividedBy(row.volume_ml ?? '').toNumber();
    expect(filled).toBeGreaterThan(0.9);
    expect(filled).toBeLessThan(1.1);
  });
});

// No table prints what shops keep, so this is a second list of it, written apart from the larder's.
describe('cans of the shops', () => {
  test.for(readCsv('retail-cans.csv'))('$kitchen: $food in $label: $source', ({ kitchen, food = '', label = '' }) => {
    expect(packOf(food, label, kitchen)?.word).toMatch(/^(?:can|tin)$/);
  });
});

describe('drained weights', () => {
  test.for(readCsv('drained-cans.csv'))('$food: $drained_g of $net_g g is drained, within a tenth: $source', (row) => {
    const can = packsIn(foods.get(row.food ?? ''), 'us').find(({ drainedGrams }) => drainedGrams !== null);
    const part = can?.drainedGrams?.dividedBy(can.grams).toNumber() ?? 0;
    const usda = Number(row.drained_g) / Number(row.net_g);
    expect(Math.abs(part / usda - 1)).toBeLessThan(0.1);
  });
});

describe('Canadian cans', () => {
  const legal = readCsv('canadian-containers.csv').map(({ volume_ml }) => Number(volume_ml));
  // The regulation lists fruit, vegetables and soups; milk, cream, fish and drinks go by other sizes.
  const listed = [...foods.values()].filter(({ id }) =>
    /(?:tomatoes|beans|lentils|chickpeas|corn|pumpkin-puree)$/.test(id),
  );
  const cans = listed.flatMap((food) =>
    packsIn(food, 'ca')
      .filter(({ word, unit }) => word === 'can' && unit !== 'count' && millilitresIn(unit as 'ml', ca) !== null)
      .map(({ size, unit }) => ({
        food: food.id,
        ml:
          millilitresIn(unit as 'ml', ca)
            ?.times(size)
            .toNumber() ?? 0,
      })),
  );

  test('are at least 15 of fruit and vegetables', () => {
    expect(cans.length).toBeGreaterThanOrEqual(15);
  });

  test.for(cans)('a $ml ml can of $food is of a size that the regulation lists', ({ ml }) => {
    expect(legal).toContain(ml);
  });
});
