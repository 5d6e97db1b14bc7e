import { type Reauthored, reauthor } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { type Post, panOf, recipeOf, rulesOf, textOf } from './recipe-of.js';
import { setting } from './setting.js';

function worked(post: Post, to: string, anchor?: string): Reauthored {
  return reauthoredOf(recipeOf(post), to, setting, anchor === undefined ? {} : { anchor });
}

const linesOf = ({ version }: Reauthored): string[] => version.parts.flatMap((part) => part.lines.map(textOf));
const names = ({ ratios }: Reauthored): string[] => ratios.map(({ name }) => name);

describe('a batch', () => {
  test('stays as it is where nothing is used whole and the ratios hold', () => {
    const result = worked({ kitchen: 'us', lines: ['2 cups flour', '1 cup milk', '¼ cup sugar'] }, 'uk');
    expect(result.version.batchFactor.toString()).toBe('1');
    expect(result.anchor).toBeNull();
  });

  test('is that of the named anchor, and the free one is the runner-up where it costs less than half', () => {
    const post: Post = { kitchen: 'us', lines: ['2 (15-oz) cans butter beans', '1 lb smoked sausage', '3 cups water'] };
    const result = worked(post, 'eu', 'butter beans');
    expect(result.version.batchFactor.toFixed(4)).toBe('0.9406');
    expect(result.anchor).toBe('butter beans');
  });

  test('of a named anchor stays near the size of the dish, though a far one would use other packs up', () => {
    const tins = ['3 (15-oz) cans cannellini beans, drained', '1 (28-oz) can crushed tomatoes'];
    const dry = [
      '2 tbsp olive oil',
      '1 large onion, chopped',
      '3 cloves garlic',
      '1 tsp kosher salt',
      '½ cup grated Parmesan',
    ];
    const fresh = ['1 quart chicken broth', '1 lb Italian sausage', '1 cup half-and-half', '1 bunch kale'];
    // Five tins would use three tins of tomatoes up, and three halves of everything else.
    const result = worked({ kitchen: 'us', lines: [...tins, ...dry, ...fresh] }, 'uk', 'cannellini beans');
    expect(linesOf(result)[0]).toBe('3 × 400 g tins cannellini beans, drained');
  });

  test('is refused an anchor that no line names', () => {
    const result = reauthor(recipeOf({ kitchen: 'us', lines: ['2 cups flour'] }), 'uk', setting, { anchor: 'leeks' });
    expect(result).toEqual({ kind: 'unknown-anchor', anchor: 'leeks' });
  });

  test('never moves with a curing salt in it, and the cure stands as written', () => {
    const result = worked({ kitchen: 'us', lines: ['2 (15-oz) cans butter beans', '4 g pink curing salt'] }, 'uk');
    expect(result.version.batchFactor.toString()).toBe('1');
    expect(linesOf(result)[1]).toBe('4 g pink curing salt');
  });

  test('of a preserve is not drafted at all', () => {
    const result = reauthor(recipeOf({ kitchen: 'us', lines: ['4 cups sugar'], preserve: true }), 'uk', setting);
    expect(result).toEqual({ kind: 'preserve' });
  });
});

describe('a use-whole food', () => {
  test.for([
    { line: '2 (15-oz) cans butter beans', to: 'uk', becomes: '2 × 400 g tins butter beans' },
    { line: '5 eggs', to: 'au', becomes: /^\d+ eggs/ },
  ])('$line is whole in $to', ({ line, to, becomes }) => {
    const [text] = linesOf(worked({ kitchen: 'us', lines: [line, '3 cups water'] }, to));
    expect(text).toMatch(becomes);
  });

  test('that comes in no pack so small makes the recipe infeasible, and says which pack is nearest', () => {
    const result = worked({ kitchen: 'us', lines: ['⅓ cup canned black beans', '1 cup corn'] }, 'uk');
    expect(result.infeasible?.because[0]).toMatchObject({ kind: 'no-amount' });
    expect(result.infeasible?.leastChange.length).toBeGreaterThan(0);
    expect(linesOf(result)[0]).toMatch(/^1 × \d+ g tin/);
  });
});

