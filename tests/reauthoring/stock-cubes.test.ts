import { expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeOf, textOf } from './recipe-of.js';
import { setting } from './setting.js';

test.for([
  // A US cube of beef weighs 3.6 g (USDA SR26 06076) and one of chicken 4.8 g (06081); elsewhere one of 10 g is common practice, no source.
  ['uk', 'us', '1 beef stock cube', '3 beef bouillon cubes'],
  ['uk', 'us', '2 chicken stock cubes', '4 chicken bouillon cubes'],
  ['us', 'ca', '4 beef bouillon cubes', '1½ beef bouillon cubes'],
  ['uk', 'au', '2 vegetable stock cubes', '2 vegetable stock cubes'],
  ['us', 'uk', '1 chicken bouillon cube', '½ chicken stock cube'],
] as const)('a stock cube is used by itself, and no box of them: %s to %s, %s', ([from, to, line, becomes]) => {
  const result = reauthoredOf(recipeOf({ kitchen: from, lines: [line, '2 carrots'] }), to, setting);
  expect(result.infeasible).toBeNull();
  expect(result.version.parts.flatMap((part) => part.lines.map(textOf))[0]).toBe(becomes);
});

test.for([
  ['2 chicken stock cubes', '3 chicken stock cubes'],
  ['1 vegetable stock cube', '1 vegetable stock cube'],
  ['2 flour tortillas', '3 flour tortillas'],
] as const)('what comes several in a box stays whole in a larger batch: %s', ([line, becomes]) => {
  // 500 g of mince come in packs of 500 g there, 400 g of them in none: the batch is a quarter larger. Common practice, no source.
  const lines = ['400 g lamb mince', line, '400 g potatoes', '4 carrots'];
  const result = reauthoredOf({ ...recipeOf({ kitchen: 'uk', lines }), anchor: 'lamb mince' }, 'eu', setting);
  expect(result.version.batchFactor.toString()).toBe('1.25');
  expect(result.version.parts.flatMap((part) => part.lines.map(textOf))[1]).toBe(becomes);
});

test('half a stock cube is one where its author halves it', () => {
  const result = reauthoredOf(recipeOf({ kitchen: 'uk', lines: ['½ chicken stock cube', '2 carrots'] }), 'eu', setting);
  expect(result.version.parts.flatMap((part) => part.lines.map(textOf))[0]).toBe('½ chicken stock cube');
});
