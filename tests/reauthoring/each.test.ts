import { amountAsWritten, isRefusal, linesIn, reauthor, statedIn, type VersionLine, versionFor } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from './recipe-in-post.js';
import { lineOf, recipeOf, rulesOf, textOf } from './recipe-of.js';
import { setting } from './setting.js';

function drafted(line: string, from: string, to: string): VersionLine {
  const result = reauthor(recipeOf({ kitchen: from, lines: [line] }), to, setting);
  const found = isRefusal(result) ? undefined : result.version.parts[0]?.lines[0];
  if (found === undefined) throw new RangeError(line);
  return found;
}

function foodsOf(text: string, kitchen = 'us'): (string | undefined)[] {
  const found = [];
  for (let line = lineOf(text, kitchen); ; line = line.plus) {
    found.push(line.food?.id);
    if (line.plus === undefined) return found;
  }
}

describe('an amount of each of several foods', () => {
  test.for([
    ['1 tsp each: cumin, paprika, oregano', ['ground-cumin', 'paprika', 'dried-oregano']],
    ['1 tsp each ground cumin & coriander', ['ground-cumin', 'ground-coriander']],
    ['¼ cup each of soy sauce and honey', ['soy-sauce', 'honey']],
    ['1 each red and green bell pepper', ['red-bell-pepper', 'green-bell-pepper']],
  ] as const)('%s', ([text, foods]) => {
    expect(foodsOf(text)).toEqual(foods);
  });

  test.for([
    ['1 tsp each cumin and paprika', 'uk', '1 tsp each cumin and paprika'],
    ['1 tbsp each cumin and paprika', 'au', '3 tsp each cumin and paprika'],
    ['½ cup each milk and cream', 'uk', '120 ml each milk and cream'],
    ['1 cup each flour and sugar', 'uk', '125 g flour and 200 g granulated sugar'],
    ['¼ cup each of soy sauce and honey', 'uk', '60 ml soy sauce and 85 g honey'],
    ['1 tsp each kosher salt and pepper', 'uk', '½ tsp fine sea salt and 1 tsp pepper'],
    ['1 each red and green bell pepper', 'au', '1 each red and green capsicum'],
    ['salt and pepper, ¼ tsp each', 'uk', 'salt and pepper, ¼ tsp each'],
    ['milk and cream, ½ cup each', 'uk', 'milk and cream, 120 ml each'],
    ['flour and sugar, 1 cup each', 'uk', '125 g flour and 200 g granulated sugar'],
    ['kosher salt and pepper, 1 tsp each', 'uk', '½ tsp fine sea salt and 1 tsp pepper'],
  ] as const)('%s in %s is %s', ([line, to, becomes]) => {
    const drawn = drafted(line, 'us', to);
    expect(textOf(drawn)).toBe(becomes);
    expect(rulesOf(drawn).filter((rule) => rule === 'unknown-food')).toEqual([]);
  });

  test('is bought of each', () => {
    const bought = linesIn(drafted('1 cup each flour and sugar', 'us', 'uk')).map((line) => line.bought?.packs.length);
    expect(bought).toEqual([1, 1]);
  });

  test('of one that is not known keeps the word', () => {
    expect(textOf(drafted('1 tbsp each cumin and mystery dust', 'us', 'au'))).toBe('3 tsp each cumin and mystery dust');
  });
});

test('the second food has the amount of the first, as it is written', () => {
  const { plus } = lineOf('1 heaped tsp each cumin and paprika', 'us');
  expect(plus === undefined ? null : amountAsWritten(plus.reading)).toBe('1 heaped tsp');
  expect(plus === undefined ? null : statedIn(plus.reading)?.statements[0]?.[0]?.fill).toBe('heaped');
});

test('shares of what is counted beside the first food follow it', () => {
  const recipe = recipeInPost(
    [
      ':::ingredients{kitchen=us}',
      '- 2 large eggs plus 2 yolks',
      '- 1 cup each flour and sugar',
      ':::',
      '',
      ':::method',
      '1. Whisk :amount[1 yolk]{of="yolks"} with :amount[½ cup]{of="sugar"}; then add the other :amount[1 yolk]{of="yolks"} and :amount[½ cup]{of="sugar"}.',
      ':::',
    ].join('\n'),
  );
  const texts = versionFor(recipe, 'uk', setting).steps.flatMap(({ mentions }) => mentions.map(({ text }) => text));
  expect(texts).toEqual(['1 medium yolk', '100 g', '1 medium yolk', '100 g']);
});

test.for([
  ['2 T each sugar and cornstarch', 'unreadable-amount', '2 T'],
  ['4 oz each heavy cream and whole milk', 'unreadable-amount', '4 oz'],
  ['⅛ tsp each ground cloves and nutmeg', 'unmeasurable', '⅛ tsp'],
  ['1 tsp each kosher salt and sugar', 'which-salt', '1 tsp'],
  ['1 tsp each sugar and kosher salt', 'which-salt', '1 tsp'],
] as const)('a finding about %s says what is written', ([line, rule, words]) => {
  const { parts } = versionFor(recipeOf({ kitchen: 'us', lines: [line] }), 'us', setting);
  const found = parts.flatMap(({ lines }) => lines.flatMap(({ problems }) => problems.map(({ problem }) => problem)));
  const texts = found.flatMap((problem) => (problem.rule === rule ? [problem.text] : []));
  expect(texts.length).toBeGreaterThan(0);
  expect(new Set(texts)).toEqual(new Set([words]));
});
