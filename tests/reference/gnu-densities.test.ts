import { Exact } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import data from '@retare/larder/larder.json' with { type: 'json' };
import { describe, expect, test } from 'vitest';
import { type Row, readCsv } from './read-csv.js';

const { foods, kitchens } = builtInLarder();
const cup = kitchens.get('us')?.units.cup ?? new Exact(0);
const table = readCsv('gnu-densities.csv');
const formOf = ({ form = '' }: Row): string | null => (form === '' ? null : form);

/** How far the other table's cup is from the larder's, as a signed fraction. */
function difference(row: Row): number {
  const density = foods.get(row.food ?? '')?.densities.find(({ form }) => form === formOf(row));
  const grams = density?.gramsPerMl.times(cup) ?? new Exact(0);
  return new Exact(row.g_per_us_cup ?? '').dividedBy(grams).minus(1).toNumber();
}

/** The explanation beside the entry, as it stands in the data. */
function noteOf(row: Row): string {
  const entries = data.foods as Record<string, { densities?: { form?: string; note?: string }[] }>;
  return entries[row.food ?? '']?.densities?.find(({ form }) => (form ?? null) === formOf(row))?.note ?? '';
}

const isExplained = (row: Row): boolean =>
  noteOf(row).startsWith('GNU Units 3.15 has ') &&
  noteOf(row).includes(`${Math.round(Number(row.g_per_us_cup))} g ${row.method}`);

describe('densities that GNU Units carries too', () => {
  test('are those of 23 foods', () => {
    expect(new Set(table.map(({ food }) => food)).size).toBe(23);
  });

  test.for(table)('a cup of $food ($ingredient $method) is within 12 % of $g_per_us_cup g, or says why not', (row) => {
    expect(Math.abs(difference(row)) <= 0.12 || isExplained(row)).toBe(true);
  });

  test('are explained only where they differ', () => {
    const needless = table.filter((row) => isExplained(row) && Math.abs(difference(row)) <= 0.12);
    expect(needless).toEqual([]);
  });
});
