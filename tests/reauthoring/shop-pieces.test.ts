import { isRefusal, reauthor } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { converted, recipeOf, textOf } from './recipe-of.js';
import { setting } from './setting.js';

function drafted(line: string, from: string, to: string): string {
  const result = reauthor(recipeOf({ kitchen: from, lines: [line, '1 onion'] }), to, setting);
  if (isRefusal(result) || result.infeasible !== null) throw new RangeError(line);
  const [first] = result.version.parts[0]?.lines ?? [];
  return first === undefined ? '' : textOf(first);
}

// Packs are the larder's: a US block of cream cheese holds 8 oz, of tofu 14 oz; a UK block of butter 250 g, of feta 200 g.
describe('a block is that of the author’s shops', () => {
  test.for([
    ['1 block cream cheese', 'us', 'uk', '225 g cream cheese'],
    ['1 block firm tofu', 'us', 'uk', '1 × 400 g block firm tofu'],
    ['1 bar dark chocolate', 'us', 'eu', '115 g dark chocolate'],
    ['½ block feta', 'uk', 'eu', '100 g feta'],
    ['1 block butter', 'uk', 'eu', '1 × 250 g block butter'],
    ['1 sheet puff pastry', 'au', 'uk', '1 × 375 g sheet puff pastry'],
    ['1 box (17.3 oz) puff pastry sheets', 'us', 'eu', '2 × 275 g sheets puff pastry'],
    ['1 log goat cheese', 'us', 'uk', '1 × 125 g log goat’s cheese'],
  ] as const)('%s from %s in %s is %s', ([line, from, to, becomes]) => {
    const straight = (text: string): string => text.replaceAll('’', "'");
    expect(straight(drafted(line, from, to))).toBe(straight(becomes));
  });

  test('line by line too', () => {
    expect(textOf(converted('1 block butter', 'uk', 'us'))).toBe('1 cup + 2 tbsp butter');
    expect(textOf(converted('1 block cream cheese', 'us', 'au'))).toBe('225 g cream cheese');
  });

  test('and where only the reader’s shops have such a piece it is no other’s', () => {
    expect(drafted('1 sheet puff pastry', 'us', 'au')).toBe('250 g puff pastry');
  });

  test.for(['1 loaf bread', '2 sheets filo pastry', '1 wedge parmesan', '2 lemons', '1 head garlic'])(
    'what shops sell in no such pieces stays counted: %s',
    (line) => {
      expect(drafted(line, 'us', 'uk')).toBe(line);
    },
  );
});

test('an abbreviated size keeps its weight, and takes its full stop along', () => {
  expect(textOf(converted('2 lg. eggs', 'us', 'uk'))).toBe('2 medium eggs');
  expect(converted('1 sm. onion', 'us', 'uk').drift?.toNumber()).toBe(0);
  expect(textOf(converted('1 brick cream cheese', 'ca', 'uk'))).toBe('250 g cream cheese');
});

test('an onion is halved for a batch of another size, and a bay leaf is not', () => {
  const lines = ['2 × 400 g tins cannellini beans', '2 onions', '2 bay leaves', '2 star anise'];
  const result = reauthor(recipeOf({ kitchen: 'uk', lines }), 'ca', setting, { anchor: 'cannellini beans' });
  if (isRefusal(result) || result.infeasible !== null) throw new RangeError('No version.');
  const [, onions, leaves, stars] = result.version.parts[0]?.lines.map(textOf) ?? [];
  expect(result.version.batchFactor.toNumber()).toBeGreaterThan(1.2);
  expect(onions).toBe('2½ onions');
  expect([leaves, stars]).toEqual([
    expect.stringMatching(/^[23] bay leaves$/),
    expect.stringMatching(/^[23] star anise$/),
  ]);
});
