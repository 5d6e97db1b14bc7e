import { describe, expect, test } from 'vitest';
import { lines, said, ukLines } from './said.ts';

describe('unknown-food', () => {
  test('names a food that the larder does not know, once for all kitchens', () => {
    expect(said(lines('1 cup flibbertigibbet'), 'unknown-food')).toEqual([
      {
        severity: 'warning',
        kitchens: ['us'],
        at: 'flibbertigibbet',
        text: 'The larder has no `flibbertigibbet`, so it can be neither weighed nor checked. Use a name that the larder knows, or add the food to your larder file',
        expected: [],
      },
    ]);
  });

  test('is told of an author-written version by its own words', () => {
    expect(said(ukLines('100 g flibbertigibbet'), 'unknown-food').map(({ kitchens }) => kitchens)).toEqual([['uk']]);
  });

  test.for(['1 cup milk', '2 bay leaves', '*1 cup* heavy cream'])('says nothing of `%s`', (line) => {
    expect(said(lines(line), 'unknown-food')).toEqual([]);
  });
});

describe('unreadable-amount', () => {
  test('names an amount that can be read in two ways, in two sentences', () => {
    const [found] = said(lines('1 T sugar'), 'unreadable-amount');
    expect(found).toMatchObject({ severity: 'error', kitchens: ['us'], at: '1 T' });
    expect(found?.text).toMatch(/^.+\. .+$/);
  });

  test('stands at the words behind a wrapped line of a quotation', () => {
    const post = '> :::ingredients{kitchen=us}\n> - caster\n>   sugar, 1 T\n> :::\n';
    expect(said(post, 'unreadable-amount').map(({ at }) => at)).toEqual(['1 T']);
  });

  test.for(['1 tbsp sugar', '2 bay leaves', 'salt, to taste'])('says nothing of `%s`', (line) => {
    expect(said(lines(line), 'unreadable-amount')).toEqual([]);
  });
});
