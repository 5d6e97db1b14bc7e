import { Exact, findFood, nameIn, type Setting, translateName } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { converted, lineOf, recipeOf, textOf, versionOf } from './recipe-of.js';
import { foodOf, larderOf, soldAs } from './sample-food.js';
import { setting } from './setting.js';

const { foods } = setting;

describe('a food is found by its whole name', () => {
  // Names of the trade: common practice, no source. The trap is the food that a part of the name would give.
  test.for([
    { words: 'butter beans', is: 'butter-beans', trap: 'butter' },
    { words: 'butter lettuce', is: 'butterhead-lettuce', trap: 'butter' },
    { words: 'peanut butter', is: 'peanut-butter', trap: 'butter' },
    { words: 'buttermilk', is: 'buttermilk', trap: 'milk' },
    { words: 'coconut milk', is: 'coconut-milk', trap: 'milk' },
    { words: 'almond milk', is: 'almond-milk', trap: 'milk' },
    { words: 'evaporated milk', is: 'evaporated-milk', trap: 'milk' },
    { words: 'condensed milk', is: 'condensed-milk', trap: 'milk' },
    { words: 'milk chocolate', is: 'milk-chocolate', trap: 'milk' },
    { words: 'milk powder', is: 'milk-powder', trap: 'milk' },
    { words: 'baking powder', is: 'baking-powder', trap: 'baking-soda' },
    { words: 'custard powder', is: 'custard-powder', trap: 'baking-powder' },
    { words: 'garlic powder', is: 'garlic-powder', trap: 'garlic' },
    { words: 'cream of tartar', is: 'cream-of-tartar', trap: 'heavy-cream' },
    { words: 'cream cheese', is: 'cream-cheese', trap: 'heavy-cream' },
    { words: 'sour cream', is: 'sour-cream', trap: 'heavy-cream' },
    { words: 'coconut cream', is: 'coconut-cream', trap: 'heavy-cream' },
    { words: 'rice vinegar', is: 'rice-vinegar', trap: 'long-grain-rice' },
    { words: 'rice flour', is: 'rice-flour', trap: 'plain-flour' },
    { words: 'coconut flour', is: 'coconut-flour', trap: 'plain-flour' },
    { words: 'egg noodles', is: 'egg-noodles', trap: 'egg' },
    { words: 'egg white', is: 'egg-white', trap: 'egg' },
    { words: 'eggplant', is: 'aubergine', trap: 'egg' },
    { words: 'orange juice', is: 'orange-juice', trap: 'orange' },
    { words: 'lemon zest', is: 'lemon-zest', trap: 'lemon' },
    { words: 'tomato paste', is: 'tomato-paste', trap: 'tomato' },
    { words: 'sun-dried tomatoes', is: 'sun-dried-tomato', trap: 'tomato' },
    { words: 'salt pork', is: 'salt-pork', trap: 'table-salt' },
    { words: 'salt cod', is: 'salt-cod', trap: 'table-salt' },
    { words: 'pink curing salt', is: 'curing-salt', trap: 'table-salt' },
    { words: 'celery seed', is: 'celery-seed', trap: 'celery' },
    { words: 'ground ginger', is: 'ground-ginger', trap: 'ginger' },
    { words: 'apple cider vinegar', is: 'cider-vinegar', trap: 'apple' },
    { words: 'chicken stock', is: 'chicken-stock', trap: 'chicken-meat' },
    { words: 'oyster sauce', is: 'oyster-sauce', trap: 'oyster' },
    { words: 'sugar snap peas', is: 'sugar-snap-peas', trap: 'granulated-sugar' },
    { words: 'rose water', is: 'rose-water', trap: 'water' },
    { words: 'water chestnuts', is: 'water-chestnut', trap: 'water' },
    { words: 'sweet potato', is: 'sweet-potato', trap: 'potato' },
    { words: 'potato starch', is: 'potato-starch', trap: 'potato' },
    { words: 'apple butter', is: 'apple-butter', trap: 'butter' },
    { words: 'butterscotch chips', is: 'butterscotch-chips', trap: 'semisweet-chocolate-chips' },
    { words: 'almond extract', is: 'almond-extract', trap: 'almond' },
  ])('$words are $is, never $trap', ({ words, is, trap }) => {
    expect(foods.has(trap)).toBe(true);
    expect(['us', 'uk', 'au'].map((id) => findFood(words, foods, id)?.id)).toEqual([is, is, is]);
  });

  test.for(['pear butter', 'cocoa butter', 'cinnamon chips', 'peanut butter cups', 'flibber', ''])(
    '`%s` is no food of the larder, rather than a wrong one',
    (words) => {
      expect(findFood(words, foods, 'us')).toBeNull();
    },
  );

  test.for([
    ['Fresh Cilantro', 'coriander-leaf'],
    ['large carrots', 'carrot'],
    ['boneless, skinless chicken breasts', 'chicken-breast'],
    ['tomatoes', 'tomato'],
    ['ALL-PURPOSE FLOUR', 'plain-flour'],
    ['tomato purée', 'passata'],
  ] as const)('`%s` is %s: words that make no other food of it are left out', ([words, is]) => {
    expect(findFood(words, foods, 'us')?.id).toBe(is);
  });

  test('in the language of its kitchen: coriander is a seed in the US and a leaf in the UK', () => {
    expect(['us', 'uk'].map((id) => findFood('coriander', foods, id)?.id)).toEqual([
      'ground-coriander',
      'coriander-leaf',
    ]);
  });

  test('in the language of its kitchen: tomato purée is thin in the US and a paste in the UK', () => {
    expect(['us', 'uk'].map((id) => findFood('tomato puree', foods, id)?.id)).toEqual(['passata', 'tomato-paste']);
  });

  const one = (name: string) => [{ one: name, many: name }];
  const any = { any: soldAs([]) };
  const starch = foodOf(any, { id: 'starch', names: { us: one('cornstarch'), uk: one('cornflour') } });
  const meal = foodOf(any, { id: 'meal', names: { us: one('cornflour'), uk: one('maize meal') } });
  const made = larderOf(starch, meal).foods;

  test('cornflour is another food in a US kitchen than in a UK one, where both have one', () => {
    expect(['us', 'uk'].map((id) => findFood('cornflour', made, id)?.id)).toEqual(['meal', 'starch']);
  });

  test('where two kitchens mean two foods, a third is not told which', () => {
    expect([findFood('cornflour', made, 'au'), findFood('cornstarch', made, 'au')?.id]).toEqual([null, 'starch']);
  });
});

