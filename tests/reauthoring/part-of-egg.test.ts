import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { converted, recipeOf, textOf } from './recipe-of.js';
import { kitchenIds, setting } from './setting.js';

function drafted(lines: readonly string[], from: string, to: string, anchor?: string) {
  return reauthoredOf(recipeOf({ kitchen: from, lines }), to, setting, anchor === undefined ? {} : { anchor });
}

const linesOf = ({ version }: ReturnType<typeof drafted>) => version.parts.flatMap(({ lines }) => lines);

describe('a part of an egg is beaten and measured, or comes to whole ones, and the batch stays the author’s', () => {
  const written = ['½ egg', 'half an egg, beaten', '1½ large eggs', '1½ eggs', '½ large egg white', '1½ egg yolks'];
  const froms = ['us', 'uk', 'eu'];
  const others = (from: string): string[] => kitchenIds.filter((id) => id !== from && id !== `${from}-scale`);

  test.for(froms.flatMap((from) => others(from).flatMap((to) => written.map((line) => [line, from, to] as const))))(
    '%s from %s to %s',
    ([line, from, to]) => {
      const result = drafted([line], from, to);
      expect(result.infeasible).toBeNull();
      expect(result.version.batchFactor.toString()).toBe('1');
      const [own] = linesOf(result);
      expect(own?.problems.map(({ problem }) => problem.rule)).toEqual([]);
      // Half of the least step: without a scale that is half a tablespoon, of one and a half.
      expect(own?.drift?.abs().toNumber()).toBeLessThan(0.25 / 1.5);
      const term = own?.stated?.statements[0]?.[0];
      expect(term?.unit).toMatch(/^(?:g|tbsp|tsp|cup|count)$/);
      if (term?.unit === 'count') expect(term.low.isInteger()).toBe(true);
    },
  );

  test.for([
    ['½ egg', 'us', 'uk', '25 g beaten egg'],
    ['half an egg, beaten', 'us', 'eu', '25 g egg, beaten'],
    ['1½ large eggs, lightly beaten', 'us', 'uk', '75 g egg, lightly beaten'],
    ['1½ eggs (size M)', 'eu', 'uk', '75 g beaten egg'],
    ['1–1½ egg whites', 'us', 'uk', '30–50 g egg white'],
    ['½ large egg white', 'us', 'uk', '17 g egg white'],
    ['1½ egg yolks', 'us', 'eu', '25 g egg yolk'],
    ['½ egg', 'uk', 'us', '2 tbsp beaten egg'],
    ['½ egg, beaten, to glaze', 'us', 'uk', '1 egg, beaten, to glaze'],
  ] as const)('%s from %s in %s is %s', ([line, from, to, becomes]) => {
    expect(linesOf(drafted([line], from, to)).map(textOf)).toEqual([becomes]);
  });

  test('line by line too', () => {
    expect(textOf(converted('1½ eggs', 'us', 'uk'))).toBe('75 g beaten egg');
    expect(textOf(converted('½ egg, to glaze', 'us', 'eu'))).toBe('1 egg, to glaze');
  });

  test('an explicit anchor has whole ones', () => {
    const result = drafted(['1½ eggs', '1 cup milk'], 'us', 'uk', 'eggs');
    expect(result.infeasible).toBeNull();
    expect(linesOf(result)[0]?.stated?.statements[0]?.[0]?.low.isInteger()).toBe(true);
    expect(linesOf(result)[0]?.stated?.statements[0]?.[0]?.unit).toBe('count');
  });

  test('eggs that become one keep one size in their words', () => {
    const [line] = linesOf(drafted(['2 large eggs', '1 (15-oz) can black beans'], 'us', 'uk', 'eggs'));
    expect(line === undefined ? '' : textOf(line)).not.toMatch(/largelarge/);
  });
});