describe('ranges, options and gestures', () => {
  test('a range is still one of about its width, on one unit', () => {
    const [text] = linesOf(worked({ kitchen: 'us', lines: ['2–3 cups milk'] }, 'uk'));
    const [, low = '', high = ''] = /^(\d+)–(\d+) ml milk$/.exec(text ?? '') ?? [];
    expect(Number(high) / Number(low)).toBeGreaterThan(1.4);
    expect(Number(high) / Number(low)).toBeLessThan(1.6);
  });

  // Tablespoons: US 14.79 ml (NIST), AU 20 ml, elsewhere 15 ml (common practice); 0.53 g plain flour a millilitre (USDA).
  test.for([
    ['us', '3–4 tbsp honey', 'au', /^\d+–\d+ g honey$/],
    ['us', '3–4 tbsp olive oil', 'au', '2–3 tbsp olive oil'],
    ['uk', '3–4 tbsp plain flour', 'us', '3–4 tbsp all-purpose flour'],
    ['uk', '3–4 tbsp plain flour', 'eu', '3–4 tbsp plain flour'],
    ['uk', '3–4 tbsp plain flour', 'au', '25–30 g plain flour'],
    ['us', '3–4 tbsp all-purpose flour', 'uk', '25–30 g plain flour'],
    ['uk', '100–150 ml milk', 'us', '½–⅔ cup milk'],
    ['us', '1½ to 2 cups all-purpose flour', 'uk', '190–250 g plain flour'],
    ['uk', '2-3 onions', 'us', '2-3 onions'],
    ['uk', '1-2 lemons', 'au', '1-2 lemons'],
    ['uk', '1–2 tsp ground cumin', 'au', '1–2 tsp ground cumin'],
    ['uk', '400–500 g carrots', 'eu', '400–500 g carrots'],
  ] as const)('in %s %s stay a range in %s: %s', ([from, line, to, becomes]) => {
    const [text] = linesOf(worked({ kitchen: from, lines: [line] }, to));
    if (typeof becomes === 'string') expect(text).toBe(becomes);
    else expect(text).toMatch(becomes);
  });

  test.for([
    ['uk', '1 rounded tsp mustard', 'eu', '1 rounded tsp mustard'],
    ['us', '1 rounded tsp mustard', 'au', '1 rounded tsp mustard'],
    ['uk', '1 heaped tbsp olive oil', 'au', '1½ tbsp olive oil'],
  ] as const)(
    'in %s %s in %s is %s: the word stays with the spoon, else level measures are counted',
    ([from, line, to, is]) => {
      expect(linesOf(worked({ kitchen: from, lines: [line] }, to))).toEqual([is]);
    },
  );

  test('what is served beside the dish is not drawn away from its size by other lines', () => {
    const result = worked({ kitchen: 'eu', lines: ['500 g carrots', '200 g butter, to serve'] }, 'uk');
    expect(linesOf(result)[1]).toBe('200 g butter, to serve');
  });

  test('an eighth of a teaspoon of a spice is a pinch', () => {
    const result = worked({ kitchen: 'us', lines: ['⅛ tsp cayenne pepper', '1 lb carrots'] }, 'uk');
    expect(linesOf(result)[0]).toMatch(/^1 pinch/);
  });
});