describe('the name of a food in another kitchen', () => {
  test.for([
    { from: 'us', line: '1 bunch cilantro, chopped', to: 'uk', becomes: '1 bunch fresh coriander, chopped' },
    { from: 'us', line: '2 zucchini', to: 'uk', becomes: '2 courgettes' },
    { from: 'us', line: '1 zucchini', to: 'uk', becomes: '1 courgette' },
    { from: 'uk', line: '2 aubergines, diced', to: 'us', becomes: '2 eggplants, diced' },
    { from: 'us', line: '4 scallions, thinly sliced', to: 'uk', becomes: '4 spring onions, thinly sliced' },
    { from: 'uk', line: '1 swede', to: 'us', becomes: '1 rutabaga' },
    { from: 'us', line: '2 carrots', to: 'uk', becomes: '2 carrots' },
    { from: 'uk', line: '2 tsp cornflour', to: 'us', becomes: '2 tsp cornstarch' },
    { from: 'us', line: 'salt and pepper, to taste', to: 'uk', becomes: 'salt and pepper, to taste' },
  ])('$line from $from reads $becomes in $to', ({ from, line, to, becomes }) => {
    expect(textOf(converted(line, from, to))).toBe(becomes);
  });

  const nut = foodOf(
    { any: soldAs([]) },
    {
      id: 'gloop-nut',
      names: {
        us: [{ one: 'gloop nut', many: 'gloop nuts' }],
        uk: [{ one: 'glop', many: 'glops' }],
        any: [{ one: 'glob', many: 'globs' }],
      },
      pieces: [{ unit: 'count', size: null, grams: new Exact(5), source: 'made up for a test' }],
    },
  );

  test.for([
    ['gloop nut', 'uk', 'glop'],
    ['Gloop Nuts', 'uk', 'Glops'],
    ['glob', 'uk', null],
    ['glops', 'us', 'gloop nuts'],
    ['glops', 'au', 'globs'],
    ['nutty gloop', 'uk', null],
  ] as const)('`%s` in the %s kitchen is put as %s', ([written, id, expected]) => {
    expect(translateName(nut, written, id)).toBe(expected);
  });

  test.for([
    ['us', 'gloop nut'],
    ['au', 'glob'],
  ] as const)('to show in the %s kitchen is %s', ([id, one]) => {
    expect(nameIn(nut, id).one).toBe(one);
  });

  test('is its id in plain words where it has none', () => {
    expect(nameIn(foodOf({}, { id: 'odd-food', names: {} }), 'uk').one).toBe('odd food');
  });
});

