import type { Reauthored } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { converted, lineOf, recipeOf, textOf } from './recipe-of.js';
import { setting } from './setting.js';

// What is sold in the US and Canada holds salt; what is sold in the UK, Australia and New Zealand does not. Common practice, no source.
const worked = (from: string, to: string, lines: readonly string[]): Reauthored => {
  return reauthoredOf(recipeOf({ kitchen: from, lines }), to, setting);
};

describe('self-raising flour', () => {
  test.for([
    ['us', ['table-salt', 'baking-powder']],
    ['ca', ['table-salt', 'baking-powder']],
    ['uk', ['baking-powder']],
    ['eu', ['baking-powder']],
    ['au', ['baking-powder']],
    ['nz', ['baking-powder']],
  ] as const)('of %s holds %s', ([kitchen, held]) => {
    const inside = lineOf('225 g self-raising flour', kitchen).food?.contains ?? [];
    expect(inside.map(({ food }) => food).sort()).toEqual([...held].sort());
  });

  test.for([
    ['uk', 'us', '225 g self-raising flour', '1¾ cups all-purpose flour and 2½ tsp baking powder'],
    ['au', 'ca', '225 g self-raising flour', '1½ cups + 2 tbsp all-purpose flour and 2½ tsp baking powder'],
    ['uk', 'au', '225 g self-raising flour', '225 g self-raising flour'],
    ['us', 'uk', '2 cups self-rising flour', '250 g self-raising flour and ½ tsp fine salt'],
    ['us', 'nz', '2 cups self-rising flour', '1¾ cups + 2 tbsp self-raising flour and ½ tsp table salt'],
    ['us', 'eu', '2 cups self-rising flour', '235 g plain flour, 2¾ tsp baking powder and ½ tsp fine salt'],
    ['us', 'ca', '2 cups self-rising flour', '1¾ cups + 2 tbsp self-rising flour'],
  ] as const)('from %s to %s: %s becomes %s', ([from, to, line, becomes]) => {
    expect(textOf(converted(line, from, to))).toMatch(becomes);
  });

  test('keeps leavening and salt within their limits where it becomes flour, baking powder and salt', () => {
    const lines = ['2 cups self-rising flour', '1 cup milk', '½ cup sugar', '½ tsp table salt'];
    for (const to of ['uk', 'eu', 'au', 'nz'] as const) {
      const { ratios, infeasible } = worked('us', to, lines);
      expect(infeasible).toBeNull();
      expect(ratios.map(({ name }) => name)).toEqual(expect.arrayContaining(['baking powder : flour', 'salt : whole']));
      for (const { native, version, limit } of ratios)
        expect(Math.abs(version / native - 1)).toBeLessThanOrEqual(limit + 1e-9);
    }
  });

  test('brings no salt into a dish that had none', () => {
    const { version, ratios } = worked('uk', 'us', ['225 g self-raising flour', '150 ml milk', '100 g caster sugar']);
    expect(ratios.map(({ name }) => name)).not.toContain('salt : whole');
    expect(version.parts.flatMap((part) => part.lines.map(textOf)).join(' ')).not.toMatch(/salt|self-rising/);
  });
});
