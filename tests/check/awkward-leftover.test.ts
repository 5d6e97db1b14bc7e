import { describe, expect, test } from 'vitest';
import { lines, said, ukLines } from './said.ts';

describe('awkward-leftover', () => {
  test('names a remainder that spoils or is too little to keep', () => {
    const [found] = said(ukLines('475 ml whole milk'), 'awkward-leftover');
    expect(found).toMatchObject({ severity: 'warning', kitchens: ['uk'], at: '475 ml', expected: [] });
    expect(found?.text).toMatch(
      /^For `475 ml` a UK cook buys a 568 ml bottle of whole milk and has \d+ g left, (too little to be worth keeping|which keep \d+ days)\. Use all of it, or say what to do with the rest$/,
    );
  });

  test('is a warning for a kitchen that must hold too', () => {
    const found = said(lines('2 cups milk'), 'awkward-leftover', { mustHold: ['uk'] });
    expect(found.every(({ severity }) => severity === 'warning')).toBe(true);
  });

  test.for(['568 ml whole milk', '100 g plain flour', '2 bay leaves'])('says nothing of `%s`', (line) => {
    expect(said(ukLines(line), 'awkward-leftover')).toEqual([]);
  });

  test('is judged by what all lines leave together', () => {
    const milk = (...amounts: string[]): string[] =>
      said(ukLines(...amounts.map((amount) => `${amount} whole milk`)), 'awkward-leftover').map(({ text }) => text);
    expect(milk('475 ml')).toHaveLength(1);
    expect(milk('475 ml', '90 ml')).toEqual([]);
    expect([...milk('300 ml'), ...milk('175 ml')]).toEqual([]);
    expect(milk('300 ml', '175 ml')).toEqual([
      expect.stringMatching(/^For `300 ml \+ 175 ml` a UK cook buys a 568 ml bottle of whole milk and has \d+ g left/u),
    ]);
  });
});
