import { Exact, type Mention, readLine, versionFor } from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { amountOf, lineOf, type Post, recipeOf, textOf, versionOf } from './recipe-of.js';
import { kitchen, setting } from './setting.js';

/** Annotations of one food, each with its own key. */
const sharesOf = (of: string, ...texts: string[]): Mention[] =>
  texts.map((text, index) => amountOf(text, of, 'us', `share ${index}`));

const inVersion = (post: Post, to: string): string[] =>
  versionOf(post, to).steps.flatMap(({ mentions }) => mentions.map(({ text }) => text));

interface Worked {
  line: string;
  of: string;
  shares: string[];
  to: string;
  becomes: string[];
  by: string;
}

const practice = 'common practice, no source';
const worked: Worked[] = [
  {
    line: '1 cup heavy cream',
    of: 'heavy cream',
    shares: ['½ cup'],
    to: 'uk',
    becomes: ['120 ml'],
    by: 'half of 240 ml',
  },
  {
    line: '1 cup heavy cream',
    of: 'heavy cream',
    shares: ['¾ cup', '¼ cup'],
    to: 'uk',
    becomes: ['180 ml', '60 ml'],
    by: '180 + 60 = 240',
  },
  {
    line: '3 cups flour',
    of: 'flour',
    shares: ['1 cup', '1 cup', '1 cup'],
    to: 'uk',
    becomes: ['125 g', '125 g', '125 g'],
    by: '3 × 125 = 375',
  },
  {
    line: '1 cup sugar',
    of: 'sugar',
    shares: ['⅔ cup', '⅓ cup'],
    to: 'uk',
    becomes: ['135 g', '65 g'],
    by: '135 + 65 = 200, though a third is 66.7',
  },
  {
    line: '1 stick butter',
    of: 'butter',
    shares: ['2 tbsp', '6 tbsp'],
    to: 'uk',
    becomes: ['30 g', '85 g'],
    by: '30 + 85 = 115',
  },
  {
    line: '1 cup (140 g) flour',
    of: 'flour',
    shares: ['2 tbsp', 'the rest'],
    to: 'uk',
    becomes: ['18 g', 'the rest'],
    by: '140 / 8 = 17.5',
  },
  {
    line: '3 cups flour',
    of: 'flour',
    shares: ['1 cup', '1 cup', '1 cup'],
    to: 'ca',
    becomes: ['1 cup', '1 cup', '⅔ cup + 3 tbsp'],
    by: '2 × 250 + 166.7 + 45 = 711.7 ml, of the line’s 709.8',
  },
  {
    line: '2½ cups flour',
    of: 'flour',
    shares: ['1 cup', '1 cup', '½ cup'],
    to: 'ca',
    becomes: ['¾ cup + 3 tbsp', '¾ cup + 3 tbsp', 'the rest'],
    by: 'no Canadian cup holds what is left',
  },
  {
    line: '1 cup heavy cream',
    of: 'heavy cream',
    shares: ['1 cup'],
    to: 'uk',
    becomes: ['240 ml'],
    by: 'the whole line reads as the line',
  },
  {
    line: '4 large eggs',
    of: 'eggs',
    shares: ['2', '2'],
    to: 'uk',
    becomes: ['2 medium', '2 medium'],
    by: 'the size goes with them',
  },
  {
    line: '6 large eggs',
    of: 'eggs',
    shares: ['2', '4'],
    to: 'uk',
    becomes: ['2', '3'],
    by: 'five large eggs, none of them cut',
  },
  {
    line: '4 onions',
    of: 'onions',
    shares: ['2 onions', '2 onions'],
    to: 'uk',
    becomes: ['2 onions', '2 onions'],
    by: 'other words are kept',
  },
  { line: '3 onions', of: 'onions', shares: ['½', '2½'], to: 'uk', becomes: ['½', '2½'], by: 'an onion may be cut' },
  {
    line: '4 cloves garlic',
    of: 'garlic',
    shares: ['1 clove'],
    to: 'uk',
    becomes: ['1 clove'],
    by: 'pieces are counted, not measured',
  },
  {
    line: '2 (15-oz) cans butter beans',
    of: 'butter beans',
    shares: ['1 can'],
    to: 'uk',
    becomes: ['1 × 400 g tin'],
    by: practice,
  },
  {
    line: '4 cloves garlic',
    of: 'garlic',
    shares: ['1 clove', '3 cloves'],
    to: 'uk',
    becomes: ['1 clove', '3 cloves'],
    by: 'the last is a number too',
  },
  {
    line: '2 (15-oz) cans butter beans',
    of: 'butter beans',
    shares: ['1 can', '1 can'],
    to: 'uk',
    becomes: ['1 × 400 g tin', '1 × 400 g tin'],
    by: practice,
  },
  {
    line: '1 (28-oz) can crushed tomatoes',
    of: 'crushed tomatoes',
    shares: ['1 cup'],
    to: 'uk',
    becomes: ['245 g'],
    by: 'a cup of them, 242 g of 794, is no whole tin: 244 g of 800',
  },
  {
    line: '2 (13½-fl oz) cans coconut milk',
    of: 'coconut milk',
    shares: ['½ cup', '2¾ cups'],
    to: 'uk',
    becomes: ['120 ml', '650 ml'],
    by: '118 and 651 ml of 799 are no half tins: 118 and 652 of 800',
  },
  {
    line: '2 (13½-fl oz) cans coconut milk',
    of: 'coconut milk',
    shares: ['1½ cups'],
    to: 'uk',
    becomes: ['350 ml'],
    by: '355 ml of 799 are a ninth under a tin',
  },
  {
    line: '2 (13½-fl oz) cans coconut milk',
    of: 'coconut milk',
    shares: ['1⅔ cups'],
    to: 'uk',
    becomes: ['1 × 400 ml tin'],
    by: 'within a tenth of a whole tin',
  },
  {
    line: '3–4 tbsp milk',
    of: 'milk',
    shares: ['3–4 tbsp'],
    to: 'uk',
    becomes: ['40–60 ml'],
    by: 'the whole line reads as the line, both ends of it',
  },
  {
    line: '1 cup flour',
    of: 'olive oil',
    shares: ['2 tbsp'],
    to: 'au',
    becomes: ['1½ tbsp'],
    by: 'not listed: converted by itself',
  },
  {
    line: '½ cup half-and-half',
    of: 'half-and-half',
    shares: ['¼ cup'],
    to: 'uk',
    becomes: ['3 tbsp whole milk and 2¼ tsp double cream'],
    by: 'half of 90 ml and half of 22.5 ml',
  },
  {
    line: '1 cup flour',
    of: 'kosher salt',
    shares: ['½ tbsp'],
    to: 'uk',
    becomes: ['¾ tsp'],
    by: 'not listed: 4.2 g of the lighter grain, of which 6 g of fine salt fill a teaspoon',
  },
  {
    line: '2 cups half-and-half',
    of: 'half-and-half',
    shares: ['1 cup half-and-half', '1 cup half-and-half'],
    to: 'uk',
    becomes: ['190 ml whole milk and 50 ml double cream', 'the rest of the half-and-half'],
    by: 'both foods are named in place of the one; no jug measures what is left of 375 ml',
  },
  {
    line: '1½ cups graham cracker crumbs',
    of: 'graham cracker crumbs',
    shares: ['½ cup graham cracker crumbs'],
    to: 'uk',
    becomes: ['40 g crushed digestive biscuits'],
    by: 'a third of 125 g, by the name of what takes its place',
  },
];

