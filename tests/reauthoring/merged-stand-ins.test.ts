import { applyEdits, servedBy, type VersionLine } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { type Post, recipeOf } from './recipe-of.js';
import { setting } from './setting.js';

function linesOf(post: Post): VersionLine[] {
  const result = reauthoredOf(recipeOf(post), 'uk', setting);
  return result.version.parts.flatMap(({ lines }) => lines);
}

const textsOf = (post: Post): string[] => linesOf(post).map(({ line, alone }) => applyEdits(line.text, alone));

describe('stand-ins of several lines', () => {
  test('are in the amount of a line of the same food, which says so where the method does', () => {
    const lines = ['2 cups half-and-half', '1 cup heavy cream', '2 lb potatoes'];
    expect(textsOf({ kitchen: 'us', lines, prose: 'Warm the half-and-half.' })[1]).toMatch(
      /^\d+ ml double cream \(part of it for the half-and-half\)$/,
    );
    expect(textsOf({ kitchen: 'us', lines })[1]).toMatch(/^\d+ ml double cream$/);
  });

  test('give back what each line has of the amount', () => {
    const all = linesOf({ kitchen: 'us', lines: ['2 cups half-and-half', '1 cup heavy cream', '2 lb potatoes'] });
    const [half, cream] = all;
    const shared = half?.also.find(({ food }) => food?.id === 'heavy-cream');
    const parts = [shared?.portion.grams, cream?.portion.grams].map((grams) => grams?.toNumber() ?? 0);
    expect(parts[0]).toBeGreaterThan(80);
    expect((parts[0] ?? 0) + (parts[1] ?? 0)).toBeCloseTo(cream?.chosen.grams?.toNumber() ?? 0, 6);
    expect(cream && servedBy(cream, all).map(({ line }) => line.text)).toEqual(['2 cups half-and-half']);
  });

  test('stay apart where the author kept two lines of their food apart', () => {
    const lines = ['1 tbsp kosher salt', '½ cup (80 g) kosher salt', '2 lb potatoes', 'kosher salt, to taste'];
    expect(textsOf({ kitchen: 'us', lines })).toEqual([
      '10 g fine sea salt',
      '80 g fine sea salt',
      '900 g potatoes',
      'fine sea salt, to taste',
    ]);
  });
});
