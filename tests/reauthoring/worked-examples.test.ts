import {
  Exact,
  type Food,
  gramsIn,
  isMassUnit,
  type Kitchen,
  millilitresIn,
  type Reauthored,
  type Setting,
  type UnitId,
} from '@retare/core';
import { describe, expect, test } from 'vitest';
import { type Row, readCsv } from '../reference/read-csv.js';
import { reauthoredOf } from './reauthored.js';
import { mentionIn, ovenOf, type Post, panOf, recipeOf, textOf } from './recipe-of.js';
import { kitchen, setting } from './setting.js';

// Rows of published worked examples, copied with their sources; `a` times `factor` is `b`.
const table = readCsv('worked-examples.csv');
const ofKind = (kind: string): Row[] => table.filter((row) => row.kind === kind);
const practice = 'common practice, no source';

/** `2.5 cup + 2 tbsp` in millilitres or grams. */
function sizeOf(words: string, { units }: Kitchen): Exact {
  return words.split(' + ').reduce((sum, term) => {
    const [number = '', unit = ''] = term.split(' ');
    const [over = '', under = '1'] = number.split('/');
    const each = isMassUnit(unit as UnitId) ? gramsIn(unit as 'g') : millilitresIn(unit as 'cup', units);
    if (each === null) throw new RangeError(`no such unit: ${unit}`);
    return sum.plus(new Exact(over).dividedBy(under).times(each));
  }, new Exact(0));
}

function reauthored(post: Post, to: string, options: { anchor?: string } = {}, within: Setting = setting): Reauthored {
  return reauthoredOf(recipeOf(post, within), to, within, options);
}

const linesOf = ({ version }: Reauthored): string[] => version.parts.flatMap((part) => part.lines.map(textOf));

describe('published sums', () => {
  test.for([...ofKind('scaled volume'), ...ofKind('scaled weight')])(
    '$a times $factor is $b: $source',
    ({ a = '', b = '', factor = '' }) => {
      const us = kitchen('us');
      expect(sizeOf(a, us).times(factor).minus(sizeOf(b, us)).abs().lt('1e-30')).toBe(true);
    },
  );

  test.for(ofKind('anchor'))('$given is $expected: $source', () => {
    const result = reauthored(bread, 'bakery', { anchor: 'last milk' }, bakery);
    expect(result.infeasible).toBeNull();
    // 600 g of flour ask for 60 g of milk.
    expect(result.version.batchFactor.toFixed(4)).toBe('0.8333');
    const grams = result.version.parts[0]?.lines.map(({ chosen }) => chosen.grams?.toString());
    expect(grams).toEqual(['375', '100', '25', '250', '50', '5', '10']);
  });

  // Baker's percentages are what the guarded ratios hold: they are read off a version's report.
  test.for(ofKind('percentage'))('$given is $expected: $source', ({ a = '', b = '' }) => {
    const [flour = '', water = '', yeast, salt] = a.split(' ');
    const lines = [`${flour} g bread flour`, `${water} g water`];
    if (yeast !== undefined) lines.push(`${yeast} g instant yeast`, `${salt} g fine salt`);
    const { ratios } = reauthored({ kitchen: 'eu', lines }, 'uk');
    const whole = a.split(' ').reduce((sum, each) => sum + Number(each), 0);
    const share = (name: string): number => 100 * (ratios.find((ratio) => ratio.name === name)?.native ?? Number.NaN);
    const wanted = b.split(' ').map(Number);
    expect(share('water : flour')).toBeCloseTo(wanted[0] ?? 0, 9);
    if (yeast === undefined) return;
    expect(share('instant yeast : flour')).toBeCloseTo(wanted[1] ?? 0, 9);
    expect((share('salt : whole') * whole) / Number(flour)).toBeCloseTo(wanted[2] ?? 0, 9);
  });
});

const bread: Post = {
  kitchen: 'bakery-recipe',
  lines: [
    '450 g bread flour',
    '120 g wholemeal flour',
    '30 g rye flour',
    '300 g water',
    '60 g last milk',
    '6 g instant yeast',
    '12 g fine salt',
  ],
};

/** The baker's own kitchen, with a fine scale and one bottle of milk left. */
const bakery: Setting = withBakery();

function withBakery(): Setting {
  const scale = { unit: 'g' as const, marks: [{ from: new Exact(1), to: new Exact(2000), step: new Exact(1) }] };
  const own: Kitchen = { ...kitchen('uk'), id: 'bakery', scale, measures: { pours: ['scale'], dry: ['scale'] } };
  const from: Kitchen = { ...own, id: 'bakery-recipe' };
  const milk = setting.foods.get('milk');
  if (milk === undefined) throw new RangeError('There is no milk.');
  const bottle = { size: new Exact(50), unit: 'g' as const, word: 'bottle', grams: new Exact(50) };
  const last: Food = {
    ...milk,
    id: 'last-milk',
    names: { any: [{ one: 'last milk', many: 'last milk' }] },
    sold: {
      any: {
        sold: true,
        packs: [{ ...bottle, drainedGrams: null, whole: 'yes', usual: false, marks: null }],
        loose: false,
        singly: false,
        tap: false,
        standIns: [],
        source: 'what is left',
      },
    },
  };
  const yeast = setting.foods.get('instant-yeast');
  const loose: Food[] = yeast === undefined ? [] : [{ ...yeast, sold: {} }];
  const foods = new Map([...setting.foods, ...[last, ...loose].map((food) => [food.id, food] as const)]);
  return { ...setting, foods, kitchens: new Map([...setting.kitchens, [own.id, own], [from.id, from]]) };
}

