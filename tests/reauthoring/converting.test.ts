import { describe, expect, test } from 'vitest';
import { converted, rulesOf, textOf, versionOf } from './recipe-of.js';
import { soldAs } from './sample-food.js';
import { setting } from './setting.js';

interface Worked {
  from: string;
  line: string;
  to: string;
  becomes: string;
  /** The sum by hand, and where its density comes from. */
  by: string;
}

const cup = '1 US cup is 236.588 ml (NIST SP 430)';
const flour = 'flour 125 g a US cup (USDA SR26 20081, cup)';
const practice = 'common practice, no source';

const byDensity: Worked[] = [
  { from: 'us', line: '1 cup flour', to: 'uk', becomes: '125 g flour', by: flour },
  { from: 'us', line: '1 cup flour', to: 'eu', becomes: '125 g flour', by: flour },
  { from: 'us', line: '1 cup flour', to: 'au', becomes: '125 g flour', by: flour },
  { from: 'uk', line: '500 g plain flour', to: 'us', becomes: '4 cups all-purpose flour', by: `500 / 125; ${flour}` },
  {
    from: 'uk',
    line: '500 g plain flour',
    to: 'ca',
    becomes: '3¾ cups all-purpose flour',
    by: `a 250 ml cup holds 132.1 g, so 3.79 cups; ${flour}`,
  },
  {
    from: 'au',
    line: '1 cup plain flour',
    to: 'uk',
    becomes: '130 g plain flour',
    by: `250 ml weigh 132.1 g, scale marks every 5 g; ${flour}`,
  },
  {
    from: 'uk',
    line: '250 g caster sugar',
    to: 'us',
    becomes: '1¼ cups superfine sugar',
    by: '200 g a cup (USDA SR26 19335, cup), so 1.25 cups',
  },
  {
    from: 'us',
    line: '1 cup packed light brown sugar',
    to: 'uk',
    becomes: '220 g light soft brown sugar',
    by: 'USDA SR26 19334, cup packed',
  },
  {
    from: 'us',
    line: '1 cup grated parmesan',
    to: 'uk',
    becomes: '100 g grated parmesan',
    by: 'USDA SR26 01032, cup',
  },
  { from: 'uk', line: '12 g salt', to: 'us', becomes: '2 tsp salt', by: '6 g a teaspoon (USDA SR26 02047, tsp)' },
];

const byVolume: Worked[] = [
  { from: 'us', line: '2 tbsp olive oil', to: 'uk', becomes: '2 tbsp olive oil', by: '29.57 ml against 30 ml' },
  { from: 'us', line: '2 tbsp olive oil', to: 'au', becomes: '1½ tbsp olive oil', by: '29.57 ml against 1.5 × 20 ml' },
  { from: 'au', line: '2 tbsp olive oil', to: 'uk', becomes: '40 ml olive oil', by: 'a jug mark; 2½ tbsp is 37.5 ml' },
  {
    from: 'us',
    line: '1 cup heavy cream',
    to: 'uk',
    becomes: '240 ml double cream',
    by: `jug marks every 10 ml; ${cup}`,
  },
  {
    from: 'uk',
    line: '340 ml water',
    to: 'us',
    becomes: '1¼ cups + 3 tbsp water',
    by: '295.74 + 44.36 = 340.10 ml; 1⅓ cups are 7 % under, 1½ cups 4 % over',
  },
  { from: 'uk', line: '340 ml water', to: 'ca', becomes: '350 ml water', by: 'a jug mark 3 % over, and no two tools' },
  { from: 'eu', line: '340 ml water', to: 'au', becomes: '350 ml water', by: 'jug marks every 25 ml from 300' },
  { from: 'eu', line: '2 dl milk', to: 'uk', becomes: '200 ml milk', by: '1 dl is 100 ml' },
  { from: 'eu', line: '1 l water', to: 'ca', becomes: '4 cups water', by: '4 × 250 ml' },
  { from: 'uk', line: '2 tsp cornflour', to: 'us', becomes: '2 tsp cornstarch', by: '10 ml against 9.86 ml' },
  { from: 'us', line: '1 quart chicken stock', to: 'uk', becomes: '950 ml chicken stock', by: '946.35 ml' },
];