describe('a share of a line', () => {
  test.for(worked)('$shares of $line read $becomes in $to: $by', ({ line, of, shares, to, becomes }) => {
    expect(inVersion({ kitchen: 'us', lines: [line], mentions: sharesOf(of, ...shares) }, to)).toEqual(becomes);
  });

  test('reads as it was written in the native kitchen', () => {
    const mentions = sharesOf('flour', '⅔ cup', '⅓ cup');
    expect(inVersion({ kitchen: 'us', lines: ['1 cup flour'], mentions }, 'us')).toEqual(['⅔ cup', '⅓ cup']);
  });

  test('keeps the other words of its annotation, in that kitchen’s language', () => {
    const mentions = sharesOf('heavy cream', '½ cup heavy cream');
    expect(inVersion({ kitchen: 'us', lines: ['1 cup heavy cream'], mentions }, 'uk')).toEqual(['120 ml double cream']);
  });

  test('that is the rest says of what, where its annotation does', () => {
    const mentions = sharesOf('flour', '1 cup', '1 cup', '½ cup flour');
    expect(inVersion({ kitchen: 'us', lines: ['2½ cups flour'], mentions }, 'ca').at(-1)).toBe('the rest of the flour');
  });

  test('is tied to its line by the words of `of` before the food that they mean', () => {
    const lines = ['1 cup sugar', '1–2 cups granulated sugar'];
    const post = { kitchen: 'us', lines, mentions: sharesOf('granulated sugar', '1–2 cups') };
    // 200 g a cup (USDA SR26 19335, cup).
    expect(inVersion(post, 'uk')).toEqual(['200–400 g']);
  });
});