describe('facts of the trade', () => {
  // Whole tins for whole tins; the sizes are those of cans.csv in tests/reference: common practice, no source.
  test.for([
    { line: '2 (14½-oz) cans diced tomatoes', to: 'uk', becomes: '2 × 400 g tins', factor: '0.9731' },
    { line: '1 (28-oz) can diced tomatoes', to: 'uk', becomes: '2 × 400 g tins', factor: '1.0078' },
    { line: '1 (28-oz) can diced tomatoes', to: 'au', becomes: '1 × 800 g can', factor: '1.0078' },
    { line: '2 (14½-oz) cans diced tomatoes', to: 'ca', becomes: '1 (796-ml) can', factor: '0.9682' },
  ])('$line anchored is $becomes in $to, a batch of $factor', ({ line, to, becomes, factor }) => {
    const result = reauthored({ kitchen: 'us', lines: [line, '1 lb onions'] }, to, { anchor: 'diced tomatoes' });
    expect(linesOf(result)[0]?.startsWith(becomes)).toBe(true);
    expect(result.version.batchFactor.toFixed(4)).toBe(factor);
  });

  test(`a 1 lb box of pasta is a 500 g pack and a batch of 1.10: ${practice}`, () => {
    const result = reauthored({ kitchen: 'us', lines: ['1 lb spaghetti', '2 cups water'] }, 'uk', {
      anchor: 'spaghetti',
    });
    expect(linesOf(result)[0]).toBe('1 × 500 g packet spaghetti');
    expect(result.version.batchFactor.toFixed(4)).toBe('1.1023');
  });

  test(`a US quart of stock is two 500 ml cartons: ${practice}`, () => {
    const result = reauthored({ kitchen: 'us', lines: ['1 quart chicken stock'] }, 'uk', { anchor: 'chicken stock' });
    expect(linesOf(result)[0]).toMatch(/^(?:2 × 500 ml \w+|1 l) chicken stock$/);
    expect(result.version.batchFactor.toFixed(3)).toBe('1.057');
  });

  test(`350 °F is 180 °C: ${practice}`, () => {
    expect(mentionIn(ovenOf('350°F'), 'us', 'eu').text).toBe('180°C/160°C fan');
  });

  // us: NIST SP 811 (2008), B.8; others: common practice, no source.
  test.for([
    { id: 'us', ml: '14.79' },
    { id: 'uk', ml: '15' },
    { id: 'eu', ml: '15' },
    { id: 'ca', ml: '15' },
    { id: 'au', ml: '20' },
  ])('a tablespoon in $id holds $ml ml', ({ id, ml }) => {
    expect(millilitresIn('tbsp', kitchen(id).units)?.toDecimalPlaces(2).toString()).toBe(ml);
  });

  test('four Australian tablespoons of 20 ml are never taken for four of 15', () => {
    const { version } = reauthored({ kitchen: 'au', lines: ['2 tbsp olive oil'] }, 'uk');
    expect(version.parts[0]?.lines.map(textOf)).toEqual(['40 ml olive oil']);
  });

  // 20 ml are a tablespoon of 15 and a teaspoon of 5, 45 ml two of 20 and a teaspoon: nobody counts out 3¾ tsp, or weighs 11 g of flour.
  test.for<[native: string, line: string, kitchen: string, becomes: string]>([
    ['au', '1 tbsp plain flour', 'uk', '1 tbsp + 1 tsp plain flour'],
    ['au', '1 tbsp cornflour', 'us', '1 tbsp + 1 tsp cornstarch'],
    ['au', '1 tbsp tahini', 'us', '1 tbsp + 1 tsp tahini'],
    ['uk', '3 tbsp elderflower cordial', 'au', '2 tbsp + 1 tsp elderflower cordial'],
    ['uk', '2 tbsp plain flour', 'au', '1½ tbsp plain flour'],
    ['uk', '1 tbsp soy sauce', 'au', '3 tsp soy sauce'],
  ])('from %s %s is in %s %s', ([native, line, kitchen, becomes]) => {
    const { version } = reauthored({ kitchen: native, lines: [line] }, kitchen);
    expect(version.parts[0]?.lines.map(textOf)).toEqual([becomes]);
  });

  // A sum of spoons names the larger one, and that is not the same everywhere; no cup is there where jugs are.
  test.for<[native: string, line: string, kitchen: string, becomes: string]>([
    ['uk', '1 tbsp + 1 tsp cornflour', 'au', '1 tbsp cornflour'],
    ['us', '1 tablespoon plus 1 teaspoon cornstarch', 'au', '1 tbsp cornflour'],
    ['us', '1 tablespoon plus 1 teaspoon cornstarch', 'uk', '1 tablespoon plus 1 teaspoon cornflour'],
    ['us', '¼ cup plus 1 tablespoon soy sauce', 'uk', '70 ml soy sauce'],
    ['au', '1 tbsp + ½ tsp sesame oil', 'uk', '1½ tbsp sesame oil'],
  ])('the sum %s %s is in %s %s', ([native, line, kitchen, becomes]) => {
    const { version } = reauthored({ kitchen: native, lines: [line] }, kitchen);
    expect(version.parts[0]?.lines.map(textOf)).toEqual([becomes]);
  });
});

