import { type AuthoredRatio, Exact, ratiosOfVersion, writeStated } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { recipeOf } from './recipe-of.js';
import { foodOf, larderOf, soldAs } from './sample-food.js';
import { kitchen } from './setting.js';

const loose = { any: soldAs([], { loose: true }) };
const within = larderOf(
  foodOf(loose, { id: 'gloop' }),
  foodOf(loose, { id: 'meal', role: 'flour' }),
  foodOf(loose, { id: 'brine', role: 'salt' }),
  foodOf(loose, { id: 'glint', role: 'seasoning' }),
  foodOf(loose, { id: 'sour', role: 'acid' }),
  foodOf(loose, { id: 'sharp', role: 'acid' }),
  foodOf(loose, { id: 'sweet', role: 'sugar' }),
  foodOf(loose, { id: 'juice', role: 'liquid', pours: true }),
  foodOf(loose, { id: 'lard', role: 'fat' }),
  foodOf(loose, { id: 'spread', role: 'fat', contains: [{ food: 'brine', share: new Exact('0.2') }] }),
);

/** The guarded ratios of a version for a kitchen against native lines of the EU kitchen, by name. */
function ratios(native: readonly string[], lines: readonly string[], to = 'uk'): Record<string, AuthoredRatio> {
  const recipe = recipeOf({ kitchen: 'eu', lines: native, versions: [{ kitchen: to, lines }] }, within);
  const [part] = recipe.parts;
  const [authored] = part?.authored ?? [];
  if (part === undefined || authored === undefined) throw new RangeError('One part, one version.');
  return Object.fromEntries(
    ratiosOfVersion(part, authored, { recipe, setting: within }).map((each) => [each.name, each]),
  );
}

describe('a guarded ratio of a version', () => {
  test.for([
    { sugar: 120, limit: 0.03 },
    { sugar: 101, limit: 0.03 },
    { sugar: 99, limit: 0.1 },
  ])('of $sugar g of sugar to 1000 g of flour is held within $limit', ({ sugar, limit }) => {
    const lines = ['1000 g meal', `${sugar} g sweet`];
    expect(ratios(lines, lines)['sweet : flour']?.limit).toBe(limit);
  });

  test('leaves the salt in a fat out of the fat', () => {
    const found = ratios(['500 g meal', '100 g lard'], ['500 g meal', '100 g spread']);
    expect(found['lard : flour']?.drift).toBeCloseTo(-0.2, 9);
  });

  test('is bent by a salt that is left out, and by no seasoning that is', () => {
    const found = ratios(['500 g gloop', '10 g brine', '5 g glint'], ['500 g gloop']);
    expect(found['salt : whole']?.drift).toBe(-1);
    expect(found).not.toHaveProperty('glint : whole');
  });

  test('counts an acid that is left out, though another is there without an amount', () => {
    const found = ratios(['500 g gloop', '10 g brine', '100 g sour'], ['500 g gloop', '10 g brine', 'sharp']);
    expect(found['salt : whole']?.drift).toBeCloseTo(610 / 510 - 1, 9);
  });

  test.for([
    // ¼ tsp is 1.232 ml: a tenth more than 1.114 is beyond the limit of 6 %.
    { juice: '1.22', instead: '¼ tsp' },
    { juice: '1.13', instead: null },
  ])('names what to write only where it keeps the limit: $juice ml to 5 g', ({ juice, instead }) => {
    const found = ratios(['5 g meal', `${juice} ml juice`], ['1 tsp meal', '½ tsp juice'], 'us')['juice : flour'];
    const write = found?.instead == null ? null : writeStated(found.instead, kitchen('us'));
    expect([found?.limit, write]).toEqual([0.06, instead]);
  });
});
