import { type Reauthored, type Recipe, ratiosOfVersion, type VersionLine, versionFor } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeInPost } from './recipe-in-post.js';
import { textOf } from './recipe-of.js';
import { kitchenIds, setting } from './setting.js';

const dough = ['3 cups bread flour', '1 cup milk', '¼ cup sugar', '2 tsp instant yeast', '1 tsp fine salt'];

function post(lines: readonly string[], { method = '', more = '' } = {}): Recipe {
  const list = lines.map((line) => `- ${line}`).join('\n');
  return recipeInPost(
    `---\nretare:\n  kitchen: us\n---\n\n:::ingredients{kitchen=us}\n${list}\n:::\n\n${more}\n\n:::method\n1. ${method}\n:::\n`,
  );
}

function drafted(recipe: Recipe, to: string): Reauthored {
  return reauthoredOf(recipe, to, setting);
}

const linesOf = ({ version }: Pick<Reauthored, 'version'>): VersionLine[] =>
  version.parts.flatMap(({ lines }) => lines);
const last = (result: Pick<Reauthored, 'version'>): string => linesOf(result).map(textOf).at(-1) ?? '';

describe('an egg to glaze with', () => {
  test.for([
    '1 egg, beaten, to glaze',
    '1 egg, for the egg wash',
    '1 egg (for egg wash)',
    '1 egg beaten with 1 tbsp water, for brushing',
    '1 egg yolk, beaten with 2 tsp milk, to glaze',
    '1 egg, lightly beaten, for sealing',
  ])('sets no batch and no size, and is counted as it was: %s', (line) => {
    const [plain, glazed] = [post(dough), post([...dough, line])];
    for (const to of kitchenIds.filter((id) => id !== 'us')) {
      const [without, result] = [drafted(plain, to), drafted(glazed, to)];
      expect([to, result.anchor, result.version.batchFactor.toString()]).toEqual([
        to,
        null,
        without.version.batchFactor.toString(),
      ]);
      expect(last(result)).toMatch(/^1 egg/);
      expect(last(result)).not.toMatch(/medium|large|small|size|carton/);
      const shown = (each: Reauthored) => linesOf(each).slice(0, dough.length).map(textOf);
      expect(shown(result)).toEqual(shown(without));
      expect(result.ratios).toEqual(without.ratios);
      expect(last({ version: versionFor(glazed, to, setting) })).toBe(last(result));
    }
  });

  test.for([
    { what: 'a part of its own', more: ':::ingredients[For the glaze]{kitchen=us}\n- 1 egg\n- 1 tbsp milk\n:::' },
    { what: 'the method', method: 'Brush the tops with the beaten egg.', line: '1 egg' },
    { what: 'the method', method: 'Beat the egg with a pinch of salt, and brush it over the buns.', line: '1 egg' },
  ])('is known by what is said of it in $what: $method', ({ more = '', method = '', line }) => {
    const recipe = post(line === undefined ? dough : [...dough, line], { more, method });
    for (const to of ['uk', 'nz']) {
      const result = drafted(recipe, to);
      const egg = linesOf(result).find(({ food }) => food?.id === 'egg');
      expect([to, result.anchor, egg === undefined ? '' : textOf(egg), egg?.drift]).toEqual([to, null, '1 egg', null]);
    }
  });

  test.for([
    { line: '2 eggs, plus 1 for brushing', method: 'Knead.' },
    { line: '3 eggs (1 for the glaze)', method: 'Knead.' },
    { line: '2 eggs', method: 'Beat the eggs into the dough. Brush the pan with butter.' },
    { line: '2 eggs', method: 'Whisk the eggs and milk, then brush the tops with water.' },
    { line: '2 eggs', method: 'Mix everything. Glaze the buns with honey.' },
  ])('is not one that goes into the dough as well: $line / $method', ({ line, method }) => {
    const result = drafted(post([...dough, line], { method }), 'uk');
    const egg = linesOf(result).find(({ food }) => food?.id === 'egg');
    expect(egg?.drift).not.toBeNull();
  });

  test('may be known by both: egg that is thinned with water, where egg is brushed on', () => {
    const eggsIn = (method: string) => {
      const lines = [...dough, '3 large eggs', '1 large egg, beaten with 1 tsp water'];
      return linesOf(drafted(post(lines, { method }), 'uk')).filter(({ food }) => food?.id === 'egg');
    };
    const [inDough, onTop] = eggsIn('Beat in the eggs. Brush the loaf with the beaten egg.');
    expect([inDough?.drift === null, onTop?.drift]).toEqual([false, null]);
    expect(eggsIn('Beat in the eggs. Brush the loaf with honey.').map(({ drift }) => drift === null)).toEqual([
      false,
      false,
    ]);
  });

  test('is of the size of the other eggs, where a size is named', () => {
    const result = drafted(post([...dough, '4 large eggs', '1 large egg, beaten, to glaze']), 'uk');
    const eggs = linesOf(result).filter(({ food }) => food?.id === 'egg');
    expect(new Set(eggs.map(({ stated }) => stated?.eggSize)).size).toBe(1);
  });

  test('bends no ratio of a version that its author wrote', () => {
    const version =
      ':::ingredients{kitchen=uk}\n- 385 g strong white bread flour\n- 240 ml milk\n- 50 g sugar\n- 6 g fast-action dried yeast\n- 6 g fine salt\n- 2 large eggs, beaten, to glaze\n:::';
    const recipe = post([...dough, '1 egg, to glaze'], { more: version });
    const [part] = recipe.parts;
    const [authored] = part?.authored ?? [];
    if (part === undefined || authored === undefined) throw new RangeError('The post has a version.');
    const ratios = ratiosOfVersion(part, authored, { recipe, setting });
    expect(ratios.map(({ name }) => name)).not.toContain('egg : flour');
    for (const { drift, limit } of ratios) expect(Math.abs(drift)).toBeLessThanOrEqual(limit);
  });
});