describe('pans and yield', () => {
  const cake = (pan: string): Post => ({
    kitchen: 'us',
    lines: ['4 eggs', '1 cup sugar'],
    mentions: [panOf(pan)],
    prose: `Pour into a ${pan} pan and bake.`,
  });

  // Base areas by geometry: 9 × 13 in is 754.8 cm², 23 × 33 cm 759 cm²; an 8 in round 324.3 cm², 20 cm 314.2 cm².
  test.for([
    { pan: '9×13 in', to: 'uk', version: '23 × 33 cm', depth: (9 * 13 * 2.54 ** 2) / 759 - 1 },
    { pan: '8-inch round', to: 'uk', version: '20 cm', depth: (8 * 2.54) ** 2 / 400 - 1 },
    { pan: '9-inch round', to: 'au', version: '23 cm', depth: (9 * 2.54) ** 2 / 529 - 1 },
    { pan: 'two 8-inch round', to: 'uk', version: '20 cm', depth: (8 * 2.54) ** 2 / 400 - 1 },
  ])('$pan is $version in $to, and the batter as deep', ({ pan, to, version, depth }) => {
    const result = reauthored(cake(pan), to);
    const [report] = result.pans;
    expect(report?.version).toBe(version);
    expect(report?.changed).toBeNull();
    expect(report?.depthDrift).toBeCloseTo((1 + depth) * result.version.batchFactor.toNumber() - 1, 9);
  });

  test('a rim too low to hold the batch is passed over, though its base is the same', () => {
    const { pans } = reauthored({ ...cake('9 x 13 x 2 inch'), kitchen: 'ca' }, 'us');
    expect(pans[0]?.version).toBe('9 × 13 in');
    expect(pans[0]?.caution).toBe(false);
  });

  test.for([
    { makes: 'Serves 6', factor: '0.9406', becomes: 'Serves about 5' },
    { makes: '12 muffins', factor: '0.9406', becomes: 'about 11 muffins' },
    { makes: '4–6 servings', factor: '0.9406', becomes: 'about 3–5 servings' },
    { makes: 'one 9-inch pie', factor: '0.9406', becomes: 'one 23 cm pie, a little smaller' },
    { makes: '1 loaf', factor: '0.9406', becomes: '1 loaf, a little smaller' },
  ])('$makes becomes $becomes at a batch of $factor', ({ makes, factor, becomes }) => {
    const post = { kitchen: 'us', lines: ['2 (15-oz) cans butter beans', '1 lb onions'] };
    const result = reauthoredOf({ ...recipeOf(post), makes }, 'eu', setting, { anchor: 'butter beans' });
    expect(result.version.batchFactor.toFixed(4)).toBe(factor);
    expect(result.makes).toBe(becomes);
  });
});

test('what nobody sees on a plate takes no serving away', () => {
  // 14 oz are 396.9 g, and an Australian can 395 g: 3.98 of four servings.
  const post = { kitchen: 'us', lines: ['1 (14-oz) can sweetened condensed milk', '1 lb butter'] };
  const result = reauthoredOf({ ...recipeOf(post), makes: 'Serves 4' }, 'au', setting, {
    anchor: 'sweetened condensed milk',
  });
  expect([result.version.batchFactor.toFixed(4), result.makes]).toEqual(['0.9952', 'Serves about 4']);
});

test.for([
  ['0.9406', '6 squares', 'about 5 squares'],
  ['0.9406', '24 squares', 'about 22 squares'],
  ['0.9406', '17 rolls', 'about 16 rolls'],
] as const)('but no part of a piece that is seen counts as a whole: at %s %s are %s', ([factor, makes, becomes]) => {
  // 17 × 0.9406 are 15.99, and 24 × 0.9406 are 22.57.
  const post = { kitchen: 'us', lines: ['2 (15-oz) cans butter beans', '1 lb onions'] };
  const result = reauthoredOf({ ...recipeOf(post), makes }, 'eu', setting, { anchor: 'butter beans' });
  expect([result.version.batchFactor.toFixed(4), result.makes]).toEqual([factor, becomes]);
});

test('every copied example names its source', () => {
  expect(table.length).toBeGreaterThan(20);
  expect(table.filter(({ source }) => source === '')).toEqual([]);
});