describe('guarded ratios', () => {
  const batter = ['2 cups flour', '1 cup milk', '¼ cup sugar', '1 cup heavy cream'];

  test('leave out what the method only whips and fills with', () => {
    const prose = 'Beat flour, milk and sugar. Whip the cream and fill the cake with it.';
    expect(names(worked({ kitchen: 'us', lines: batter, prose }, 'uk'))).not.toContain('heavy cream : flour');
  });

  test('hold what the method also stirs in', () => {
    const prose = 'Beat flour, milk, sugar and half the cream. Whip the cream and fill the cake with it.';
    expect(names(worked({ kitchen: 'us', lines: batter, prose }, 'uk'))).toContain('heavy cream : flour');
  });

  test('know cream from creaming', () => {
    const prose = 'Cream the butter. Beat flour, milk and sugar. Whip the cream and fill the cake with it.';
    expect(names(worked({ kitchen: 'us', lines: batter, prose }, 'uk'))).not.toContain('heavy cream : flour');
  });

  test('of flour hold only where flour is at least 15 % of the mass', () => {
    expect(names(worked({ kitchen: 'eu', lines: ['80 g flour', '920 ml milk'] }, 'uk'))).toEqual([]);
    expect(names(worked({ kitchen: 'eu', lines: ['200 g flour', '800 ml milk'] }, 'uk'))).toEqual(['milk : flour']);
  });

  test('count what is in self-raising flour, and merge what stands in for it', () => {
    const lines = ['200 g self-raising flour', '1 tsp baking powder', '100 ml milk'];
    const result = worked({ kitchen: 'uk', lines }, 'eu');
    expect(names(result)).toContain('baking powder : flour');
    const [flour = '', powder = ''] = linesOf(result);
    expect(flour).toMatch(/^190 g plain flour$/);
    // 10 g in the flour and a teaspoon of 4.6 g.
    expect(powder).toMatch(/^1[45] g baking powder|^1 × 15 g sachet baking powder/);
  });
});

describe('pans', () => {
  test('keep their number', () => {
    const post: Post = {
      kitchen: 'us',
      lines: ['2 cups flour', '1 cup milk'],
      mentions: [panOf('two 8-inch round')],
      prose: 'Divide between two 8-inch round pans and bake.',
    };
    const { pans, version } = worked(post, 'uk');
    expect(pans[0]).toMatchObject({ count: 2, changed: null, version: '20 cm' });
    expect(version.steps[0]?.mentions[0]?.text).toBe('two 20 cm round');
  });

  test('change their number, and say so, where with the same number the batter would stand a tenth deeper or shallower', () => {
    const post: Post = {
      kitchen: 'us',
      lines: ['2 cups flour', '1 cup milk'],
      mentions: [panOf('12 x 12 inch')],
      prose: 'Pour into a 12 x 12 inch pan and bake.',
    };
    const [pan] = worked(post, 'uk').pans;
    expect(pan?.changed).toEqual({ from: 1, because: 'depth' });
    expect(pan?.count).toBe(2);
  });

  test('bring a caution on time where the batter stays over a tenth deeper or shallower', () => {
    const post: Post = {
      kitchen: 'us',
      lines: ['2 cups flour', '1 cup milk'],
      mentions: [panOf('14 x 14 inch')],
      prose: 'Pour into a 14 x 14 inch pan and bake.',
    };
    const { pans, version } = worked(post, 'uk');
    expect(pans[0]?.caution).toBe(true);
    expect(version.cautions.map(({ kind }) => kind)).toContain('bake');
  });
});

test('every line of these dishes can be bought and measured', () => {
  const result = worked({ kitchen: 'us', lines: ['2 (15-oz) cans butter beans', '1 cup milk', '1 lb carrots'] }, 'uk');
  expect(result.version.parts.flatMap((part) => part.lines.flatMap(rulesOf))).not.toContain('unmeasurable');
  expect(
    result.version.parts.flatMap((part) => part.lines.flatMap(rulesOf)).filter((rule) => rule.startsWith('un')),
  ).toEqual([]);
});

test('a little of a food that nobody knows keeps its grams where no scale weighs it', () => {
  expect(linesOf(worked({ kitchen: 'eu', lines: ['7 g gloop', '1 l water'] }, 'ca'))[0]).toBe('7 g gloop');
});
