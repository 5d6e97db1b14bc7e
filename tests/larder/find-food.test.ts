import { findFood, findFoodIn, findFoodOfLine, readLine, translateName } from '@retare/core';
import { builtInLarder, extendLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { leastGrowth } from '../growth.ts';

const larder = builtInLarder();
const { foods } = larder;
const idOf = (words: string, kitchen = 'us') => findFood(words, foods, kitchen)?.id ?? null;
const ofLine = (text: string, kitchen = 'us') => findFoodOfLine(readLine(text), foods, kitchen);

describe('words that change the food', () => {
  test.for([
    ['brown sugar', 'light-brown-sugar'],
    ['baking powder', 'baking-powder'],
    ['coconut milk', 'coconut-milk'],
    ['butter beans', 'butter-beans'],
    ['peanut butter', 'peanut-butter'],
    ['cream cheese', 'cream-cheese'],
    ['cream of tartar', 'cream-of-tartar'],
    ['lemon juice', 'lemon-juice'],
    ['rice vinegar', 'rice-vinegar'],
    ['vegan cream cheese', null],
    ['almond cheese', null],
    ['chocolate mint biscuits', null],
    ['mango and avocado salsa', null],
    ['banana leaves', 'banana-leaf'],
    ['chicken skin', null],
    ['ham bone', null],
    ['wild garlic', 'wild-garlic'],
    ['Spanish rice', null],
    ['cheesy sauce', null],
    ['cream and goat cheese', null],
    ['whole coriander', 'coriander-seed'],
    ['light cream cheese', null],
    ['white whole wheat flour', 'wholemeal-flour'],
    ['custard apple', null],
    ['Harbour Bell butter', null],
    ['Harbour Bell Cream Cheese', null],
    ['cream of celery', null],
    ['grape leaves', 'grape-leaf'],
    ['chili crisp', 'chilli-crisp'],
    ['sugar free syrup', null],
    ['chicken powder', null],
    ['mini eggs', null],
    ['20% cream', null],
    ['toasted mustard', null],
    ['dried apples', null],
  ] as const)('%s is %s, and not one of its words', ([words, id]) => {
    expect(idOf(words)).toBe(id);
  });
});

describe('other ways of writing a food', () => {
  test.for([
    ['tomatoes', 'tomato', 'a plural'],
    ['freshly grated nutmeg', 'nutmeg', 'words that change nothing'],
    ['whole raw chicken', 'whole-chicken', 'such a word in the middle'],
    ['jalepeno', 'jalapeno', 'a letter that is wrong'],
    ['poatoes', 'potato', 'a letter that is missing'],
    ['parsely', 'parsley', 'letters that changed places'],
    ['brocolli', 'broccoli', 'other letters doubled'],
    ['potatoe', 'potato', 'a letter too many, though the plural is as near'],
    ['fresh whole milk', 'whole-milk', 'what tells more stays longer'],
    ['fresh Italian sausages', 'italian-sausage', 'what tells more stays longer'],
    ['fresh baby corn', 'baby-corn', 'what tells more stays longer'],
    ['dried whole chiles de arbol', 'dried-red-chilli', 'what is only sold dried'],
    ['swiss or rainbow chard', 'swiss-chard', 'a head word that two share'],
    ['wheat or rye flour', 'plain-flour', 'a head word that two share'],
    ['breast of chicken', 'chicken-breast', 'a name turned about'],
    ['fusilli pasta', 'fusilli', 'the word for its kind'],
    ['crème fraîche', 'creme-fraiche', 'accents'],
    ['tinned chickpeas', 'chickpeas', 'tinned for canned'],
    ['bellpepper', 'sweet-pepper', 'two words in one'],
    ['butter milk', 'buttermilk', 'one word in two'],
    ['peeled and crushed ginger', 'ginger', 'words that change nothing, and what joins them'],
    ['ripe but firm avocados', 'avocado', 'words that change nothing, and what joins them'],
    ['coarse fresh breadcrumbs', 'fresh-breadcrumbs', 'how fine it is'],
    ['minced beef, lean', 'ground-beef', 'the longest name, from whichever end'],
    ['Spanish avocado', 'avocado', 'where a fruit was grown'],
    ['full-fat yogurt', 'yogurt', 'the usual one'],
    ['pre-shelled peanuts', 'peanut', 'what was done before'],
    ["slice o' lime", 'lime', 'a short `of`'],
    ['lemon and lime juice', 'lemon-juice', 'a product of both'],
    ['Harbour Gold apples', 'apple', 'a variety that no name has'],
    ['sweeet potatoes', 'sweet-potato', 'a slip rather than a variety'],
    ['Harbour Bell kosher salt', 'kosher-salt', 'a name of its maker'],
    ['cinnamon powder', 'ground-cinnamon', 'another word for ground'],
    ['powdered mustard', 'mustard-powder', 'another word for ground'],
    ['dry pinto beans', 'dried-pinto-beans', 'another word for dried'],
    ['dry white rice', 'long-grain-rice', 'as it keeps'],
    ['90% lean ground beef', 'ground-beef', 'a share'],
    ['toasted pecans', 'pecan', 'what stays what it is'],
  ] as const)('%s is %s: %s', ([words, id]) => {
    expect(idOf(words)).toBe(id);
  });

  test.for(['rub', 'quorn', 'gravel', 'moon', '', '/', 'or', 'of', 'or or', 'the'])('`%s` is no food', (words) => {
    expect(idOf(words)).toBe(null);
  });

  test('every name of the larder means its own food', () => {
    const others = [...foods.values()].flatMap((food) =>
      Object.entries(food.names).flatMap(([kitchen, names]) =>
        names
          .flatMap(({ one, many }) => [one, many])
          .filter((name) => idOf(name, kitchen === 'any' ? 'us' : kitchen) !== food.id)
          .map((name) => `${name}: ${idOf(name, kitchen)}`),
      ),
    );
    expect(others).toEqual([]);
  });

  test('a name means another food in another kitchen', () => {
    expect([idOf('coriander', 'us'), idOf('coriander', 'uk')]).toEqual(['ground-coriander', 'coriander-leaf']);
  });

  test('the stretch of the words that names it is told', () => {
    expect(findFoodIn('2 very crisp radishes', foods, 'us')).toBe(null);
    expect(findFoodIn('very crisp radishes', foods, 'us')).toMatchObject({ start: 11, end: 19 });
  });

  test('a food of the site is found beside those of the larder', () => {
    const sold = { any: { loose: true, source: 'our market' } };
    const keeps = { where: 'fridge', freezes: false, least: 20, source: 'our kitchen' } as const;
    const ours = extendLarder(larder, {
      foods: { 'sea-beet': { names: { any: ['sea beet'] }, role: 'bulk', keeps, sold } },
    });
    expect(findFood('fresh sea beet', ours.foods, 'us')?.id).toBe('sea-beet');
    expect(findFood('butter beans', ours.foods, 'us')?.id).toBe('butter-beans');
  });

  test.for([
    ['very ', 40_000],
    ['x or ', 8000],
  ] as const)('`%s` %i times is read in linear time', ([words, times]) => {
    const texts = [words.repeat(times / 4), words.repeat(times)];
    expect(texts.map((text) => idOf(text))).toEqual([null, null]);
    // Four times as long, and sixteen times if it were quadratic.
    expect(leastGrowth((text) => idOf(text), texts, { runs: 2, goodEnough: 8 })).toBeLessThanOrEqual(8);
  });
});

describe('the food of a line', () => {
  test.for([
    ['400 g tin chopped tomatoes', 'diced-tomatoes', 'in a tin'],
    ['4 chopped tomatoes', 'tomato', 'not in a tin'],
    ['1 (4 oz) can green chiles', 'green-chiles-tinned', 'in a can'],
    ['1 chicken stock', 'chicken-bouillon-cube', 'counted, so a cube'],
    ['1 glass of milk', 'milk', 'where the glass is counted'],
    ['1 chicken', 'whole-chicken', 'counted, so whole'],
    ['1 lb chicken', 'chicken-meat', 'weighed'],
    ['1 tsp chicken bouillon', 'chicken-stock-powder', 'by the spoon, so powder'],
    ['2 cups chicken bouillon', 'chicken-stock', 'by the cup'],
    ['Salt and pepper to taste', 'table-salt', 'the first of two without an amount'],
  ] as const)('%s is %s: %s', ([text, id]) => {
    expect(ofLine(text)?.food.id).toBe(id);
  });

  test('its name stands in the line, whatever was added to find it', () => {
    expect(ofLine('1 (14 oz) can whole tomatoes, drained')?.name.text).toBe('whole tomatoes');
    expect(ofLine('1 chicken stock')?.name.text).toBe('chicken stock');
  });
});

describe('the name in another kitchen', () => {
  const courgette = foods.get('courgette');
  const shown = (written: string, howMany: 'one' | 'many' | 'uncounted') =>
    courgette && translateName(courgette, written, 'uk', howMany);

  test('has the number of the line, where the written word shows none', () => {
    expect([shown('zucchini', 'one'), shown('zucchini', 'many')]).toEqual(['courgette', 'courgettes']);
  });

  test('has the number of the written word, where that shows one', () => {
    expect(shown('zucchinis', 'uncounted')).toBe('courgettes');
  });

  test('keeps a capital', () => {
    expect(shown('Zucchini', 'many')).toBe('Courgettes');
  });

  test('is none where the written word is understood', () => {
    expect(shown('courgette', 'one')).toBe(null);
  });
});

describe('a measure that says which food is meant', () => {
  test.for([
    ['1 small bunch of coriander', 'coriander-leaf'],
    ['1 tsp coriander', 'ground-coriander'],
    ['1 cinnamon stick', 'cinnamon-stick'],
    ['1 tsp cinnamon', 'ground-cinnamon'],
    ['6 sheets of gelatin', 'leaf-gelatine'],
    ['2 sticks of butter', 'butter'],
    ['a handful of pasta', 'pasta'],
  ] as const)('`%s` is %s', ([line, id]) => {
    expect(ofLine(line)?.food.id).toBe(id);
  });
});

describe('a cup of what is sold in cans', () => {
  test.for([
    ['us', '½ cup diced tomatoes', 'tomato'],
    ['us', '2 tbsp diced tomatoes', 'tomato'],
    ['us', '1 cup canned diced tomatoes', 'diced-tomatoes'],
    ['us', '1 cup diced tomatoes, undrained', 'diced-tomatoes'],
    ['us', '1 cup diced tomatoes with their juice', 'diced-tomatoes'],
    ['us', '1 cup fire-roasted diced tomatoes', 'diced-tomatoes'],
    ['us', '1 (14.5-oz) can diced tomatoes', 'diced-tomatoes'],
    ['us', '16 oz diced tomatoes', 'diced-tomatoes'],
    ['us', '1 cup crushed tomatoes', 'crushed-tomatoes'],
    ['uk', '1 x 125g ball mozzarella', 'fresh-mozzarella'],
    ['uk', '1 x 142g tin tomato puree', 'tomato-paste'],
    ['us', '1 (15-oz) can tomato puree', 'passata'],
    ['eu', '1 sachet vanilla pudding powder', 'custard-powder'],
  ] as const)('in %s, %s is %s', ([kitchen, line, id]) => {
    expect(ofLine(line, kitchen)?.food.id).toBe(id);
  });
});
