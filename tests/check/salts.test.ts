import { describe, expect, test } from 'vitest';
import { lines, said } from './said.ts';

describe('curing-salt', () => {
  test('names a cure by the spoon', () => {
    expect(said(lines('1 tsp pink curing salt'), 'curing-salt')).toEqual([
      {
        severity: 'error',
        kitchens: ['us'],
        at: '1 tsp',
        text: 'Curing salt is dangerous by the spoon, and `1 tsp` gives no weight. Write it in grams, from a tested recipe; readers should follow their own food-safety authority',
        expected: ['grams'],
      },
    ]);
  });

  test.for(['4 g pink curing salt', '1 tsp (6 g) pink curing salt', '1 tsp table salt'])(
    'says nothing of `%s`',
    (line) => {
      expect(said(lines(line), 'curing-salt')).toEqual([]);
    },
  );
});

describe('which-salt', () => {
  test('asks for the grams of kosher salt by volume', () => {
    const [found] = said(lines('1 tsp kosher salt'), 'which-salt');
    expect(found).toMatchObject({ severity: 'warning', at: '1 tsp', expected: ['1 tsp (… g)'] });
    expect(found?.text).toMatch(
      /^A teaspoon of kosher salt weighs [\d.]+ g in flakes and [\d.]+ g in coarse grains, so `1 tsp`/,
    );
  });

  test.for(['1 tsp kosher salt (2.8 g)', '3 g kosher salt', '1 tsp table salt', 'kosher salt, to taste'])(
    'says nothing of `%s`',
    (line) => {
      expect(said(lines(line), 'which-salt')).toEqual([]);
    },
  );
});
