import { describe, expect, test } from 'vitest';
import { lines, said } from './said.ts';

const post = (oven: string, more = ''): string =>
  `${lines('2 bay leaves')}\n:::method\nHeat to :oven[${oven}].\n:::\n${more}`;

describe('oven-beyond-dial', () => {
  test('tells what the recipe asks for and how far the ovens of a kitchen go', () => {
    expect(said(post('550°F'), 'oven-beyond-dial', { kitchens: ['us', 'uk', 'eu'] })).toEqual([
      expect.objectContaining({
        severity: 'warning',
        kitchens: ['uk', 'eu'],
        at: '550°F',
        text: 'UK and EU ovens go no higher than 250°C, and `550°F` is hotter, 288°C. Write a `method` for that kitchen that says what a cook there does, or excuse the line',
      }),
    ]);
  });

  test('says nothing where the author wrote a method for the kitchen that can be set there', () => {
    const uk = '\n:::method{kitchen=uk}\nHeat to :oven[250°C], and bake a little longer.\n:::\n';
    expect(said(post('550°F', uk), 'oven-beyond-dial')).toEqual([]);
  });

  test('names what an author wrote for a kitchen that cannot be set there', () => {
    expect(said(post('700°F'), 'oven-beyond-dial', { kitchens: ['us'] })).toEqual([
      expect.objectContaining({
        severity: 'warning',
        kitchens: ['us'],
        text: expect.stringMatching(/^US ovens go no higher than 550°F, and `700°F` is hotter\. Write /u),
      }),
    ]);
  });

  test.for(['500°F', '350°F', '180°C', 'gas 4'])('says nothing of `%s`', (oven) => {
    expect(said(post(oven), 'oven-beyond-dial')).toEqual([]);
  });
});
