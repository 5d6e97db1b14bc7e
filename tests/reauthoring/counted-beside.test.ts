import { linesIn, type Reauthored, type VersionLine } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { converted, lineOf, recipeOf, textOf } from './recipe-of.js';
import { kitchenIds, setting } from './setting.js';

function drafted(lines: readonly string[], from: string, to: string): Reauthored {
  return reauthoredOf(recipeOf({ kitchen: from, lines }), to, setting);
}

const linesOf = ({ version }: Reauthored): VersionLine[] => version.parts.flatMap(({ lines }) => lines);
const gramsOf = (line: VersionLine | undefined): number =>
  linesIn(line as VersionLine).reduce((sum, { chosen }) => sum + (chosen.grams?.toNumber() ?? 0), 0);

describe('what a line counts beside its first food is weighed, bought and worded as a line of its own', () => {
  test.for([
    ['2 large eggs plus 1 yolk', ['egg', 'egg-yolk']],
    ['1 egg + 1 egg white', ['egg', 'egg-white']],
    ['4 egg whites plus 1 whole egg', ['egg-white', 'egg']],
    ['1 egg and 2 whites', ['egg', 'egg-white']],
    ['1 egg, plus 1 yolk, plus 1 egg white', ['egg', 'egg-yolk', 'egg-white']],
    ['1 can (15 oz) black beans plus 1 can (15 oz) kidney beans', ['black-beans', 'kidney-beans']],
    ['2 onions plus 1 carrot', ['onion', 'carrot']],
    ['1 egg plus 1 tbsp milk', ['egg', 'milk']],
    ['125 g flour and 200 g sugar', ['plain-flour', 'granulated-sugar']],
  ] as const)('%s', ([text, foods]) => {
    const found: string[] = [];
    for (let line = lineOf(text, 'us'); ; line = line.plus) {
      found.push(line.food?.id ?? '');
      if (line.plus === undefined) break;
    }
    expect(found).toEqual(foods);
  });

  test.for([
    '2 large eggs, beaten',
    '3 cloves garlic, plus 1 clove to rub',
    '1 egg beaten with 1 tbsp milk',
    '1 cup sugar, plus 2 tbsp sugar for dusting',
    '2 eggs, plus 1 for brushing',
    '2 cups flour, plus more for dusting',
    '1 onion, halved and 2 times rinsed',
    '1 chicken, cut into 8 pieces and 2 cm dice',
  ])('but not in %s', (text) => {
    expect(lineOf(text, 'us').plus).toBeUndefined();
  });

  const others = kitchenIds.filter((id) => id !== 'us' && id !== 'us-scale');
  test.for(others)('eggs and a yolk in %s: whole, and together as heavy', (to) => {
    const result = drafted(['2 large eggs plus 1 yolk, beaten', '2 cups flour', '1 cup sugar'], 'us', to);
    const [eggs] = linesOf(result);
    expect(result.infeasible).toBeNull();
    // USDA SR26: a large egg is 50 g (01123), its yolk 17 g (01125).
    const share = gramsOf(eggs) / 117 / result.version.batchFactor.toNumber();
    expect(Math.abs(share - 1)).toBeLessThan(0.12);
    for (const { stated } of linesIn(eggs as VersionLine))
      expect(stated?.statements[0]?.[0]?.low.isInteger()).toBe(true);
    // One size for both.
    expect(new Set(linesIn(eggs as VersionLine).map(({ stated }) => stated?.eggSize)).size).toBe(1);
    const ratio = result.ratios.find(({ name }) => name === 'egg : flour');
    expect(ratio?.native).toBeCloseTo(117 / 250, 2);
  });

  test.for([
    ['2 large eggs plus 1 yolk', 'us', 'uk', '2 medium eggs plus 1 medium yolk'],
    ['1 large egg and 1 large egg yolk', 'us', 'uk', '1 medium egg and 1 medium egg yolk'],
    ['1 egg plus 1 egg yolk', 'us', 'uk', '1 medium egg plus 1 medium egg yolk'],
    ['2 large eggs plus 1 yolk', 'us', 'au', '2 eggs plus 1 yolk'],
    ['2 medium eggs plus 1 egg yolk', 'uk', 'us', '2 large eggs plus 1 large egg yolk'],
    [
      '1 (15-oz) can black beans plus 1 (15-oz) can kidney beans, drained',
      'us',
      'uk',
      '1 × 400 g tin black beans plus 1 × 400 g tin kidney beans, drained',
    ],
    ['1 red bell pepper plus 2 zucchini', 'us', 'au', '1 red capsicum plus 2 zucchini'],
    ['1 red bell pepper plus 2 zucchini', 'us', 'uk', '1 red pepper plus 2 courgettes'],
  ] as const)('%s from %s in %s is %s', ([line, from, to, becomes]) => {
    expect(linesOf(drafted([line], from, to)).map(textOf)).toEqual([becomes]);
  });

  test('line by line too, and every can is bought', () => {
    const line = converted('1 (15-oz) can black beans plus 1 (15-oz) can kidney beans', 'us', 'uk');
    expect(textOf(line)).toBe('1 × 400 g tin black beans plus 1 × 400 g tin kidney beans');
    expect(linesIn(line).map(({ bought }) => bought?.packs.length)).toEqual([1, 1]);
  });

  test('what is told otherwise is of the food behind it', () => {
    const [line] = linesOf(drafted(['1 packet yeast dissolved in ¼ cup water and 1 tsp sugar'], 'us', 'uk'));
    expect(line === undefined ? '' : textOf(line)).toContain('dissolved in 60 ml water and 1 tsp');
    const [beans] = linesOf(drafted(['1 (15-oz) can chickpeas, plus ¼ cup of their liquid'], 'us', 'uk'));
    expect(beans === undefined ? '' : textOf(beans)).toContain('plus 60 ml of their liquid');
  });

  test('what is said of the last one is not said of the first', () => {
    const [lemons] = linesOf(drafted(['3 lemons, plus 1 lemon for garnish', '1 lb kale'], 'us', 'uk'));
    expect(linesIn(lemons as VersionLine)).toHaveLength(2);
  });
});
