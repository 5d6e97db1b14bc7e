import { Exact, type Food, nothingStated, weigh } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { expect, test } from 'vitest';

const { foods, kitchens } = builtInLarder();
const units = kitchens.get('us')?.units ?? {};
const sample = foods.get('light-brown-sugar') as Food;
const gramsOf = (food: Food, unit: 'cup' | 'count', prep: string): string | undefined =>
  weigh(new Exact(1), unit, food, { units, prep, stated: nothingStated }).grams?.toDecimalPlaces(1).toString();

const weights = [
  { prep: '', grams: '220' },
  { prep: 'packed', grams: '220' },
  { prep: 'firmly packed', grams: '220' },
  { prep: 'unpacked', grams: '145' },
] as const;

test.for(weights)('a cup of brown sugar, `$prep`, is $grams g: the form is a whole word', ({ prep, grams }) => {
  expect(gramsOf(sample, 'cup', prep)).toBe(grams);
});

test('the form of more words wins', () => {
  const density = (form: string | null, grams: number) => ({ form, gramsPerMl: new Exact(grams), source: 'made up' });
  const food = { ...sample, densities: [density('packed', 3), density('loosely packed', 1), density(null, 2)] };
  const millilitres = units.cup ?? new Exact(0);
  expect(gramsOf(food, 'cup', 'loosely packed')).toBe(millilitres.toDecimalPlaces(1).toString());
});

test('cubes are cubed', () => {
  const cubed = [...foods.values()].find(({ densities }) => densities.some(({ form }) => form === 'cubed')) as Food;
  expect(gramsOf(cubed, 'cup', 'in cubes')).toBe(gramsOf(cubed, 'cup', 'cubed'));
});

test('an extra large one is not a large one', () => {
  const piece = (size: string, grams: number) => ({
    unit: 'count' as const,
    size,
    grams: new Exact(grams),
    source: 'made up',
  });
  const food = { ...sample, pieces: [piece('large', 50), piece('extra large', 56)] };
  expect([gramsOf(food, 'count', 'extra large'), gramsOf(food, 'count', 'large')]).toEqual(['56', '50']);
});