const butter: Worked[] = [
  {
    from: 'us',
    line: '1 stick butter, softened',
    to: 'uk',
    becomes: '115 g butter, softened',
    by: '113 g (USDA SR26 01001, stick); scale marks every 5 g',
  },
  {
    from: 'us',
    line: '2 sticks butter',
    to: 'ca',
    becomes: '1 cup butter',
    by: '226 g, sixteen tablespoons of the wrapper',
  },
  { from: 'us', line: '½ cup butter', to: 'uk', becomes: '115 g butter', by: 'eight wrapper marks of 14.175 g' },
  {
    from: 'uk',
    line: '225 g butter',
    to: 'us',
    becomes: '1 (8-oz) box butter',
    by: '226.8 g: the shop has weighed it',
  },
  { from: 'uk', line: '100 g butter', to: 'us', becomes: '7 tbsp butter', by: 'seven wrapper marks are 99.2 g' },
  { from: 'uk', line: '250 g butter', to: 'ca', becomes: '1 (250-g) block butter', by: `the block; ${practice}` },
];

const byPack: Worked[] = [
  {
    from: 'uk',
    line: '1 × 400 g tin chickpeas',
    to: 'us',
    becomes: '1 (15-oz) can chickpeas',
    by: '425 g for 400: 6.3 %, within the tenth',
  },
  {
    from: 'uk',
    line: '2 × 400 g tins butter beans, drained',
    to: 'us',
    becomes: '2 (15-oz) cans butter beans, drained',
    by: 'drained 2 × 255 for 2 × 235 g: 8.5 %, within the tenth',
  },
  {
    from: 'us',
    line: '2 (15-oz) cans butter beans, drained',
    to: 'eu',
    becomes: '2 × 400 g tins butter beans, drained',
    by: 'drained 2 × 240 for 2 × 255 g: 5.9 %',
  },
  {
    from: 'us',
    line: '1 (13.5-oz) can coconut milk',
    to: 'uk',
    becomes: '1 × 400 ml tin coconut milk',
    by: '399.2 ml',
  },
  { from: 'au', line: '500 g beef mince', to: 'uk', becomes: '1 × 500 g pack beef mince', by: practice },
];

const byCounter: Worked[] = [
  {
    from: 'us',
    line: '2 pounds potatoes',
    to: 'uk',
    becomes: '900 g potatoes',
    by: '907 g; the counter weighs by 50 g',
  },
  { from: 'uk', line: '500 g minced beef', to: 'us', becomes: '1 lb ground beef', by: '1.10 lb; by quarter pounds' },
  { from: 'uk', line: '450 g floury potatoes', to: 'us', becomes: '1 lb russet potatoes', by: '0.992 lb' },
  { from: 'uk', line: '1.5 kg potatoes', to: 'us', becomes: '3¼ lb potatoes', by: '3.31 lb; by quarter pounds' },
];

const unchanged: Worked[] = [
  { from: 'us', line: '2 cloves garlic, crushed', to: 'uk', becomes: '2 cloves garlic, crushed', by: 'pieces' },
  { from: 'us', line: '1 bay leaf', to: 'au', becomes: '1 bay leaf', by: 'pieces' },
  { from: 'us', line: '1 pinch salt', to: 'eu', becomes: '1 pinch salt', by: 'a gesture' },
  { from: 'us', line: '1 tsp curing salt', to: 'uk', becomes: '1 tsp curing salt', by: 'a cure is never touched' },
  { from: 'us', line: '4 oz pink salt', to: 'uk', becomes: '4 oz pink salt', by: 'a cure is never touched' },
  { from: 'us', line: 'salt, to taste', to: 'uk', becomes: 'salt, to taste', by: 'no amount' },
];

const ranges: Worked[] = [
  { from: 'uk', line: '3–4 tbsp plain flour', to: 'eu', becomes: '3–4 tbsp plain flour', by: 'the same spoons' },
  { from: 'us', line: '3–4 tbsp flour', to: 'ca', becomes: '3–4 tbsp flour', by: 'spoons 1.4 % larger, and no scale' },
  { from: 'uk', line: '4–5 tbsp milk', to: 'eu', becomes: '4–5 tbsp milk', by: 'the same spoons' },
  { from: 'uk', line: '3–4 tbsp plain flour', to: 'us', becomes: '3–4 tbsp all-purpose flour', by: 'four are ¼ cup' },
  { from: 'us', line: '1 tsp–1 tbsp honey', to: 'ca', becomes: '1 tsp–1 tbsp honey', by: 'in words' },
  { from: 'us', line: '1–3 tsp honey', to: 'ca', becomes: '1–3 tsp honey', by: 'three are 1 tbsp' },
  { from: 'us', line: '3–4 tbsp milk', to: 'uk', becomes: '40–60 ml milk', by: '44.4 to 59.1 ml on jug marks' },
  { from: 'us', line: '3–4 tbsp milk', to: 'au', becomes: '2–3 tbsp milk', by: '2.22 to 2.96 spoons of 20 ml' },
  { from: 'us', line: '2–3 cups milk', to: 'eu', becomes: '475–700 ml milk', by: '473.2 to 709.8 ml on jug marks' },
  { from: 'us', line: '2–4 tbsp olive oil', to: 'uk', becomes: '30–60 ml olive oil', by: 'no cook counts four spoons' },
  { from: 'us', line: '1–2 lb ground beef', to: 'ca', becomes: '450–900 g ground beef', by: 'counter steps of 50 g' },
  { from: 'us', line: '1-2 sticks butter', to: 'ca', becomes: '½–1 cup butter', by: 'eight and sixteen wrapper marks' },
  {
    from: 'us',
    line: '2–3 (15-oz) cans butter beans',
    to: 'uk',
    becomes: '2–3 × 400 g tins butter beans',
    by: 'both ends in tins: 5.9 % each',
  },
  { from: 'us', line: '4–5 large eggs', to: 'uk', becomes: '4–5 medium eggs', by: 'both ends of one size: 2.3 % each' },
  {
    from: 'us',
    line: '1–2 tbsp kosher salt',
    to: 'uk',
    becomes: '1½–2¾ tsp fine sea salt',
    by: '8.4 and 16.8 g (GNU Units 3.15) at 6 g a teaspoon (USDA SR26 02047, tsp)',
  },
  {
    from: 'us',
    line: 'about 1 cup milk',
    to: 'uk',
    becomes: 'about 240 ml milk',
    by: 'a writer who is not sure stays so',
  },
];

