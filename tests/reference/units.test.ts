import {
  centimetresIn,
  Exact,
  gramsIn,
  type LengthUnit,
  type MassUnit,
  millilitresIn,
  type VolumeUnit,
} from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { cldrFactor } from './cldr-factor.js';
import { readCsv } from './read-csv.js';

const { kitchens } = builtInLarder();
const millilitres = (kitchen: string, unit: string): string | undefined => {
  const units: Readonly<Record<string, Exact>> = kitchens.get(kitchen)?.units ?? {};
  return units[unit]?.toString();
};

const volumeUnits = readCsv('volume-units.csv');

describe('the volume units of the kitchens', () => {
  test.for(volumeUnits)('one $kitchen $unit holds $ml ml: $source', ({ kitchen = '', unit = '', ml }) => {
    expect(millilitres(kitchen, unit)).toBe(ml);
  });

  test.for(volumeUnits.filter(({ cldr_id }) => cldr_id !== ''))(
    'one $kitchen $unit is what CLDR 48 calls $cldr_id',
    ({ kitchen = '', unit = '', cldr_id = '' }) => {
      expect(millilitres(kitchen, unit)).toBe(cldrFactor(cldr_id).times(1_000_000).toString());
    },
  );

  test.for(volumeUnits)(
    'one $kitchen $unit is what GNU Units 3.15 gives for $gnu_units_expression',
    ({ kitchen = '', unit = '', gnu_units_ml }) => {
      expect(millilitres(kitchen, unit)).toBe(gnu_units_ml);
    },
  );

  test('every unit of every kitchen is in the table', () => {
    const known = [...kitchens.values()].flatMap(({ id, units }) => Object.keys(units).map((unit) => `${id} ${unit}`));
    expect(known.toSorted()).toEqual(volumeUnits.map(({ kitchen, unit }) => `${kitchen} ${unit}`).toSorted());
  });
});

const sizeOf = (dimension: string, unit: string): Exact | null => {
  if (dimension === 'mass') return gramsIn(unit as MassUnit);
  return dimension === 'length' ? centimetresIn(unit as LengthUnit) : millilitresIn(unit as VolumeUnit, {});
};
// CLDR counts in kilograms, metres and cubic metres, we in grams, centimetres and millilitres.
const ofBaseUnit: Readonly<Record<string, number>> = { mass: 1000, length: 100, volume: 1_000_000 };

describe('the units that are the same everywhere', () => {
  test.for(readCsv('common-units.csv'))(
    'one $unit is $g_cm_or_ml by CLDR 48 and by GNU Units 3.15',
    ({ dimension = '', unit = '', cldr_id = '', gnu_units_value }) => {
      const size = sizeOf(dimension, unit)?.toString();
      expect(size).toBe(gnu_units_value);
      expect(size).toBe(
        cldrFactor(cldr_id)
          .times(ofBaseUnit[dimension] ?? 0)
          .toString(),
      );
    },
  );
});

// The table prints what a cook can read: the exact size is rounded to as many digits as it shows.
const nistTable = [
  { unit: 'tsp', times: '1', ml: '4.9', source: 'NIST SP 430, Household Weights and Measures, table 1' },
  { unit: 'tbsp', times: '1', ml: '15', source: 'NIST SP 430, Household Weights and Measures, table 1' },
  { unit: 'floz', times: '1', ml: '30', source: 'NIST SP 430, Household Weights and Measures, table 1' },
  { unit: 'cup', times: '0.25', ml: '59', source: 'NIST SP 430, Household Weights and Measures, table 1' },
  { unit: 'cup', times: '0.5', ml: '118', source: 'NIST SP 430, Household Weights and Measures, table 1 (gill)' },
  { unit: 'cup', times: '1', ml: '237', source: 'NIST SP 430, Household Weights and Measures, table 1' },
  { unit: 'pint', times: '1', ml: '473', source: 'NIST SP 430, Household Weights and Measures, table 1' },
  { unit: 'quart', times: '1', ml: '946', source: 'NIST SP 430, Household Weights and Measures, table 1' },
] as const;

test.for(nistTable)('$times US $unit is $ml ml as printed: $source', ({ unit, times, ml }) => {
  const exact = kitchens.get('us')?.units[unit]?.times(times);
  expect(exact?.toDecimalPlaces(ml.includes('.') ? 1 : 0).toString()).toBe(ml);
});

const litre = [
  { unit: 'tsp', inOneLitre: '203' },
  { unit: 'tbsp', inOneLitre: '67.6' },
  { unit: 'floz', inOneLitre: '33.8' },
  { unit: 'cup', inOneLitre: '4.23' },
  { unit: 'pint', inOneLitre: '2.11' },
  { unit: 'quart', inOneLitre: '1.06' },
] as const;

test.for(litre)('a litre holds $inOneLitre US $unit: NIST SP 430, table 1', ({ unit, inOneLitre }) => {
  const size = kitchens.get('us')?.units[unit] ?? 0;
  expect(new Exact(1000).dividedBy(size).toSignificantDigits(3).toString()).toBe(inOneLitre);
});

test('an Australian tablespoon is four teaspoons: NSW Government healthy-kids conversion chart', () => {
  const units = kitchens.get('au')?.units;
  expect(units?.tbsp?.dividedBy(units.tsp ?? 0).toString()).toBe('4');
});