describe('the method’s word in brackets', () => {
  const post = (prose: string) => ({ kitchen: 'us', lines: ['1 bunch cilantro'], prose });
  const inUk = (prose: string): string =>
    versionOf(post(prose), 'uk').parts.flatMap(({ lines }) => lines.map(textOf))[0] ?? '';

  test.for([
    ['Chop the cilantro.', '1 bunch fresh coriander (cilantro)'],
    ['CILANTRO goes in last.', '1 bunch fresh coriander (cilantro)'],
    ['Chop the herbs.', '1 bunch fresh coriander'],
    ['Use supercilantro.', '1 bunch fresh coriander'],
    ['', '1 bunch fresh coriander'],
  ] as const)('for the method `%s`: %s', ([prose, line]) => {
    expect(inUk(prose)).toBe(line);
  });

  test('is not needed where that kitchen has a method of its own', () => {
    const own = { ...post('Chop the cilantro.'), methodVersions: [{ kitchen: 'uk', mentions: [] }] };
    expect(versionOf(own, 'uk').parts.flatMap(({ lines }) => lines.map(textOf))).toEqual(['1 bunch fresh coriander']);
  });

  test('is not needed in the native kitchen', () => {
    expect(versionOf(post('Chop the cilantro.'), 'us').parts.flatMap(({ lines }) => lines.map(textOf))).toEqual([
      '1 bunch cilantro',
    ]);
  });
});

test.for([
  ['2 cups all-purpose flour, sifted', 'all-purpose flour'],
  ['1 bunch fresh cilantro', 'fresh cilantro'],
  ['4 boneless chicken thighs', 'boneless chicken thighs'],
] as const)('the words of `%s` that name its food hold %s', ([line, words]) => {
  expect(words).toContain(lineOf(line, 'us').name?.text);
});

describe('a name beside another number of pieces', () => {
  const pack = (grams: number) => soldAs([{ size: grams, whole: 'yes' }]);
  const within = (us: number, uk: number): Setting => {
    const { foods } = larderOf(foodOf({ us: pack(us), uk: pack(uk) }));
    return { ...setting, foods: new Map([...setting.foods, ...foods]) };
  };
  const inUk = (lines: readonly string[], larder: Setting): string[] => {
    const result = reauthoredOf(recipeOf({ kitchen: 'us', lines }, larder), 'uk', larder, { anchor: 'gloop' });
    return result.version.parts.flatMap((part) => part.lines.map(textOf));
  };

  test.for([
    ['1 eggplant', 100, 200, '2 aubergines'],
    ['1 carrot, diced', 100, 150, '1½ carrots, diced'],
  ] as const)('has its own number: %s, for packs of %d g there and %d g here, are %s', ([line, us, uk, becomes]) => {
    expect(inUk([line, `1 (${us}-g) tin gloop`], within(us, uk))[0]).toBe(becomes);
  });
});
