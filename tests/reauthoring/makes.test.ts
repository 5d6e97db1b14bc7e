import { describe, expect, test } from 'vitest';
import { leastGrowth } from '../growth.ts';
import { reauthoredOf } from './reauthored.js';
import { panOf, recipeOf } from './recipe-of.js';
import { kitchenIds, setting } from './setting.js';

/** What a recipe makes in another kitchen: at batch factor 1, or at that of tins that are used whole. */
function makesIn(makes: string, from: string, to: string, lines: readonly string[] = ['1 tsp vanilla extract']) {
  const result = reauthoredOf({ ...recipeOf({ kitchen: from, lines }), makes }, to, setting);
  return { makes: result.makes, factor: result.version.batchFactor.toFixed(4) };
}

/** Two 15-oz cans are 850 g; an EU cook opens two tins of 400 g. */
const beans = ['2 (15-oz) cans butter beans', '1 lb onions'];
/** A tin of 400 g; a US cook opens 15 oz, 425 g. */
const tin = ['400 g tin butter beans', '200 g onions'];

describe('a yield that is told in a kitchen’s own measures', () => {
  // A US cup is 236.6 ml, a quart 946.4; the Canadian, Australian and New Zealand cup 250. Jugs are marked every 10 ml up to 300, every 25
  // up to 600, every 50 up to 2 litres. A pound is 453.6 g, an inch 2.54 cm.
  test.for([
    { from: 'us', makes: '3 cups', to: 'uk', becomes: 'about 700 ml', by: '710 ml' },
    { from: 'us', makes: '3 cups', to: 'eu', becomes: 'about 700 ml', by: '710 ml' },
    { from: 'us', makes: '3 cups', to: 'au', becomes: 'about 2¾ cups', by: '2.84 cups' },
    { from: 'us', makes: '3 cups', to: 'nz', becomes: 'about 2¾ cups', by: '2.84 cups' },
    { from: 'us', makes: '3 cups', to: 'ca', becomes: 'about 2¾ cups', by: '2.84 cups' },
    { from: 'us', makes: '1½ cups', to: 'uk', becomes: 'about 350 ml', by: '354.9 ml, and no half is left behind' },
    { from: 'us', makes: 'about 1 1/2 cups', to: 'uk', becomes: 'about 350 ml', by: 'said once' },
    { from: 'us', makes: '2–3 cups', to: 'ca', becomes: 'about 475–700 ml', by: 'both ends on one jug' },
    { from: 'us', makes: '1 quart', to: 'uk', becomes: 'about 950 ml', by: '946 ml' },
    { from: 'us', makes: '6 quarts', to: 'eu', becomes: 'about 5.75 l', by: '5.68 litres' },
    { from: 'us', makes: '3 tbsp', to: 'uk', becomes: '3 tbsp', by: '14.8 ml and 15 are one spoon to a cook' },
    { from: 'us', makes: '3 tbsp', to: 'au', becomes: 'about 2 tbsp', by: '44 ml, in spoons of 20' },
    { from: 'uk', makes: '600 ml', to: 'us', becomes: 'about 2½ cups', by: '2.54 cups' },
    { from: 'uk', makes: '600 ml', to: 'eu', becomes: '600 ml', by: 'the same there' },
    { from: 'uk', makes: '1 pint', to: 'us', becomes: 'about 2⅓ cups', by: 'an imperial pint, 568 ml, is 2.4 cups' },
    { from: 'uk', makes: 'about 500 g', to: 'us', becomes: 'about 18 oz', by: '17.6 oz' },
    { from: 'uk', makes: '1 kg granola', to: 'us', becomes: 'about 2¼ lb granola', by: '2.2 lb' },
    { from: 'uk', makes: 'about 500 g', to: 'ca', becomes: 'about 500 g', by: 'the same there' },
    { from: 'us', makes: '2½ lb', to: 'eu', becomes: 'about 1.15 kg', by: '1134 g' },
    { from: 'us', makes: '2½ lb', to: 'ca', becomes: '2½ lb', by: 'pounds are read there' },
    { from: 'us', makes: '2 lb loaf', to: 'uk', becomes: '900 g loaf', by: '907 g' },
    { from: 'us', makes: '24 2-inch cookies', to: 'uk', becomes: '24 5-cm cookies', by: '5.08 cm, and no 245' },
    { from: 'eu', makes: '8 10-cm tartlets', to: 'us', becomes: '8 4-in tartlets', by: '3.94 in' },
    { from: 'us', makes: '24 2-inch cookies', to: 'ca', becomes: '24 2-inch cookies', by: 'inches are read there' },
    { from: 'us', makes: 'one 9×13-inch cake', to: 'au', becomes: 'one 23 × 33 cm cake', by: '22.9 by 33.0 cm' },
    { from: 'uk', makes: 'A 20 cm round cake', to: 'us', becomes: 'An 8 in round cake', by: '7.9 in' },
    { from: 'us', makes: 'enough for a 9-inch tart', to: 'nz', becomes: 'enough for a 23 cm tart', by: '22.9 cm' },
    { from: 'us', makes: '8 servings (3 cups)', to: 'uk', becomes: '8 servings (about 700 ml)', by: 'the whole of it' },
    { from: 'uk', makes: '8 bowls of 300 ml', to: 'us', becomes: '8 bowls of 1¼ cups', by: '1.27 cups each' },
    { from: 'us', makes: '3 (8-oz) jars', to: 'eu', becomes: '3 (225 g) jars', by: '226.8 g each' },
    { from: 'uk', makes: '12 × 100 g rolls', to: 'us', becomes: '12 × 3½ oz rolls', by: '3.53 oz each' },
    { from: 'us', makes: '12 bars; they keep 5 days', to: 'uk', becomes: '12 bars; they keep 5 days', by: 'no size' },
    { from: 'eu', makes: '1 quart', to: 'uk', becomes: '1 quart', by: 'no EU kitchen says how large its quart is' },
  ])('$makes from $from is $becomes in $to: $by', ({ from, makes, to, becomes }) => {
    expect(makesIn(makes, from, to)).toEqual({ makes: becomes, factor: '1.0000' });
  });

  test.for(kitchenIds.filter((id) => !id.startsWith('us')))(
    'holds what the dish comes to within a twentieth, in %s',
    (id) => {
      const { units } = setting.kitchens.get(id) ?? {};
      for (const cups of [1, 1.5, 2, 3, 4, 5, 7, 10]) {
        const said = makesIn(`${cups} cups`, 'us', id).makes ?? '';
        const [, whole = '0', fraction = '', unit = ''] = /^about ([\d.]*)([¼⅓½⅔¾]?) (cups?|ml|l)$/u.exec(said) ?? [];
        const parts: Record<string, number> = { '¼': 1 / 4, '⅓': 1 / 3, '½': 1 / 2, '⅔': 2 / 3, '¾': 3 / 4 };
        const each = unit === 'ml' ? 1 : unit === 'l' ? 1000 : (units?.cup?.toNumber() ?? Number.NaN);
        const millilitres = (Number(whole) + (parts[fraction] ?? 0)) * each;
        expect(Math.abs(millilitres / (cups * 236.588) - 1), `${cups} cups: ${said}`).toBeLessThanOrEqual(0.05);
      }
    },
  );
});

