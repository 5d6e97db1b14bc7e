import { readLine } from '@retare/core';
import { describe, expect, test } from 'vitest';
import type { LineLabel } from './corpus.ts';
import { sameFood, scoreLine } from './score.ts';

const label: LineLabel = {
  file: 'made-up.md',
  line: 1,
  text: '- 2 cups flour',
  kind: 'amount',
  amounts: [{ low: '2', high: null, unit: 'cup', approx: false }],
  pack: null,
  food: 'flour',
  prep: '',
  optional: false,
  ambiguous: false,
  strata: [],
};

describe('the scoring of a line', () => {
  test('what is read as labelled is right in every part', () => {
    expect(scoreLine(readLine('2 cups flour'), label)).toEqual({
      kind: 'right',
      amount: 'right',
      food: 'right',
      optional: 'right',
    });
  });

  test.for([
    ['another number', '3 cups flour'],
    ['another unit', '2 tbsp flour'],
    ['a range', '2-3 cups flour'],
    ['a word for about', 'about 2 cups flour'],
    ['a second statement', '2 cups (250 g) flour'],
    ['a pack', '2 (8-oz) bags flour'],
  ] as const)('%s is wrong', ([, line]) => {
    expect(scoreLine(readLine(line), label).amount).toBe('wrong');
  });

  test('an amount left alone is unread, and right only where the label is ambiguous', () => {
    expect(scoreLine(readLine('flour'), label).amount).toBe('unread');
    expect(scoreLine(readLine('flour'), { ...label, ambiguous: true }).amount).toBe('right');
  });

  test.for([
    ['Red Onions', 'red onion', true],
    ['fresh basil leaves', 'basil leaf', true],
    ['chicken', 'chicken broth', false],
    ['garlic powder', 'garlic', false],
    ['2 limes', 'limes', false],
    ['', 'salt', false],
  ] as const)('the foods “%s” and “%s” are the same: %s', ([read, labelled, same]) => {
    expect(sameFood(read, labelled)).toBe(same);
  });
});
