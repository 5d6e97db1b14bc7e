import { describe, expect, test } from 'vitest';
import { lines, said, ukLines } from './said.ts';

describe('unbuyable', () => {
  test('names a pack size that no shop has, and the nearest', () => {
    expect(said(lines('1 (13-oz) can butter beans'), 'unbuyable', { kitchens: ['us'] })).toEqual([
      {
        severity: 'error',
        kitchens: ['us'],
        at: '1 (13-oz) can',
        text: 'US shops sell butter beans in 15 oz and 15½ oz cans, so `1 (13-oz) can` cannot be bought. Write `1 (15-oz) can`',
        expected: ['1 (15-oz) can'],
      },
    ]);
  });

  test('names part of a pack that is used whole, in an author-written version', () => {
    expect(said(ukLines('390 g butter beans'), 'unbuyable')).toEqual([
      expect.objectContaining({
        severity: 'error',
        kitchens: ['uk'],
        at: '390 g',
        text: 'UK shops sell butter beans in 400 g tins, which a cook uses whole, so `390 g` cannot be bought. Write `1 × 400 g tin`, or make butter beans the anchor',
      }),
    ]);
  });

  test('names the fewest packs of as much', () => {
    const [found] = said(ukLines('700 g minced beef'), 'unbuyable');
    expect(found?.expected).toEqual(['1 × 750 g pack']);
  });

  test.for([
    '1 packet active dry yeast (2¼ tsp)',
    '1 package (2¼ teaspoons) active dry yeast',
    '2 packets active dry yeast (4½ tsp)',
    '1 (¼-oz) packet active dry yeast',
  ])('knows a packet by the spoons that are in it: %s', (line) => {
    expect(said(lines(line), 'unbuyable', { kitchens: ['us', 'uk', 'ca'] })).toEqual([]);
  });

  test('names half an egg', () => {
    expect(said(lines('1½ large eggs'), 'unbuyable', { kitchens: ['us'] })).toEqual([
      expect.objectContaining({
        at: '1½',
        text: 'US shops sell eggs whole, so `1½` of them cannot be bought. Write `1` or `2`',
        expected: ['1', '2'],
      }),
    ]);
  });

  test.for([
    ['2 jumbo eggs', ['uk'], 'jumbo'],
    ['3 medium eggs', ['au'], 'medium'],
    ['2 small egg yolks', ['au'], 'small'],
  ] as const)('names a size of eggs that no shop has: %s', ([line, [kitchen], at]) => {
    const post = lines(line).replace('=us', `=${kitchen}`);
    const [found] = said(post, 'unbuyable', { kitchens: [kitchen], kitchen });
    expect(found).toMatchObject({ severity: 'error', kitchens: [kitchen], at });
    expect(found?.text).toContain(`sell no \`${at}\` egg`);
  });

  test.for([
    ['2 jumbo eggs', 'us'],
    ['2 very large eggs', 'uk'],
    ['2 large eggs', 'au'],
    ['1 small onion', 'au'],
  ] as const)('says nothing of a size that is sold, nor of what is no egg: %s in %s', ([line, kitchen]) => {
    expect(said(lines(line).replace('=us', `=${kitchen}`), 'unbuyable', { kitchens: [kitchen], kitchen })).toEqual([]);
  });

  test('names a food that is not sold there, with what could stand in', () => {
    const [found] = said(ukLines('½ cup half-and-half'), 'unbuyable');
    expect(found?.text).toMatch(
      /^UK shops do not sell half-and-half, so `½ cup` cannot be bought\. Re-author the line with /,
    );
  });

  test('is a warning for what conversion gives, and quotes the words that stand there', () => {
    const found = said(lines('½ (15-oz) can butter beans'), 'unbuyable').find(({ kitchens }) =>
      kitchens.includes('uk'),
    );
    expect(found).toMatchObject({ severity: 'warning', at: '½ (15-oz) can' });
    expect(found?.text).toContain('so `215 g` (your `½ (15-oz) can`) cannot be bought');
  });

  test('is an error for what conversion gives in a kitchen that must hold', () => {
    const found = said(lines('½ (15-oz) can butter beans'), 'unbuyable', { mustHold: ['uk'] });
    expect(found.map(({ severity }) => severity)).toEqual(['error', 'error']);
  });

  test('is one finding for kitchens whose words are the same', () => {
    const found = said(lines('½ (15-oz) can butter beans'), 'unbuyable', { kitchens: ['us', 'uk', 'eu'] });
    expect(found.map(({ kitchens }) => kitchens)).toEqual([['us'], ['uk', 'eu']]);
    expect(found[1]?.text).toMatch(/^UK and EU shops sell butter beans/);
  });

  test('names a can of what comes in other containers there', () => {
    expect(said(ukLines('1 tin chicken stock'), 'unbuyable')).toEqual([
      expect.objectContaining({
        severity: 'error',
        kitchens: ['uk'],
        at: '1 tin',
        text: 'UK shops sell chicken stock in 500 ml pouches, so `1 tin` cannot be bought. Re-author the line',
      }),
    ]);
  });

  test.for([
    { line: '2 (15-oz) cans butter beans', why: 'whole packs' },
    { line: '2 large eggs', why: 'whole pieces' },
    { line: '1.25 lb boneless chicken thighs', why: 'a step of the counter' },
    { line: '1 flibbertigibbet', why: 'a food of which nothing is known' },
  ])('says nothing of `$line`: $why', ({ line }) => {
    expect(said(lines(line), 'unbuyable', { kitchens: ['us'] })).toEqual([]);
  });

  test('can be a warning, or off, by the settings', () => {
    const post = lines('1½ large eggs');
    const of = (severity: 'warning' | 'off') =>
      said(post, 'unbuyable', { kitchens: ['us'], severity: { unbuyable: severity } });
    expect(of('warning').map(({ severity }) => severity)).toEqual(['warning']);
    expect(of('off')).toEqual([]);
  });

  test('says the amount of each of several foods', () => {
    const found = said(lines('1 lb each ground beef and ground pork'), 'unbuyable', { kitchens: ['uk'] });
    expect(found.map(({ text }) => /so (.*) cannot/u.exec(text)?.[1])).toEqual([
      '`455 g` (your `1 lb`)',
      '`455 g` (your `1 lb`)',
    ]);
  });
});
