import { applyEdits, type Reauthored } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeOf } from './recipe-of.js';
import { setting } from './setting.js';

function versionOf(lines: readonly string[], from: string, to: string): Reauthored {
  const result = reauthoredOf(recipeOf({ kitchen: from, lines }, setting), to, setting);
  expect(result.infeasible).toBeNull();
  return result;
}

function linesOf({ version }: Reauthored): string[] {
  return version.parts.flatMap((part) => part.lines.map(({ line, edits }) => applyEdits(line.text, edits)));
}

// A tablespoon is 14.79, 15 and in Australia 20 ml; a teaspoon 4.93 and 5 ml.
describe('what the author spoons is spooned', () => {
  test.for([
    ['us', 'uk', '1 tbsp ginger, grated', '1 tbsp ginger, grated'],
    ['us', 'au', '1 tbsp ginger, grated', '3 tsp ginger, grated'],
    ['us', 'eu', '1½ tsp salt', '1½ tsp salt'],
    ['us', 'nz', '3 tablespoons ground cumin', '3 tablespoons ground cumin'],
    ['us', 'uk', '2 tbsp ketchup', '2 tbsp ketchup'],
    // More spoons than stand in the table of measures, which two tools measure.
    ['us', 'uk', '5 tbsp olive oil', '5 tbsp olive oil'],
    ['us', 'eu', '4 tsp tomato paste', '4 tsp tomato purée'],
    // Nobody counts ten.
    ['us', 'uk', '10 tbsp all-purpose flour', '80 g plain flour'],
  ] as const)('from %s to %s: %s is %s', ([from, to, line, becomes]) => {
    expect(linesOf(versionOf([line], from, to))).toEqual([becomes]);
  });

  test('but for butter, which a scale weighs where no wrapper says what a spoon of it is', () => {
    expect(linesOf(versionOf(['2 tbsp butter'], 'us', 'uk'))).toEqual(['30 g butter']);
  });
});

// 1 lb is 453.6 g.
describe('weights are round where five grams make no dish', () => {
  test.for([
    ['1 lb mushrooms', '450 g mushrooms'],
    ['1–2 lb pork tenderloin', '450–900 g pork tenderloin'],
    // 4 oz are 113.4 g: five grams are a share of it that counts.
    ['4 oz mushrooms', '115 g mushrooms'],
  ] as const)('%s is %s', ([line, becomes]) => {
    expect(linesOf(versionOf([line], 'us', 'uk'))).toEqual([becomes]);
  });
});

// 1 lb is 453.6 g, 12 fl oz 354.9 ml.
describe('what the author counts in packs is counted in packs', () => {
  test.for([
    ['us', 'uk', '1 box spaghetti', '1 × 500 g packet spaghetti'],
    ['us', 'au', '1 (12-oz) bottle beer', '1 × 375 ml bottle beer'],
    ['eu', 'us', '2 33cl bottles of beer', '2 (12-fl oz) bottles beer'],
    // Far from any pack, and where the author measures.
    ['us', 'uk', '12 oz spaghetti', '340 g spaghetti'],
  ] as const)('from %s to %s: %s is %s', ([from, to, line, becomes]) => {
    expect(linesOf(versionOf([line], from, to))).toEqual([becomes]);
  });
});

describe('what the author states in two units is read in those of the kitchen', () => {
  test.for([
    ['us', 'uk', '10 oz (300 g) passata', '300 g passata'],
    ['us', 'eu', '1 lb / 500 g mushrooms', '500 g mushrooms'],
    ['uk', 'us', '500 g (1 lb) minced beef', '1 lb ground beef'],
    ['us', 'uk', '1¼ cups (300 ml) water', '300 ml water'],
    ['us', 'uk', '3 tbsp (40 ml) olive oil', '3 tbsp (40 ml) olive oil'],
  ] as const)('from %s to %s: %s is %s', ([from, to, line, becomes]) => {
    expect(linesOf(versionOf([line], from, to))).toEqual([becomes]);
  });
});

// A pound is 453.6 g.
describe('what a counter weighs by the pound is asked for in quarters and thirds', () => {
  test.for([
    ['300 g beef mince', '⅔ lb ground beef'],
    ['150 g guanciale', '⅓ lb guanciale'],
    ['350 g minced pork', '¾ lb ground pork'],
    ['600 g pork shoulder', '1⅓ lb pork shoulder'],
  ] as const)('%s is %s', ([line, becomes]) => {
    const [first] = versionOf([line], 'eu', 'us').version.parts.flatMap((part) => part.lines);
    expect(applyEdits(first?.line.text ?? '', first?.edits ?? [])).toBe(becomes);
    expect([first?.problems, first?.bought?.leftoverGrams.toNumber()]).toEqual([[], 0]);
  });

  test('and a cup of it is bought by weight where there is a scale', () => {
    expect(linesOf(versionOf(['½ cup ground pork'], 'us', 'us-scale'))).toEqual(['¼ lb ground pork']);
  });
});

test('flour past the cups that are counted is written in cups, and what pours in quarts', () => {
  expect(linesOf(versionOf(['1.5 kg bread flour'], 'eu', 'us'))[0]).toMatch(/^\d+ cups bread flour$/);
  expect(linesOf(versionOf(['3 l water'], 'eu', 'us'))[0]).toMatch(/quarts water$/);
});

// A US cup is 236.6 ml, a Canadian one 250 ml.
describe('a cup that is a little larger stays one cup', () => {
  test.for([
    ['1 cup red lentils', '1 cup red lentils'],
    ['¾ cup basmati rice', '¾ cup basmati rice'],
    ['2 cups diced mango', '2 cups diced mango'],
  ] as const)('%s is %s', ([line, becomes]) => {
    expect(linesOf(versionOf([line], 'us', 'ca'))).toEqual([becomes]);
  });

  test('but where a ratio to flour would be bent', () => {
    const lines = ['2 cups all-purpose flour', '1 cup milk', '2 large eggs', '½ cup sugar', '8 oz butter'];
    expect(
      versionOf(lines, 'us', 'ca').ratios.every(
        ({ native, version, limit }) => Math.abs(version / native - 1) <= limit,
      ),
    ).toBe(true);
  });
});

describe('the batch stays as it is', () => {
  test.for<[to: string, off: number]>([
    ['au', 0],
    ['ca', 0.035],
  ])('where a third of a teaspoon of salt is no measure of a kitchen, in %s within %d', ([to, off]) => {
    const lines = ['375 g plain flour', '⅓ tsp salt', '1½ tbsp sugar', '900 ml milk', '4 eggs'];
    expect(Math.abs(versionOf(lines, 'eu', to).version.batchFactor.toNumber() - 1)).toBeLessThanOrEqual(off);
  });

  test('where its eggs are a little smaller than the usual ones', () => {
    // Three EU medium eggs are 153 g without their shells, three of New Zealand's size 6 are 140 g.
    const lines = ['1.5 kg bread flour', '600 ml water', '150 g honey', '3 eggs'];
    expect(linesOf(versionOf(lines, 'eu', 'nz'))[3]).toMatch(/^3 eggs/);
  });
});
