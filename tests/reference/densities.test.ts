import { type Density, Exact, type Food, type KitchenVolumeUnit } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { type Row, readCsv } from './read-csv.js';
import { usdaSource } from './usda-source.js';

const { foods, kitchens } = builtInLarder();
const us = kitchens.get('us')?.units ?? {};
const table = readCsv('usda-rows.csv');

// How the table's measures begin, in small letters.
const measures: readonly (readonly [string, KitchenVolumeUnit])[] = [
  ['fl oz', 'floz'],
  ['fluid ounce', 'floz'],
  ['tbsp', 'tbsp'],
  ['tablespoon', 'tbsp'],
  ['serving 1 tbsp', 'tbsp'],
  ['tsp', 'tsp'],
  ['teaspoon', 'tsp'],
  ['cup', 'cup'],
  ['pint', 'pint'],
  ['quart', 'quart'],
];

interface Weight {
  food: string;
  source: string;
  /** The row that the source names; undefined where the table has none. */
  row: Row | undefined;
  /** The larder's grams for one of the row's measure. */
  grams: Exact;
}

/**
 * The row that a source names. It may add a note in brackets to the measure (`cup (0.5 weighs 75 g, doubled)`), so the longest
 * measure is the one; where the table weighs both a half and a whole (ricotta), the whole.
 */
function rowOf(source: string): Row | undefined {
  const { ndb, measure = '' } = usdaSource(source) ?? {};
  return table
    .filter((row) => row.ndb_no === ndb && (measure === row.measure || measure.startsWith(`${row.measure} (`)))
    .toSorted((one, other) => length(other) - length(one) || Number(other.amount) - Number(one.amount))[0];
}

const length = ({ measure = '' }: Row): number => measure.length;

function weightOfDensity({ id }: Food, { source, gramsPerMl }: Density): Weight {
  const row = rowOf(source);
  const unit = measures.find(([words]) => row?.measure?.toLowerCase().startsWith(words))?.[1];
  const millilitres = (unit && us[unit]) ?? new Exact(0);
  return { food: id, source, row, grams: gramsPerMl.times(millilitres) };
}

const isUsda = ({ source }: { source: string }) => usdaSource(source) !== null;
const densities = [...foods.values()].flatMap((food) =>
  food.densities.filter(isUsda).map((density) => weightOfDensity(food, density)),
);
const pieces = [...foods.values()].flatMap(({ id, pieces }) =>
  pieces.filter(isUsda).map(({ source, grams }): Weight => ({ food: id, source, row: rowOf(source), grams })),
);

/** Half of the last place that the table prints: 227 stands for 226.5 to 227.5, 14.2 for 14.15 to 14.25. */
function halfPlace(grams: string): Exact {
  const places = grams.includes('.') && !grams.endsWith('.0') ? (grams.split('.')[1]?.length ?? 0) : 0;
  return new Exact(10).pow(-places).dividedBy(2);
}

/** How far a weight is from its row, in half places: up to 1 is rounding. Endless where the table has no such row. */
function rounding({ row, grams }: Weight): number {
  if (row === undefined) return Number.POSITIVE_INFINITY;
  const { grams: printed = '', amount = '1' } = row;
  const whole = grams.times(amount);
  return whole.minus(printed).abs().dividedBy(halfPlace(printed)).toDecimalPlaces(9).toNumber();
}

describe('densities from the USDA table', () => {
  test('are at least 30', () => {
    expect(densities.length).toBeGreaterThanOrEqual(30);
  });

  test.for(densities)('$food weighs what $source says, within its rounding', (weight) => {
    expect(rounding(weight)).toBeLessThanOrEqual(1);
  });
});

describe('pieces from the USDA table', () => {
  test('are at least 30', () => {
    expect(pieces.length).toBeGreaterThanOrEqual(30);
  });

  test.for(pieces)('one of $food weighs what $source says, within its rounding', (weight) => {
    expect(rounding(weight)).toBeLessThanOrEqual(1);
  });
});

describe('the comparison itself', () => {
  const row = { ndb_no: '01001', measure: 'cup', amount: '1', grams: '227' };

  test('takes 226.8 g for 227 g', () => {
    expect(rounding({ food: 'butter', source: '', row, grams: new Exact('226.8') })).toBeLessThanOrEqual(1);
  });

  test('does not take a row that is not there', () => {
    expect(rounding({ food: 'butter', source: '', row: undefined, grams: new Exact(227) })).toBeGreaterThan(1);
  });

  test('does not take 225 g for 227 g', () => {
    expect(rounding({ food: 'butter', source: '', row, grams: new Exact(225) })).toBeGreaterThan(1);
  });
});