describe('eggs that are served one to a plate', () => {
  test.for(kitchenIds.filter((id) => id !== 'us'))('stay as many in %s', (to) => {
    const recipe = post(['1½ lb potatoes', '2 tbsp olive oil', '4 large eggs, fried, to serve']);
    expect(last(drafted(recipe, to))).toMatch(/^4 (?:large |medium )?eggs, fried, to serve$/);
    expect(last({ version: versionFor(recipe, to, setting) })).toMatch(/^4 (?:large |medium )?eggs, fried, to serve$/);
  });
});

describe('eggs that stay in one piece', () => {
  const salad = ['1½ lb potatoes', '½ cup mayonnaise', '2 tsp mustard'];

  test.for([
    { line: '6 hard-boiled eggs, quartered', method: 'Toss everything.' },
    { line: '6 eggs, soft boiled', method: 'Toss everything.' },
    { line: '12 eggs', method: 'Boil them for 10 minutes.', makes: '24 deviled eggs' },
    { line: '12 large eggs', method: 'Boil the eggs for 10 minutes. Cool, peel and halve the eggs.' },
    { line: '6 large eggs', method: 'Make six wells and crack an egg into each. Cook until the eggs are set.' },
    { line: '4 eggs', method: 'Fry the eggs in butter. Top each plate with an egg.' },
  ])('are as many in every kitchen: $line / $method', ({ line, method, makes = '4 plates' }) => {
    const count = line.slice(0, line.indexOf(' '));
    for (const to of kitchenIds.filter((id) => id !== 'us')) {
      const recipe = { ...post([...salad, line], { method }), makes };
      for (const version of [drafted(recipe, to).version, versionFor(recipe, to, setting)])
        expect([to, last({ version }).split(' ')[0]]).toEqual([to, count]);
    }
  });

  test.for([
    { line: '12 large eggs', method: 'Whisk the eggs with the cream. Boil the potatoes.' },
    { line: '12 large eggs', method: 'Boil the cream. Beat in the eggs.' },
    { line: '12 large eggs', method: 'Add the eggs one at a time, beating well after each.' },
    { line: '12 large eggs', method: 'Crack the eggs into a bowl and stir well.' },
    { line: '12 large eggs', method: 'Fry the onions, add the beaten eggs and cook until set.' },
  ])('are not those that are mixed: $line / $method', ({ line, method }) => {
    expect(last({ version: versionFor(post([...salad, line], { method }), 'uk', setting) })).toBe('10 large eggs');
  });
});

describe('eggs of one recipe', () => {
  const custard = ['2 cups heavy cream', '½ cup sugar', '2 large eggs', '3 large egg yolks'];

  test.for(kitchenIds.filter((id) => id !== 'us'))('are of one size in %s: nobody buys two for one dish', (to) => {
    const recipe = post(custard);
    for (const version of [drafted(recipe, to).version, versionFor(recipe, to, setting)]) {
      const eggs = linesOf({ version }).filter(({ food }) => food?.role === 'egg');
      const sizes = new Set(eggs.map(({ stated }) => stated?.eggSize ?? null));
      expect([to, eggs.map(textOf), sizes.size]).toEqual([to, eggs.map(textOf), 1]);
    }
  });
});