describe('shares of one line', () => {
  const cups = fc.constantFrom('¼ cup', '⅓ cup', '½ cup', '⅔ cup', '¾ cup');
  const rest: Readonly<Record<string, string>> = {
    '¼ cup': '¾ cup',
    '⅓ cup': '⅔ cup',
    '½ cup': '½ cup',
    '⅔ cup': '⅓ cup',
    '¾ cup': '¼ cup',
  };
  const foods = fc.constantFrom('heavy cream', 'flour', 'sugar', 'milk', 'honey', 'olive oil', 'rice flour');
  const kitchens = fc.constantFrom('ca', 'uk', 'eu', 'au');

  /** Size of an amount by its units alone, in grams or millilitres. */
  function sizeOf(text: string, to: string): Exact {
    const { units } = kitchen(to);
    const sizes: Readonly<Record<string, Exact | number>> = { ...units, g: 1, kg: 1000, ml: 1, l: 1000 };
    const parts = text.split(' + ').flatMap((part) => readLine(`${part} flour`, { kitchen: units }).amounts);
    return parts.reduce((sum, { low, unit }) => sum.plus(low.times(sizes[unit] ?? Number.NaN)), new Exact(0));
  }

  test('add up to the line, or the last is the rest', () => {
    fc.assert(
      fc.property(foods, cups, kitchens, (food, first, to) => {
        const mentions = sharesOf(food, first, rest[first] ?? '');
        const version = versionOf({ kitchen: 'us', lines: [`1 cup ${food}`], mentions }, to);
        const [one = '', other = ''] = version.steps[0]?.mentions.map(({ text }) => text) ?? [];
        fc.pre(other !== 'the rest');
        const line = version.parts[0]?.lines[0];
        const unit = (text: string): string => (/\bk?g$/.test(text) ? 'g' : 'ml');
        const whole = unit(one) === 'g' ? line?.chosen.grams : line?.chosen.millilitres;
        fc.pre(unit(one) === unit(other));
        const off = sizeOf(one, to)
          .plus(sizeOf(other, to))
          .dividedBy(whole ?? Number.NaN)
          .minus(1)
          .abs();
        // The last measure may be half a per cent from what is left.
        expect(off.toNumber()).toBeLessThanOrEqual(0.005);
      }),
    );
  });
});

describe('a share in a version that an author wrote', () => {
  test.for([
    { uk: '300 ml double cream', shares: ['½ cup'], becomes: ['150 ml'] },
    { uk: '300 ml double cream', shares: ['¾ cup', '¼ cup'], becomes: ['230 ml', '70 ml'] },
    { uk: '300 ml double cream', shares: ['1 cup'], becomes: ['300 ml'] },
  ])('follows its amount: $shares of $uk read $becomes', ({ uk, shares, becomes }) => {
    const versions = [{ kitchen: 'uk', lines: [uk] }];
    const post = {
      kitchen: 'us',
      lines: ['1 cup heavy cream'],
      mentions: sharesOf('heavy cream', ...shares),
      versions,
    };
    expect(inVersion(post, 'uk')).toEqual(becomes);
  });

  test('is left to a method that the author wrote for that kitchen', () => {
    const post: Post = {
      kitchen: 'us',
      lines: ['1 cup heavy cream'],
      mentions: sharesOf('heavy cream', '½ cup'),
      versions: [{ kitchen: 'uk', lines: ['300 ml double cream'] }],
      methodVersions: [{ kitchen: 'uk', mentions: [amountOf('200 ml', 'double cream', 'uk')] }],
    };
    expect(inVersion(post, 'uk')).toEqual(['200 ml']);
  });
});

describe('a share of a cure', () => {
  test.for(['½ oz', '½ oz curing salt'])('reads as it was written: %s', (text) => {
    const mentions = [amountOf(text, 'curing salt', 'us')];
    expect(inVersion({ kitchen: 'us', lines: ['1 oz curing salt'], mentions }, 'uk')).toEqual([text]);
  });

  test('whose own words no larder knows reads as it was written', () => {
    const mention = amountOf('½ oz', 'pink cure mix', 'us');
    const line = { ...lineOf('1 oz pink cure mix', 'us'), food: lineOf('1 oz curing salt', 'us').food };
    const recipe = recipeOf({ kitchen: 'us', lines: ['1 egg'], mentions: [mention] });
    const [part] = recipe.parts;
    if (part === undefined) throw new RangeError('A recipe has a part.');
    const parts = [{ ...part, native: { ...part.native, lines: [line] } }];
    expect(mention).toMatchObject({ food: null });
    expect(versionFor({ ...recipe, parts }, 'uk', setting).steps[0]?.mentions[0]?.text).toBe('½ oz');
  });

  test('that no line lists reads as it was written', () => {
    const mentions = [amountOf('½ oz', 'curing salt', 'us')];
    expect(inVersion({ kitchen: 'us', lines: ['1 egg'], mentions }, 'uk')).toEqual(['½ oz']);
  });
});

test('a second statement in one part holds for the lines of every part', () => {
  const [crust, filling] = ['1 cup (140 g) flour', '2 cups flour'].map((line) =>
    recipeOf({ kitchen: 'us', lines: [line] }),
  );
  if (crust === undefined || filling === undefined) throw new RangeError('Two lines make two recipes.');
  const version = versionFor({ ...crust, parts: [...filling.parts, ...crust.parts] }, 'uk', setting);
  expect(version.parts.flatMap(({ lines }) => lines.map(textOf))).toEqual(['280 g flour', '140 g flour']);
});
