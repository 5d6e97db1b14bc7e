import { Exact, versionFor } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from './recipe-in-post.ts';

/** Grams that a US line weighs. */
function grams(line: string): string | undefined {
  const { foods, kitchens } = builtInLarder();
  const recipe = recipeInPost(`:::ingredients{kitchen=us}\n- ${line}\n:::\n`);
  const version = versionFor(recipe, 'uk', { foods, kitchens, tolerance: new Exact('0.05') });
  return version.parts[0]?.lines[0]?.native.grams?.toDecimalPlaces(1).toString();
}

const cups = [
  { line: '1 cup all-purpose flour', weighs: '125', source: 'USDA SR26 20081, cup' },
  { line: '1 cup sifted all-purpose flour', weighs: '113.4', source: 'GNU Units 3.15, all-purpose flour, sifted' },
  {
    line: '1 cup all-purpose flour, sifted',
    weighs: '125',
    source: 'sifted after it is measured: common practice, no source',
  },
  { line: '1 cup sifted powdered sugar', weighs: '100', source: 'USDA SR26 19336, cup sifted' },
  { line: '1 cup powdered sugar, sifted', weighs: '120', source: 'USDA SR26 19336, cup unsifted' },
] as const;

describe('a cup of something sifted', () => {
  test.for(cups)('$line weighs $weighs g: $source', ({ line, weighs }) => {
    expect(grams(line)).toBe(weighs);
  });
});
