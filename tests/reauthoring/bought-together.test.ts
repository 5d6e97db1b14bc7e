import { boughtInWords, Exact, foodsIn, linesIn, type Setting, type Version, versionFor } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeInPost } from './recipe-in-post.js';

const { foods, kitchens } = builtInLarder();
const setting: Setting = { foods, kitchens, tolerance: new Exact('0.05') };

const tart = `:::ingredients[Crust]{kitchen=us}
- 2 cups all-purpose flour
- 4 tbsp butter
- ½ cup heavy cream
:::

:::ingredients[Filling]{kitchen=us}
- 2 tbsp butter
- ¾ cup heavy cream
- 2 tbsp butter, melted, for brushing
:::
`;

/** What each line of a food buys: the packs, what is left in grams, and whether another line's purchase holds it. */
function purchases(version: Version, food: string) {
  return version.parts
    .flatMap(({ lines }) => lines.flatMap(linesIn).flatMap(foodsIn))
    .filter((own) => own.food?.id === food)
    .map(({ bought, boughtWith }) => ({
      buys: bought === null ? null : boughtInWords(bought, version.kitchen).join(' + '),
      left: bought?.leftoverGrams.toDecimalPlaces(0).toNumber(),
      elsewhere: boughtWith?.text ?? null,
    }));
}

function reauthored(post: string, kitchen: string): Version {
  const result = reauthoredOf(recipeInPost(post), kitchen, setting);
  return result.version;
}

describe('what several lines ask for', () => {
  // 120 ml and 180 ml of cream, and 55 + 30 + 30 g of butter out of a 250 g block.
  test.each([
    ['re-authored', () => reauthored(tart, 'uk')],
    ['converted', () => versionFor(recipeInPost(tart), 'uk', setting)],
  ])('is bought once, at the first of them, in a %s version', (_, version) => {
    const [cream, butter] = [purchases(version(), 'heavy-cream'), purchases(version(), 'butter')];
    expect(cream.map(({ buys }) => buys)).toEqual(['1 × 300 ml pot', '']);
    expect(cream.map(({ elsewhere }) => elsewhere)).toEqual([null, '½ cup heavy cream']);
    expect(butter.map(({ buys }) => buys)).toEqual(['1 × 250 g block', '', '']);
    expect(butter.map(({ elsewhere }) => elsewhere)).toEqual([null, '4 tbsp butter', '4 tbsp butter']);
    expect(butter.map(({ left }) => left)).toEqual([expect.closeTo(135, -1), 0, 0]);
  });

  test('is counted in pieces where all of them count the same', () => {
    const post = ':::ingredients{kitchen=uk}\n- 5 flour tortillas\n- 3 flour tortillas, torn\n:::\n';
    const found = purchases(versionFor(recipeInPost(post), 'uk', setting), 'flour-tortilla');
    expect(found).toEqual([
      { buys: '1 × 8 packet', left: 0, elsewhere: null },
      { buys: '', left: 0, elsewhere: '5 flour tortillas' },
    ]);
  });

  test('counts the upper end of a range', () => {
    const post = (high: string): string =>
      `:::ingredients{kitchen=uk}\n- 100${high} ml double cream\n- 180 ml double cream\n:::\n`;
    const version = (high: string): Version => versionFor(recipeInPost(post(high)), 'uk', setting);
    expect(purchases(version(''), 'heavy-cream')[0]?.buys).toBe('1 × 300 ml pot');
    expect(purchases(version('–200'), 'heavy-cream')[0]?.buys).not.toBe('1 × 300 ml pot');
  });

  test('leaves a tin that a line names a tin of its own, and adds up tins of one size', () => {
    const post =
      ':::ingredients{kitchen=uk}\n- 1 × 400 g tin chickpeas\n- 2 × 400 g tins chickpeas\n- 1 × 400 ml tin coconut milk\n- 100 ml coconut milk\n:::\n';
    const version = versionFor(recipeInPost(post), 'uk', setting);
    expect(purchases(version, 'chickpeas').map(({ buys }) => buys)).toEqual(['3 × 400 g tins', '']);
    expect(purchases(version, 'coconut-milk').map(({ elsewhere }) => elsewhere)).toEqual([null, null]);
  });

  test('is bought once for what a line counts beside its first food too', () => {
    const post = ':::ingredients{kitchen=us}\n- 2 eggs and ⅓ cup heavy cream\n- ¼ cup heavy cream\n:::\n';
    const version = versionFor(recipeInPost(post), 'uk', setting);
    expect(purchases(version, 'heavy-cream')).toEqual([
      { buys: '1 × 150 ml pot', left: expect.closeTo(10, -1), elsewhere: null },
      { buys: '', left: 0, elsewhere: expect.stringContaining('⅓ cup heavy cream') },
    ]);
  });

  test('says once what all of it leaves, also of what a line counts beside its first food', () => {
    const post = ':::ingredients{kitchen=uk}\n- 2 eggs and 300 ml whole milk\n- 175 ml whole milk\n:::\n';
    const found = versionFor(recipeInPost(post), 'uk', setting).parts.flatMap(({ lines }) =>
      lines.flatMap(({ problems }) => problems.map(({ problem }) => problem)),
    );
    expect(found).toEqual([expect.objectContaining({ rule: 'awkward-leftover', text: '300 ml + 175 ml' })]);
  });
});
