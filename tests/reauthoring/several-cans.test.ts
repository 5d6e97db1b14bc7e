import { isRefusal, reauthor } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { recipeOf, textOf } from './recipe-of.js';
import { setting } from './setting.js';

function drafted(line: string, from: string, to: string): { text: string; batch: number } {
  const result = reauthor(recipeOf({ kitchen: from, lines: [line] }), to, setting);
  if (isRefusal(result) || result.infeasible !== null) throw new RangeError(line);
  return {
    text: result.version.parts.flatMap(({ lines }) => lines.map(textOf)).join(),
    batch: result.version.batchFactor.toNumber(),
  };
}

describe('cans that are told in several ways', () => {
  test.for([
    ['1 (28-oz) can or 2 (14.5-oz) cans diced tomatoes', '2 × 400 g tins chopped tomatoes'],
    ['1 large can (28 oz) plus 1 small can (14 oz) diced tomatoes', '3 × 400 g tins chopped tomatoes'],
    ['1 can or 2 cups cooked black beans', '1 × 400 g tin cooked black beans'],
    ['1 can (about 1½ cups) black beans', '1 × 400 g tin black beans'],
    ['1 can/1½ cups chickpeas, drained', '1 × 400 g tin chickpeas, drained'],
    ['1 to 2 cans black beans', '1–2 × 400 g tins black beans'],
    ['1 (15-oz) can plus 2 tbsp black beans', '1 × 400 g tin black beans'],
  ] as const)('%s are %s', ([line, becomes]) => {
    const { text, batch } = drafted(line, 'us', 'uk');
    expect(text).toBe(becomes);
    expect(Math.abs(batch - 1)).toBeLessThan(0.12);
  });

  test('what is added counts: a can and a quarter cup are more than a tin', () => {
    const { batch } = drafted('1 (14-oz) can plus ½ cup pumpkin puree', 'us', 'uk');
    // 397 g and a half cup of 122 g (USDA SR26 11424: 245 g a cup), in tins of 425 g.
    expect(batch).toBeCloseTo(425 / (396.9 + 122.5), 3);
  });
});
