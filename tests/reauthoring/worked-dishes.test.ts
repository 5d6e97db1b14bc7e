import { readFileSync } from 'node:fs';
import { isRefusal } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { loaf, sponge, spongeByClass, stew, textOf, worked } from './worked-dishes.ts';
import { workedPage } from './worked-page.ts';

const linesOf = (result: ReturnType<typeof worked>): string[] =>
  result.version.parts.flatMap((part) => part.lines.map(textOf));
const page = (): string => readFileSync(new URL('../../packages/core/WORKED.md', import.meta.url), 'utf8');

test('the page holds the numbers that are computed: write it anew with worked-write.ts where they move on purpose', () => {
  expect(page()).toBe(workedPage());
});

test.for([
  [stew, 'uk'],
  [loaf, 'us'],
  [sponge, 'us'],
  [sponge, 'au'],
] as const)('%# keeps every guarded ratio and leaves nothing that cannot be measured or bought', ([dish, to]) => {
  const result = worked(dish, to);
  expect(isRefusal(result)).toBe(false);
  expect(result.infeasible).toBeNull();
  for (const { native, version, limit } of result.ratios) {
    expect(Math.abs(version / native - 1)).toBeLessThanOrEqual(limit + 1e-9);
  }
  const rules = result.version.parts.flatMap((part) => part.lines.flatMap(({ problems }) => problems));
  expect(rules.filter(({ problem }) => problem.rule === 'unmeasurable' || problem.rule === 'unbuyable')).toEqual([]);
});

describe('the stew', () => {
  test('goes on two UK tins of beans, drained against drained, with its tomatoes in a whole tin', () => {
    const result = worked(stew, 'uk');
    expect(result.anchor).toBe('butter beans');
    const [beans, tomatoes] = linesOf(result);
    expect(beans).toBe('2 × 400 g tins butter beans, drained');
    expect(tomatoes).toMatch(/^1 × 400 g tin \w+ tomatoes$/);
    // A US can holds 255 g drained, a UK tin 235 g: the larder's figures.
    expect(result.version.batchFactor.toFixed(4)).toBe((235 / 255).toFixed(4));
  });
});

describe('the loaf', () => {
  test('stays as large as it is, in cups and spoons and one envelope of yeast', () => {
    const result = worked(loaf, 'us');
    expect(result.version.batchFactor.toString()).toBe('1');
    expect(result.anchor).toBeNull();
    const texts = linesOf(result);
    expect(texts.slice(0, 3).every((text) => /^[\d¼½¾⅓⅔]+ (?:cups?|tbsp|tsp)/.test(text))).toBe(true);
    expect(texts[3]).toMatch(/^1 \(¼-oz\) envelope/);
  });
});

describe('the sponge', () => {
  test('takes five large US eggs at a batch of about 1.13, for 5 × 49.9 g of egg stand against the 220 g that the author weighed', () => {
    const result = worked(sponge, 'us');
    expect(linesOf(result)[2]).toBe('5 large eggs');
    // USDA's large egg weighs 56.7 g in the shell, 0.88 of it edible.
    expect(result.version.batchFactor.toFixed(3)).toBe(((5 * 56.69904625 * 0.88) / 220).toFixed(3));
    expect(result.pans.map(({ count, version, caution }) => [count, version, caution])).toEqual([[2, '8 in', false]]);
  });

  test('takes five at 1.042 where only the class is said: the middle of the UK band, 68 g, against the least of the US one', () => {
    const result = worked(spongeByClass, 'us');
    expect(linesOf(result)[2]).toBe('5 large eggs');
    expect(result.version.batchFactor.toFixed(3)).toBe(((5 * 56.69904625) / (4 * 68)).toFixed(3));
  });

  test('takes Australian eggs of the usual carton, four for the weight that the author says and five for the class', () => {
    expect(linesOf(worked(sponge, 'au'))[2]).toBe('4 eggs');
    expect(linesOf(worked(spongeByClass, 'au'))[2]).toBe('5 eggs');
  });

  test('leaves the cream outside the ratios to flour', () => {
    const names = worked(sponge, 'us').ratios.map(({ name }) => name);
    expect(names).toContain('unsalted butter : flour');
    expect(names.filter((name) => name.includes('cream'))).toEqual([]);
  });
});