describe('a yield of another batch', () => {
  test.for([
    { makes: '3 cups', becomes: 'about 650 ml', by: '667.7 ml' },
    { makes: '8 servings (about 3 cups)', becomes: 'about 7 servings (about 650 ml)', by: '7.5 of them' },
    { makes: '8 bowls of 1 cup', becomes: 'about 7 bowls of 240 ml', by: 'each is as large as before' },
    { makes: '24 2-inch cookies', becomes: 'about 22 5-cm cookies', by: '22.6, and as large as before' },
    { makes: '4 dozen cookies', becomes: 'about 45 cookies', by: '45.1, and not three dozen' },
    { makes: 'one and a half dozen', becomes: 'about 16', by: '16.9' },
    { makes: '24 × 2-inch squares', becomes: 'about 22 × 5 cm squares', by: '22.6, and as large as before' },
    { makes: '4 × 8 inch bake', becomes: '10 × 20 cm bake, a little smaller', by: 'the sides of one' },
    { makes: 'a dozen muffins', becomes: 'about 11 muffins', by: '11.3' },
    { makes: '2 loaves', becomes: '2 loaves, each a little smaller', by: 'and not one' },
    { makes: '2 lb loaf', becomes: '900 g loaf, a little smaller', by: 'of that tin' },
    { makes: '1 loaf (16 slices)', becomes: '1 loaf, a little smaller (about 15 slices)', by: '15.05 slices' },
    {
      makes: 'two 9-inch cakes, 16 slices',
      becomes: 'two 23 cm cakes, each a little smaller, about 15 slices',
      by: '15.05',
    },
    { makes: '6 cakes', becomes: 'about 5 cakes', by: '5.6: so many are pieces' },
    { makes: 'Serves 4 to 6', becomes: 'Serves about 3–5', by: '3.8 to 5.6' },
    { makes: '12 bars; they keep 5 days', becomes: 'about 11 bars; they keep 5 days', by: 'a day is no piece' },
    { makes: null, becomes: null, by: 'nothing is said' },
  ])('that is 0.9406 of $makes is $becomes in the EU: $by', ({ makes, becomes }) => {
    const result = reauthoredOf({ ...recipeOf({ kitchen: 'us', lines: beans }), makes }, 'eu', setting, {
      anchor: 'butter beans',
    });
    expect([result.version.batchFactor.toFixed(4), result.makes]).toEqual(['0.9406', becomes]);
  });

  test.for([
    { makes: '600 ml', becomes: 'about 2⅔ cups', by: '637.9 ml are 2.7 cups' },
    { makes: '1 kg', becomes: 'about 38 oz', by: '1063 g are 37.5 oz; 2¼ lb are 4 % less' },
    { makes: '6 people', becomes: 'about 6 people', by: '6.4' },
    { makes: 'a 23 cm pie', becomes: 'a 9 in pie, a little larger', by: '6.3 % more' },
  ])('that is 1.0631 of $makes is $becomes in the US: $by', ({ makes, becomes }) => {
    const result = reauthoredOf({ ...recipeOf({ kitchen: 'uk', lines: tin }), makes }, 'us', setting, {
      anchor: 'butter beans',
    });
    expect([result.version.batchFactor.toFixed(4), result.makes]).toEqual(['1.0631', becomes]);
  });
});

