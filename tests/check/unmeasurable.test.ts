import { describe, expect, test } from 'vitest';
import { lines, said, ukLines } from './said.ts';

describe('unmeasurable', () => {
  test.for([
    {
      line: '130 g all-purpose flour',
      at: '130 g',
      text: 'A US kitchen has no scale to weigh `130 g` of all-purpose flour. Write `1 cup`',
    },
    {
      line: '**4½ tbsp** granulated sugar',
      at: '4½ tbsp',
      text: 'No spoon, cup, jug or scale of a US kitchen holds `4½ tbsp` of sugar. Write `¼ cup`',
    },
    {
      line: '⅛ tsp table salt',
      at: '⅛ tsp',
      text: '`⅛ tsp` of table salt is less than anything in a US kitchen measures. Write `¼ tsp`',
    },
  ])('names `$line` in a native version', ({ line, at, text }) => {
    expect(said(lines(line), 'unmeasurable', { kitchens: ['us'] })).toEqual([
      expect.objectContaining({ severity: 'error', kitchens: ['us'], at, text }),
    ]);
  });

  test.for([
    {
      line: '2.7 ml vanilla extract',
      text: 'No spoon, cup, jug or scale of a UK kitchen holds `2.7 ml` of vanilla extract. Write `½ tsp`',
    },
    { line: '1 cup plain flour', text: /^A UK kitchen has no measure for `1 cup` of plain flour\. Write `\d+ g`$/ },
  ])('names `$line` in an author-written version', ({ line, text }) => {
    expect(said(ukLines(line), 'unmeasurable')).toEqual([
      expect.objectContaining({
        severity: 'error',
        kitchens: ['uk'],
        text: typeof text === 'string' ? text : expect.stringMatching(text),
      }),
    ]);
  });

  test.for([
    '1 cup all-purpose flour',
    '¼ tsp baking powder',
    '1¼ cups milk',
    '1 cup (130 g) all-purpose flour',
    '2 bay leaves',
    // Sums of two tools: 1 tbsp + 1 tsp, ¼ cup + 1 tbsp, 2 tbsp + 1 tsp.
    '4 tsp vanilla extract',
    '5 tbsp all-purpose flour',
    '7 tsp sugar',
    '3–4 tbsp sugar',
  ])('says nothing of `%s`', (line) => {
    expect(said(lines(line), 'unmeasurable', { kitchens: ['us'] })).toEqual([]);
  });

  // 1 tbsp + 1 tsp; 60 ml on the jug + 1 tbsp.
  test.for(['4 tsp baking powder', '5 tbsp milk', '4–5 tbsp milk'])('says nothing of `%s` in the UK', (line) => {
    expect(said(ukLines(line), 'unmeasurable')).toEqual([]);
  });

  test('gives an author the tolerance of the settings, and no more', () => {
    // A scale of 5 g steps: 102 g is 2 % from 100 g.
    expect(said(ukLines('102 g plain flour'), 'unmeasurable')).toEqual([]);
    expect(said(ukLines('102 g plain flour'), 'unmeasurable', { tolerance: 0.001 })).toHaveLength(1);
  });

  test('never tells what else could be measured of a cure', () => {
    expect(said(lines('4 g pink curing salt'), 'unmeasurable')).toEqual([]);
    expect(said(lines('4 g pink curing salt'), 'unbuyable')).toEqual([]);
  });
});
