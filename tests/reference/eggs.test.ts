import { Exact, partOfEgg } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { readCsv } from './read-csv.js';

const { kitchens, foods } = builtInLarder();
const table = readCsv('eggs.csv');
const sizeOf = (kitchen: string, name: string) => kitchens.get(kitchen)?.eggs.sizes.find((size) => size.name === name);
const of = (jurisdiction: string) => table.filter((row) => row.jurisdiction === jurisdiction);

describe('US eggs', () => {
  const classes = of('US').filter((row) => row.edible_g !== '');

  test('have five classes with an edible weight in the table', () => {
    expect(classes).toHaveLength(5);
  });

  test.for(classes)('$class: edible weight is within 2 % of $edible_g g: $source', (row) => {
    const edible = sizeOf('us', row.class?.toLowerCase() ?? '')?.edibleGrams ?? new Exact(0);
    expect(
      edible
        .dividedBy(row.edible_g ?? 0)
        .minus(1)
        .abs()
        .toNumber(),
    ).toBeLessThan(0.02);
  });

  test.for(classes)('$class: a dozen weighs $min_oz_per_dozen oz: $source', (row) => {
    const dozen = sizeOf('us', row.class?.toLowerCase() ?? '')
      ?.typicalGrams.times(12)
      .dividedBy('28.349523125');
    expect(dozen?.toString()).toBe(row.min_oz_per_dozen);
  });
});

describe('white and yolk', () => {
  const large = (ndb: string): string =>
    readCsv('usda-rows.csv').find((row) => row.ndb_no === ndb && row.measure === 'large')?.grams ?? '';

  test.for([
    ['egg-white', '01124'],
    ['egg-yolk', '01125'],
  ] as const)('are by weight what they are of a large egg, USDA 01123: %s, %s', ([id, ndb]) => {
    const part = partOfEgg(foods.get(id) ?? null);
    expect(part?.times(large('01123')).toString()).toBe(large(ndb));
  });
});

describe('Canadian eggs', () => {
  test.for(of('CA').filter((row) => row.min_g_in_shell !== ''))(
    '$class: $min_g_in_shell g in the shell: $source',
    (row) => {
      expect(sizeOf('ca', row.class?.toLowerCase() ?? '')?.typicalGrams.toString()).toBe(row.min_g_in_shell);
    },
  );
});

const bandNames: Readonly<Record<string, string>> = { S: 'small', M: 'medium', L: 'large', XL: 'extra large' };

describe.for(['UK', 'EU'])('%s eggs', (jurisdiction) => {
  test.for(of(jurisdiction))('$class lies within its band: $source', (row) => {
    const typical = sizeOf(jurisdiction.toLowerCase(), bandNames[row.class ?? ''] ?? '')?.typicalGrams.toNumber();
    expect(typical).toBeGreaterThanOrEqual(Number(row.min_g_in_shell || 0));
    expect(typical).toBeLessThan(Number(row.max_g_in_shell_exclusive || Infinity));
  });

  test.for(of(jurisdiction).filter((row) => row.min_g_in_shell !== '' && row.max_g_in_shell_exclusive !== ''))(
    '$class is the middle of $min_g_in_shell to $max_g_in_shell_exclusive g: $source',
    (row) => {
      const middle = new Exact(row.min_g_in_shell ?? 0).plus(row.max_g_in_shell_exclusive ?? 0).dividedBy(2);
      const typical = sizeOf(jurisdiction.toLowerCase(), bandNames[row.class ?? ''] ?? '')?.typicalGrams;
      expect(typical?.toString()).toBe(middle.toString());
    },
  );
});

describe('Australian eggs', () => {
  test.for(of('AU').filter((row) => row.carton_of_12_min_g !== ''))(
    'a $carton_of_12_min_g g carton holds eggs of $min_g_in_shell g: $source',
    (row) => {
      const size = sizeOf('au', `${row.carton_of_12_min_g} g carton`);
      expect(size?.typicalGrams.toDecimalPlaces(1).toFixed(1)).toBe(row.min_g_in_shell);
      expect(size?.also).toEqual([row.class?.toLowerCase()]);
    },
  );
});
