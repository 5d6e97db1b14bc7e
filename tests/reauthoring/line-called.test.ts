import { isRefusal, lineCalled, reauthor } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { recipeOf } from './recipe-of.js';
import { setting } from './setting.js';

const recipe = recipeOf({
  kitchen: 'uk',
  lines: ['6 pork sausages', '2 × 400 g tins butter beans', '500 ml chicken stock'],
});
const lines = recipe.parts.flatMap(({ native }) => native.lines);

describe('a food that is called by the end of its name', () => {
  test.for([
    ['sausages', '6 pork sausages'],
    ['sausage', '6 pork sausages'],
    ['Beans', '2 × 400 g tins butter beans'],
    ['stock', '500 ml chicken stock'],
  ] as const)('is found: %s', ([name, text]) => {
    expect(lineCalled(lines)(name)?.text).toBe(text);
  });

  test.for(['pork', 'butter', 'sage', 'chicken', ''])(
    'is not found by what its name begins with or hides: %s',
    (name) => {
      expect(lineCalled(lines)(name)).toBeNull();
    },
  );

  test('is not found where two names end so, but where one is listed twice', () => {
    const stocks = recipeOf({
      kitchen: 'uk',
      lines: ['200 ml chicken stock', '100 ml fish stock', '1 red onion', '2 red onions'],
    });
    const called = lineCalled(stocks.parts.flatMap(({ native }) => native.lines));
    expect(called('stock')).toBeNull();
    expect(called('onion')?.text).toBe('1 red onion');
  });

  test('can be the anchor', () => {
    const [short, whole] = ['beans', 'butter beans'].map((anchor) => reauthor(recipe, 'us', setting, { anchor }));
    if (short === undefined || isRefusal(short)) throw new Error('`beans` was refused');
    expect(short.anchor).toBe('butter beans');
    expect(whole).toEqual(short);
  });
});
