import { allergensOf } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { expect, test } from 'vitest';

const { foods } = builtInLarder();

// Words of names that say an allergen, and the foods whose names hold the word and not the thing.
const saying: readonly { allergen: string; word: RegExp; butNot: readonly string[] }[] = [
  {
    allergen: 'nuts',
    word: /\b(?:almonds?|walnuts?|pecans?|hazelnuts?|cashews?|pistachios?|macadamias?|marzipan)\b/i,
    butNot: [],
  },
  { allergen: 'peanut', word: /\bpeanuts?\b/i, butNot: [] },
  { allergen: 'sesame', word: /\b(?:sesame|tahini|hummus)\b/i, butNot: [] },
  {
    allergen: 'mustard',
    word: /\b(?:mustard|vinaigrette)\b/i,
    // Mustard greens are the leaves of another plant than turnips, and no list of allergens names leaves.
    butNot: ['turnip-greens'],
  },
  { allergen: 'celery', word: /\b(?:celery|celeriac)\b/i, butNot: [] },
  {
    allergen: 'crustaceans',
    word: /\b(?:shrimps?|prawns?|crabs?|crabmeat|lobsters?|crayfish)\b/i,
    butNot: ['seafood-seasoning'],
  },
  { allergen: 'molluscs', word: /\b(?:mussels?|clams?|squid|calamari|octopus|scallops?)\b/i, butNot: ['veal-cutlet'] },
  {
    allergen: 'fish',
    word: /\b(?:anchov(?:y|ies)|tuna|salmon|sardines?|mackerel|haddock|trout|bonito)\b/i,
    butNot: [],
  },
  { allergen: 'soya', word: /\b(?:tofu|tempeh|miso|soy sauce|soya?|edamame|margarine)\b/i, butNot: ['vegetable-oil'] },
  {
    allergen: 'gluten',
    word: /\b(?:barley|rye|couscous|bulgur|semolina|malt vinegar|beer)\b/i,
    butNot: ['whiskey', 'ginger-ale'],
  },
  { allergen: 'sulphite', word: /\b(?:red wine|white wine|sherry|vermouth|marsala|dried apricots?)\b/i, butNot: [] },
];

test.for(saying)('a food whose name says $word lists $allergen', ({ allergen, word, butNot }) => {
  const named = [...foods.values()].filter(({ names }) =>
    Object.values(names).some((list) => list.some(({ one }) => word.test(one))),
  );
  expect(named.length).toBeGreaterThan(0);
  const silent = named.filter(({ allergens }) => !allergens.includes(allergen)).map(({ id }) => id);
  expect(silent.filter((id) => !butNot.includes(id))).toEqual([]);
});

// What shops sell under the name is made with it, though the name does not say so.
const madeWith: readonly [food: string, allergen: string][] = [
  ['suet', 'gluten'],
  ['mincemeat', 'gluten'],
  ['mincemeat', 'sulphite'],
  ['mixed-dried-fruit', 'sulphite'],
  ['rice-wine', 'gluten'],
  ['bottled-lemon-juice', 'sulphite'],
  ['pancake-mix', 'egg'],
  ['tagliatelle', 'egg'],
  ['cornichon', 'mustard'],
  ['chicken-stock-cube', 'gluten'],
  ['chicken-bouillon-cube', 'gluten'],
  ['beef-stock-powder', 'gluten'],
  ['worcestershire-sauce', 'fish'],
  ['hummus', 'sesame'],
  ['lupin-beans', 'lupin'],
  ['furikake', 'sesame'],
  ['furikake', 'gluten'],
  ['lap-cheong', 'gluten'],
  ['ponzu', 'fish'],
  ['farro', 'gluten'],
  ['freekeh', 'gluten'],
  ['seitan', 'gluten'],
  ['lemon-curd', 'egg'],
  ['quail-egg', 'egg'],
  ['shrimp-paste', 'crustaceans'],
];

test.for(madeWith)('%s lists %s', ([food, allergen]) => {
  expect(foods.get(food)?.allergens).toContain(allergen);
});

test('a composed food lists what its contents bring', () => {
  const composed = [...foods.values()].filter(({ contains }) => contains.length > 0);
  expect(composed.length).toBeGreaterThan(5);
  const silent = composed.flatMap((food) =>
    [...allergensOf(food, foods)].filter((each) => !food.allergens.includes(each)).map((each) => `${food.id}: ${each}`),
  );
  expect(silent).toEqual([]);
});