/** Heaped spoons count two level ones, rounded ones one and a half, scant ones nine tenths: common practice, no source. */
const filled: Worked[] = [
  {
    from: 'uk',
    line: '2 heaped tbsp cocoa powder',
    to: 'eu',
    becomes: '2 heaped tbsp cocoa powder',
    by: 'the same spoon',
  },
  {
    from: 'us',
    line: '2 heaping tablespoons cocoa powder',
    to: 'uk',
    becomes: '2 heaping tablespoons cocoa powder',
    by: 'a spoon 1.4 % larger',
  },
  {
    from: 'uk',
    line: '1 heaped tbsp olive oil',
    to: 'au',
    becomes: '1½ tbsp olive oil',
    by: '30 ml in spoons of 20 ml',
  },
  { from: 'au', line: '1 heaped tbsp olive oil', to: 'uk', becomes: '40 ml olive oil', by: 'two spoons of 20 ml' },
  { from: 'us', line: '1 scant cup milk', to: 'uk', becomes: '210 ml milk', by: '0.9 × 236.6 ml' },
  { from: 'uk', line: '1 level tbsp olive oil', to: 'au', becomes: '3 tsp olive oil', by: '15 ml' },
];

/** Another food behind an `or` is measured as itself: 237 ml a US cup (NIST), 0.5 cups are 118 ml. */
const instead: Worked[] = [
  { from: 'us', line: '1 cup butter or ¾ cup oil', to: 'uk', becomes: '225 g butter or 180 ml oil', by: 'oil pours' },
  {
    from: 'us',
    line: '1 cup milk or ½ cup flimflam',
    to: 'uk',
    becomes: '240 ml milk or 120 ml flimflam',
    by: 'unknown',
  },
  {
    from: 'us',
    line: '1 cup sugar, plus 1 cup',
    to: 'uk',
    becomes: '200 g granulated sugar, plus 200 g',
    by: 'the line’s own',
  },
];

const tables = { instead, filled, byDensity, byVolume, butter, byPack, byCounter, unchanged, ranges };

describe.for(Object.entries(tables))('a line converted (%s)', ([, rows]) => {
  test.for(rows)('$line from $from reads $becomes in $to: $by', ({ from, line, to, becomes }) => {
    expect(textOf(converted(line, from, to))).toBe(becomes);
  });
});

test('a 400 g tin of chopped tomatoes is a 14½ oz can: 411 g, 2.8 % more', () => {
  const line = converted('1 × 400 g tin chopped tomatoes', 'uk', 'us');
  expect(textOf(line)).toMatch(/^1 \(14½-oz\) can /);
  expect(line.drift?.times(100).toDecimalPlaces(1).toString()).toBe('2.8');
});

