import { type Food, findFoodOfLine, readLine } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';

const { foods, kitchens } = builtInLarder();
const idOf = (line: string, kitchen: string): string | null => {
  const units = kitchens.get(kitchen)?.units ?? {};
  return findFoodOfLine(readLine(line, { kitchen: units }), foods, kitchen)?.food.id ?? null;
};

describe('a word that means other foods in other kitchens', () => {
  test.for([
    ['1 cup cider', 'us', 'apple-cider'],
    ['1 cup cider', 'ca', 'apple-cider'],
    ['250 ml cider', 'uk', 'dry-cider'],
    ['250 ml cider', 'au', 'dry-cider'],
    ['1 cup hard cider', 'us', 'dry-cider'],
    ['1 cup corn flour', 'us', 'corn-flour'],
    ['100 g corn flour', 'uk', 'cornstarch'],
    ['100 g cornflour', 'nz', 'cornstarch'],
    ['2 cups self-raising flour', 'us', 'self-rising-flour'],
    ['200 g self-raising flour', 'nz', 'self-raising-flour'],
  ] as const)('%s in %s is %s', ([line, kitchen, id]) => {
    expect(idOf(line, kitchen)).toBe(id);
  });
});

describe('foods that are found', () => {
  test.for([
    ['1 cup toor dal', 'toor-dal'],
    ['1 cup split pigeon peas', 'toor-dal'],
    ['1 cup chana dal', 'chana-dal'],
    ['1 (4-oz) can sliced mushrooms', 'tinned-mushrooms'],
    ['1 cup sliced mushrooms', 'mushroom'],
    ['2 dashes aromatic bitters', 'aromatic-bitters'],
    ['2 fl oz cachaça', 'cachaca'],
    ['1 fl oz simple syrup', 'simple-syrup'],
    ['½ cup active sourdough starter', 'sourdough-starter'],
    ['100 g amaretti', 'amaretti'],
    ['2 tbsp crème de cassis', 'blackcurrant-liqueur'],
    ['2 cups dashi', 'dashi'],
    ['1 sachet vanilla sugar', 'vanilla-sugar'],
    ['1 (15-oz) can beets, drained', 'cooked-beetroot'],
    ['1 cup pickled beets', 'pickled-beetroot'],
    ['1 tbsp adobo sauce', 'chipotle-in-adobo'],
  ] as const)('%s: %s', ([line, id]) => {
    expect(idOf(line, 'us')).toBe(id);
  });
});

test('starter counts as the flour and the water that it is fed with, and holds gluten', () => {
  const starter = foods.get('sourdough-starter') as Food;
  expect(starter.contains.map(({ food, share }) => [food, share.toNumber()])).toEqual([
    ['bread-flour', 0.5],
    ['water', 0.5],
  ]);
  expect(starter.allergens).toEqual(['gluten']);
});

test('no source is an abbreviation that only its writer knows', () => {
  const sources = [...foods.values()].flatMap(({ densities, pieces }) =>
    [...densities, ...pieces].map(({ source }) => source),
  );
  expect(sources.filter((source) => /^[A-Z]:/.test(source))).toEqual([]);
});

describe('the butcher, the fishmonger and the corners of the pantry', () => {
  test.for([
    ['1 whole rabbit, jointed', 'rabbit'],
    ['4 duck legs', 'duck-leg'],
    ['1 (10-lb) goose', 'goose'],
    ['1 lb ground venison', 'ground-venison'],
    ['1 lb octopus, cleaned', 'octopus'],
    ['2 lb live crawfish', 'crayfish'],
    ['1 lb crawfish tails', 'crayfish-tails'],
    ['8 fresh sardines', 'fresh-sardine'],
    ['1 (3.75-oz) can sardines', 'sardine'],
    ['2 fresh mackerel', 'mackerel'],
    ['12 fresh anchovies', 'fresh-anchovy'],
    ['2 oz anchovies', 'anchovy'],
    ['1 cup pearled farro', 'farro'],
    ['1 cup cracked freekeh', 'freekeh'],
    ['1 cup adzuki beans', 'adzuki-beans'],
    ['1 head escarole', 'escarole'],
    ['8 oz raclette, sliced', 'raclette'],
    ['1 (14-oz) can hearts of palm', 'hearts-of-palm'],
    ['1 (14.5-oz) can green beans', 'tinned-green-beans'],
    ['1 (18.3-oz) box brownie mix', 'brownie-mix'],
    ['1 (8.5-oz) box corn muffin mix', 'cornbread-mix'],
    ['1 cup pigeon peas', 'toor-dal'],
    ['2 tbsp goose fat', 'duck-fat'],
    ['8 oz head cheese', 'head-cheese'],
  ] as const)('%s: %s', ([line, id]) => {
    expect(idOf(line, 'us')).toBe(id);
  });

  test.for(['1 cup octopus salad', '1 cup farro flour', '1 cup guava nectar', '2 cups duck stock', '7 oz bone marrow'])(
    '%s is none of them',
    (line) => {
      expect(idOf(line, 'us')).toBeNull();
    },
  );
});
