import { isRefusal, reauthor } from '@retare/core';
import { expect, test } from 'vitest';
import { recipeOf, textOf } from './recipe-of.js';
import { setting } from './setting.js';

test.for([
  ['uk', 'us', '1 beef stock cube', '1 beef bouillon cube'],
  ['uk', 'au', '2 vegetable stock cubes', '2 vegetable stock cubes'],
  ['us', 'uk', '1 chicken bouillon cube', '1 chicken stock cube'],
] as const)('a stock cube is used by itself, and no box of them: %s to %s, %s', ([from, to, line, becomes]) => {
  const result = reauthor(recipeOf({ kitchen: from, lines: [line, '2 carrots'] }), to, setting);
  if (isRefusal(result)) throw new Error(result.kind);
  expect(result.infeasible).toBeNull();
  expect(result.version.parts.flatMap((part) => part.lines.map(textOf))[0]).toBe(becomes);
});