describe('a second statement', () => {
  const post = {
    kitchen: 'us',
    lines: ['1 cup (140 g) all-purpose flour', '2 cups all-purpose flour', '1 tbsp flour'],
  };
  const lines = (kitchen: string) => versionOf(post, kitchen).parts.flatMap((part) => part.lines.map(textOf));

  test('sets the density of its food for the whole recipe', () => {
    // 2 × 140 g, where USDA's cup would give 250 g.
    expect(lines('uk').slice(0, 2)).toEqual(['140 g plain flour', '280 g plain flour']);
  });

  test('falls away with the amount that it restates', () => {
    expect(lines('uk')[0]).not.toContain('cup');
  });

  test.for(['1 cup flour (140 g)', '1 cup flour, 140 g'])('falls away behind the food as well: `%s`', (line) => {
    expect(textOf(converted(line, 'us', 'uk'))).toBe('140 g flour');
  });

  test('says nothing of another food', () => {
    const mixed = versionOf({ kitchen: 'us', lines: ['1 cup (140 g) flour', '1 cup sugar'] }, 'uk');
    // Granulated sugar: USDA SR26 19335, cup.
    expect(mixed.parts[0]?.lines.map(textOf)[1]).toBe('200 g granulated sugar');
  });

  test('of a range gives no density', () => {
    expect(textOf(converted('1–2 cups (140–280 g) flour', 'us', 'uk'))).toBe('125–250 g flour');
  });
});

describe('a food that the larder does not know', () => {
  test.for([
    { line: '1 cup flibber', to: 'uk', becomes: '240 ml flibber' },
    { line: '2 tbsp flibber', to: 'au', becomes: '1½ tbsp flibber' },
    { line: '2 lb flibber', to: 'uk', becomes: '900 g flibber' },
  ])('keeps its kind of unit: $line reads $becomes in $to', ({ line, to, becomes }) => {
    const version = converted(line, 'us', to);
    expect([textOf(version), rulesOf(version)]).toEqual([becomes, ['unknown-food']]);
  });
});

describe('kosher salt', () => {
  test('without grams is taken as the lighter grain, and says so', () => {
    const line = converted('1½ tsp kosher salt', 'us', 'ca');
    // 2.8 g a teaspoon against 4.8 (GNU Units 3.15): 4.2 g.
    expect(line.native.grams?.toDecimalPlaces(2).toString()).toBe('4.2');
    expect([rulesOf(line), line.notes]).toEqual([['which-salt'], [{ kind: 'lighter-kosher' }]]);
  });

  test('with grams is taken by them, and there is nothing to ask', () => {
    const line = converted('1½ tsp (7 g) kosher salt', 'us', 'ca');
    expect([rulesOf(line), line.notes]).toEqual([[], []]);
  });
});

describe('a preserve', () => {
  const lines = ['4 cups blackberries', '3 cups sugar', '2 tbsp lemon juice'];

  test.for(['ca', 'uk', 'eu', 'au'])('reads as it was written in the %s kitchen', (to) => {
    const version = versionOf({ kitchen: 'us', lines, preserve: true }, to);
    const read = version.parts.flatMap((part) => part.lines.map(textOf));
    expect([read, version.cautions]).toEqual([lines, [{ kind: 'preserve' }]]);
  });
});

describe('a little of what is sold in far larger packs', () => {
  // As if its shops had the blocks, of which no spoon is known.
  const yeast = setting.foods.get('fresh-yeast');
  if (yeast === undefined) throw new RangeError('There is no fresh yeast.');
  const blocks = {
    us: soldAs([{ size: 2, unit: 'oz', word: 'block', grams: 56.69904625 }]),
    ca: soldAs([{ size: 56, word: 'block' }]),
  };
  const foods = new Map(setting.foods).set(yeast.id, { ...yeast, sold: { ...yeast.sold, ...blocks } });

  test.for([
    // 10 g are 0.353 oz: three eighths are 10.6 g, the whole block would be five times the yeast.
    ['10 g fresh yeast', 'us', '⅜ oz fresh yeast'],
    ['10 g fresh yeast', 'ca', '10 g fresh yeast'],
    ['50 g fresh yeast', 'us', '1 (2-oz) block fresh yeast'],
  ] as const)('%s in the %s kitchen reads %s, never a whole pack of several times as much', ([text, to, expected]) => {
    const line = converted(text, 'uk', to, { ...setting, foods });
    expect(textOf(line)).toBe(expected);
    if (!expected.startsWith('1 (')) expect(rulesOf(line)).toContain('unmeasurable no-tool');
  });
});

test.for<[line: string, to: string, expected: string]>([
  // A third of 20 g are 6.6 g of dried yeast: an envelope is 7.1 g, and a teaspoon 3.15 g.
  ['20 g fresh yeast', 'us', '1 (¼-oz) envelope instant yeast'],
  ['20 g fresh yeast', 'ca', '2 tsp instant yeast'],
])('%s is dried yeast in the %s kitchen, whose groceries have no other', ([text, to, expected]) => {
  expect(textOf(converted(text, 'eu', to))).toBe(expected);
});

test('a pack that is another food instead is named with its size', () => {
  const text = textOf(converted('500 g spaghetti or 400 g spaghetti', 'uk', 'us'));
  expect(text).toMatch(/ or 1 \(16-oz\) box spaghetti$/u);
});