test('a cake is as large as the pan that was chosen for it', () => {
  const lines = ['200 g plain flour', '200 g sugar', '200 g butter', '4 eggs'];
  const post = { kitchen: 'us', lines, mentions: [panOf('10-inch round')], prose: 'Bake in a 10-inch round pan.' };
  const result = reauthoredOf({ ...recipeOf(post), makes: 'one 10-inch cake' }, 'eu', setting);
  expect(result.pans.map(({ version }) => version)).toEqual(['26 cm']);
  expect(result.makes).toMatch(/^one 26 cm cake/);
});

// Two large eggs of the US are as much as 1.95 of an Australian 700 g carton: a batch of 0.97, and nobody cuts one piece less of it.
test.for<[makes: string, becomes: string]>([
  ['24 biscuits', 'about 24 biscuits'],
  ['serves 8', 'serves about 8'],
])('%s stay as many in a batch that is a little smaller', ([makes, becomes]) => {
  const lines = ['2 eggs', '250 g plain flour', '150 g caster sugar', '125 g butter'];
  const result = reauthoredOf({ ...recipeOf({ kitchen: 'au', lines }), makes }, 'us', setting, { anchor: 'eggs' });
  expect(result.version.batchFactor.toNumber()).toBeCloseTo(0.972, 3);
  expect(result.makes).toBe(becomes);
});

test('a long text of numbers is read in linear time', () => {
  const textOf = (times: number): string => '3 cups (2 loaves of 9-inch, about 4 dozen) '.repeat(times);
  const texts = [textOf(400), textOf(3200)];
  // Eight times as long; a quadratic reading would take sixty-four times.
  const most = 24;
  expect(leastGrowth((text) => makesIn(text, 'us', 'uk'), texts, { runs: 3, goodEnough: most })).toBeLessThanOrEqual(
    most,
  );
});
