import { applyEdits, versionFor } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeInPost } from './recipe-in-post.js';
import { recipeOf } from './recipe-of.js';
import { setting } from './setting.js';

/** A line as it is converted, and as it is re-authored. */
function both(line: string, from: string, to: string): string[] {
  const recipe = recipeOf({ kitchen: from, lines: [line] }, setting);
  const result = reauthoredOf(recipe, to, setting);
  return [versionFor(recipe, to, setting), result.version].flatMap((version) =>
    version.parts.flatMap((part) => part.lines.map((each) => applyEdits(each.line.text, each.edits))),
  );
}

describe('how many pieces an amount comes to', () => {
  test.for([
    ['1 cup diced carrots (about 2)', '130 g diced carrots (about 2)'],
    ['2 cups diced ripe mango (about 2 mangos)', '325 g diced ripe mango (about 2 mangos)'],
    ['½ cup chopped onion (1 small)', '80 g chopped onion (1 small)'],
  ] as const)('stays said: %s', ([line, becomes]) => {
    expect(both(line, 'us', 'uk')[1]).toBe(becomes);
  });

  test('is not said of a weight, which the amount itself states', () => {
    expect(both('1 cup carrots (about 5 oz)', 'us', 'uk')[1]).not.toContain('oz');
  });
});

describe('how firmly a cup is pressed', () => {
  test.for([
    ['1 cup firmly packed brown sugar', 'uk', '220 g light soft brown sugar'],
    ['1 cup basil leaves, loosely packed', 'uk', '25 g basil leaves'],
    ['2 cups baby spinach, washed and tightly packed', 'uk', '80 g baby spinach, washed'],
    ['1 cup (packed) brown sugar', 'uk', '220 g light soft brown sugar'],
  ] as const)('is nothing to a scale: %s in %s', ([line, to, becomes]) => {
    expect(both(line, 'us', to)[1]).toBe(becomes);
  });

  test('is said where a cup is filled', () => {
    expect(both('1 cup firmly packed brown sugar', 'uk', 'us')[1]).toContain('firmly packed');
    expect(both('2 tbsp packed brown sugar', 'us', 'uk')[1]).toContain('packed');
  });

  test('is not meant of what a food is packed in', () => {
    expect(both('1 cup olives packed in oil, drained', 'us', 'uk')[1]).toContain('packed in oil');
  });
});

describe('a name', () => {
  test('is said once where the line has its first word already', () => {
    expect(both('2 tbsp chopped fresh cilantro', 'us', 'uk')[1]).toBe('2 tbsp chopped fresh coriander');
  });

  test('is put in brackets for the method where it is another, and not where it is only spelt otherwise', () => {
    const post = (line: string, word: string) =>
      recipeInPost(`:::ingredients{kitchen=us}\n- ${line}\n:::\n\n:::method\n1. Stir in the ${word}.\n:::\n`);
    const inUk = (line: string, word: string) =>
      versionFor(post(line, word), 'uk', setting).parts.flatMap((part) =>
        part.lines.map((each) => applyEdits(each.line.text, each.edits)),
      );
    expect(inUk('½ tsp chili flakes', 'chili flakes')).toEqual(['½ tsp chilli flakes']);
    expect(inUk('1 eggplant', 'eggplant')).toEqual(['1 aubergine (eggplant)']);
  });
});

test('a capital at the head of a line stays', () => {
  expect(both('About 14 oz mushrooms', 'us', 'uk')[1]).toBe('About 400 g mushrooms');
});

test('what a bracket names is measured as that food is', () => {
  expect(both('6 g citric acid (or what is in 130 ml of lemon juice)', 'eu', 'uk')[1]).toContain(
    '130 ml of lemon juice',
  );
});

test('a juice that stands in for a fruit is measured by volume', () => {
  expect(both('2 lb tomatillos', 'us', 'uk')[1]).toMatch(/\d ml lime juice/);
});

describe('what a line without an amount of its own adds', () => {
  test.for([
    ['Salt, plus ½ cup honey', 'Salt, plus 170 g honey'],
    ['Olive oil, plus ¾ cup all-purpose flour', 'Olive oil, plus 95 g all-purpose flour'],
  ] as const)('is of the food that is named there, re-authored as converted: %s', ([line, becomes]) => {
    expect(both(line, 'us', 'uk')).toEqual([becomes, becomes]);
  });
});
