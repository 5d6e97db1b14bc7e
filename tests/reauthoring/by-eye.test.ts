import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { converted, recipeOf, rulesOf, textOf } from './recipe-of.js';
import { foodOf, larderOf, soldAs } from './sample-food.js';
import { setting } from './setting.js';

const reauthored = (lines: readonly string[], from: string, to: string): string[] => {
  const result = reauthoredOf(recipeOf({ kitchen: from, lines }), to, setting);
  return result.version.parts.flatMap((part) => part.lines.map(textOf));
};

describe('a food of which nobody fills a cup, in a kitchen without a scale', () => {
  // Packs of the larder: common practice, no source. Weights in grams against them.
  test.for([
    ['us', 'ca', '8 oz cream cheese', '1 (250-g) block cream cheese', '226.8'],
    ['us', 'ca', '12 oz bacon', '1 (375-g) pack bacon', '340.2'],
    ['us', 'ca', '6 oz bacon', '½ (375-g) pack bacon', '170.1 for 187.5'],
    ['us', 'ca', '1 lb spaghetti', '1 (450-g) box spaghetti', 'a whole box, not half a bag of 900 g'],
    ['uk', 'us', '200 g spaghetti', '½ (16-oz) box spaghetti', '226.8'],
    ['uk', 'ca', '250 g tofu', '¾ (350-g) block tofu', '262.5'],
    ['uk', 'us', '150 g smoked salmon', '⅔ (8-oz) pack smoked salmon', '151.2'],
    ['uk', 'us', '100 g sponge fingers', '½ (7-oz) packet ladyfingers', 'no cup is known of them at all'],
    ['uk', 'us', '200 g cream cheese', '7 oz cream cheese', 'its wrapper has marks'],
  ] as const)('from %s to %s: %s is %s: %s', ([from, to, line, becomes]) => {
    const result = converted(line, from, to);
    expect(textOf(result)).toBe(becomes);
    expect(rulesOf(result)).not.toContain('unmeasurable no-tool');
  });

  test.for([
    ['uk', 'ca', '30 g bacon', '¼ cup bacon', 'a few grams are less than any part of a pack'],
    ['us', 'ca', '1 cup bacon, chopped', '¾ cup + 3 tbsp bacon, chopped', 'the author does'],
    ['us', 'uk', '12 oz bacon', '340 g streaky bacon', 'there is a scale'],
  ] as const)('from %s to %s: %s is %s all the same: %s', ([from, to, line, becomes]) => {
    expect(textOf(converted(line, from, to))).toBe(becomes);
  });

  test('is called a bunch where it comes in bunches', () => {
    // 200 g of kale and 60 g of parsley a bunch: the larder's, from memory.
    const [kale, parsley] = reauthored(['400 g kale', '60 g parsley'], 'uk', 'us');
    expect([kale, parsley]).toEqual(['2 bunches kale', '1 bunch parsley']);
    expect(rulesOf(converted('2 bunches kale', 'us', 'us-scale'))).toEqual([]);
  });

  test('comes in parts of packs with the other lines', () => {
    expect(reauthored(['200 g spaghetti', '150 g bacon', '2 onions'], 'uk', 'ca')[0]).toMatch(
      /^[½¼⅓⅔¾] \(\d+-g\) \w+ spaghetti$/,
    );
  });

  test('leaves the rest of the pack that is divided', () => {
    const { bought } = converted('200 g spaghetti', 'uk', 'us');
    expect(bought?.packs.map(({ count, pack }) => `${count} × ${pack.size} ${pack.unit}`)).toEqual(['1 × 16 oz']);
    expect(bought?.leftoverGrams.toDecimalPlaces(1).toString()).toBe('226.8');
  });
});

describe('a food that a cup measures as well', () => {
  test.for([
    ['us', 'ca', '8 oz penne', '½ (450-g) box penne'],
    ['uk', 'ca', '200 g cheddar, grated', '½ (400-g) block cheddar, grated'],
    ['us', 'ca', '2 cups penne', '1¾ cups + 2 tbsp penne'],
    ['us', 'ca', '2 cups chocolate chips', '1¾ cups + 2 tbsp chocolate chips'],
  ] as const)('from %s to %s: %s is %s', ([from, to, line, becomes]) => {
    expect(textOf(converted(line, from, to))).toBe(becomes);
  });
});

describe('what an author writes without a scale', () => {
  test.for([
    ['8 oz spaghetti', []],
    ['6 oz bacon', []],
    ['4 oz cheddar, grated', []],
    ['10 oz spaghetti', ['unmeasurable no-tool']],
    ['8 oz flour', ['unmeasurable no-tool']],
  ] as const)('%s: %s', ([line, rules]) => {
    expect(rulesOf(converted(line, 'us', 'us'))).toEqual(rules);
  });

  test('is measured where it is a part of a pack, within the tolerance', () => {
    const of = (line: string, byEye: 'only' | 'also' | null): string[] =>
      rulesOf(converted(line, 'us', 'us', larderOf(foodOf({ any: soldAs([{ size: 400 }]) }, { byEye }))));
    // A third of 400 g is 133.3.
    expect([of('135 g gloop', 'only'), of('135 g gloop', 'also')]).toEqual([[], []]);
    expect([of('135 g gloop', null), of('160 g gloop', 'only')]).toEqual([
      ['unmeasurable no-tool'],
      ['unmeasurable no-tool'],
    ]);
  });
});
