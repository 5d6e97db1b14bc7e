import { Exact, isRefusal, ratiosOfVersion, reauthor } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from '../reauthoring/recipe-in-post.js';
import { kitchenIds, setting } from '../reauthoring/setting.js';
import { messagesOf, wordsAt } from './checked.js';

const bread = ['500 g strong white bread flour', '350 g water', '10 g fine salt', '7 g fast-action dried yeast'];

function post(version: readonly string[], { kitchen = 'eu', native = bread, from = 'uk' } = {}): string {
  const list = (lines: readonly string[]): string => lines.map((line) => `- ${line}`).join('\n');
  return `---\nretare:\n  kitchen: ${from}\n---\n\n:::ingredients{kitchen=${from}}\n${list(native)}\n:::\n\n:::ingredients{kitchen=${kitchen}}\n${list(version)}\n:::\n`;
}

const drifts = (version: readonly string[], options?: Parameters<typeof post>[1]) =>
  messagesOf(post(version, options), 'ratio-drift');

describe('ratio-drift', () => {
  test('says nothing of a version that keeps its ratios', () => {
    expect(drifts(['500 g bread flour', '350 g water', '10 g salt', '7 g instant yeast'])).toEqual([]);
  });

  test('says nothing of a larger batch of the same dough', () => {
    expect(drifts(['1 kg bread flour', '700 g water', '20 g salt', '14 g instant yeast'])).toEqual([]);
  });

  test('tells by how much a ratio is bent, its limit, and what to write', () => {
    const [message, ...others] = drifts(['500 g bread flour', '400 g water', '10 g salt', '7 g instant yeast']);
    expect(others).toEqual([]);
    expect(message?.reason).toBe(
      'Water in this EU version is 14 % above the native ratio to flour; its limit is 3 %. Write `350 g` for `400 g`',
    );
    expect(message?.fatal).toBe(false);
    expect(message?.note).toBe('native 70 g to 100 g of flour, here 80 g');
  });

  test('stands at the amount that an author would edit', () => {
    const text = post(['500 g bread flour', '400 g water', '10 g salt', '7 g instant yeast']);
    const [message] = messagesOf(text, 'ratio-drift');
    expect(message && wordsAt(text, message)).toBe('400 g');
  });

  test('holds one salt against another by weight', () => {
    const us = { native: ['2 lb kale', '2 tsp kosher salt (5.6 g)'], from: 'us', kitchen: 'uk' };
    expect(drifts(['900 g kale', '1 tsp fine sea salt'], us)).toEqual([]);
    const [message] = drifts(['900 g kale', '2 tsp fine sea salt'], us);
    expect(message?.reason).toMatch(/^Fine sea salt in this UK version is \d+ % above the native ratio; its limit is/);
  });

  test('counts what self-raising flour holds as leavening and flour', () => {
    const native = ['225 g self-raising flour', '225 g caster sugar', '225 g unsalted butter', '4 eggs'];
    const plain = ['225 g plain flour', '225 g caster sugar', '225 g unsalted butter', '4 eggs'];
    const names = drifts(plain, { native, kitchen: 'au' }).map(({ reason }) => reason);
    expect(names).toContainEqual(
      expect.stringMatching(/^This Australian version leaves out baking powder, .* ratio to flour/),
    );
    expect(names).toContainEqual(expect.stringMatching(/^Eggs in this Australian version are 19 % below/));
    expect(drifts([...plain, '2½ tsp baking powder'], { native, kitchen: 'au' })).toHaveLength(3);
  });

  test('counts the salt in self-rising flour of the US beside what the recipe has', () => {
    const native = ['250 g self-raising flour', '1 tsp fine salt', '150 g unsalted butter'];
    const us = (salt: string) =>
      drifts(['2 cups self-rising flour', salt, '5 oz unsalted butter'], { native, kitchen: 'us' });
    const [message] = us('1 tsp table salt').map(({ reason }) => reason);
    expect(message).toMatch(/^.*[Ss]alt in this US version is \d+ % above the native ratio/);
    expect(us('½ tsp table salt').filter(({ reason }) => /salt/i.test(reason))).toEqual([]);
  });

  test('tells of a food that is left out', () => {
    const [message] = drifts(['500 g bread flour', '350 g water', '7 g instant yeast']);
    expect(message?.reason).toMatch(
      /^This EU version leaves out fine salt, and its native ratio may drift by \d+ % only/,
    );
  });

  test('says nothing where a line cannot be weighed', () => {
    expect(drifts(['500 g bread flour', '350 g water', '1 pinch glimmersalt', '7 g instant yeast'])).toEqual([]);
  });

  test('leaves a preserve alone', () => {
    const text = post(['500 g bread flour', '400 g water']).replace('retare:\n', 'retare:\n  preserve: true\n');
    expect(messagesOf(text, 'ratio-drift')).toEqual([]);
  });
});

describe('ratios of a version', () => {
  test('are all within limits where the version is the native one', () => {
    const recipe = recipeInPost(post(bread, { kitchen: 'eu' }));
    const [part] = recipe.parts;
    const [authored] = part?.authored ?? [];
    if (part === undefined || authored === undefined) throw new RangeError('The post has a version.');
    const ratios = ratiosOfVersion(part, authored, { recipe, setting });
    expect(ratios.map(({ name }) => name)).toContain('water : flour');
    for (const { drift } of ratios) expect(Math.abs(drift)).toBeLessThan(1e-9);
  });

  test('are those that re-authoring keeps', () => {
    const recipe = recipeInPost(post(bread));
    for (const kitchen of kitchenIds.filter((id) => id !== 'uk')) {
      const result = reauthor(recipe, kitchen, { ...setting, tolerance: new Exact('0.05') });
      if (isRefusal(result)) throw new RangeError(kitchen);
      expect(result.infeasible).toBeNull();
      for (const { native, version, limit } of result.ratios)
        expect(Math.abs(version / native - 1)).toBeLessThanOrEqual(limit + 1e-9);
    }
  });
});
