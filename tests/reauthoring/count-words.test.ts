import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { converted, recipeOf, textOf, versionOf } from './recipe-of.js';
import { setting } from './setting.js';

// Words that the larder's names hold: `rasher of bacon`, `gelatin sheet`, `celery rib`.
describe('a food that is counted by a part of it', () => {
  test.for([
    ['uk', '3 leaves gelatine', 'us', '3 sheets gelatin'],
    ['uk', '3 leaves of gelatine', 'us', '3 sheets of gelatin'],
    ['us', '2 sheets gelatin', 'uk', '2 sheets gelatine'],
    ['uk', '1 leaf gelatine', 'ca', '1 sheet gelatin'],
    ['uk', '4 rashers streaky bacon', 'us', '4 slices bacon'],
    ['uk', '1 rasher of streaky bacon', 'us', '1 slice of bacon'],
    ['uk', '4 rashers streaky bacon', 'au', '4 rashers streaky bacon'],
    ['us', '4 slices bacon', 'uk', '4 slices streaky bacon'],
    ['us', '2 ribs celery, sliced', 'uk', '2 sticks celery, sliced'],
    ['uk', '3 sticks celery', 'us', '3 ribs celery'],
    ['uk', '3 cloves garlic', 'us', '3 cloves garlic'],
    ['uk', '3 leaves sage', 'us', '3 leaves sage'],
  ] as const)('in %s %s is, in %s, %s', ([from, line, to, becomes]) => {
    expect(textOf(converted(line, from, to))).toBe(becomes);
  });

  test('keeps its word where another number of it is counted', () => {
    const lines = ['2 (15-oz) cans butter beans', '8 ribs celery', '8 leaves sage'];
    const result = reauthoredOf(recipeOf({ kitchen: 'us', lines }), 'au', setting, { anchor: 'butter beans' });
    const [, celery, sage] = result.version.parts[0]?.lines.map(textOf) ?? [];
    expect([celery, sage]).toEqual([
      expect.stringMatching(/^\d+ sticks celery$/u),
      expect.stringMatching(/^\d+ leaves sage$/u),
    ]);
  });
});

describe('a name that takes another one’s place', () => {
  test.for([
    ['uk', '100 g Plain Flour', 'us', /^[^A-Z]* all-purpose flour$/u],
    ['us', 'Heavy cream, 1 cup', 'uk', /^Double cream, /u],
    ['us', '1 bunch cilantro (coriander)', 'uk', /^1 bunch fresh coriander$/u],
    ['uk', '1 aubergine (eggplant), diced', 'us', /^1 eggplant, diced$/u],
    ['us', '1 cup powdered sugar (confectioners)', 'uk', /icing sugar \(confectioners\)$/u],
  ] as const)('in %s %s, in %s, has its capital at the head alone and stands once', ([from, line, to, becomes]) => {
    expect(textOf(converted(line, from, to))).toMatch(becomes);
  });

  test('has no bracket for a word that it says itself', () => {
    const post = {
      kitchen: 'us',
      lines: ['1 cup sugar', '1 cup heavy cream'],
      prose: 'Whip the heavy cream with the sugar.',
    };
    expect(versionOf(post, 'uk').parts[0]?.lines.map(textOf)).toEqual([
      '200 g granulated sugar',
      '240 ml double cream (heavy cream)',
    ]);
  });
});

test('packs of pieces are told as the pieces that a recipe counts', () => {
  const result = reauthoredOf(recipeOf({ kitchen: 'us', lines: ['8 hamburger buns'] }), 'ca', setting, {
    anchor: 'hamburger buns',
  });
  expect(result.version.parts[0]?.lines.map(textOf)).toEqual(['8 hamburger buns']);
});
