import { isRefusal, reauthor } from '@retare/core';
import { expect, test } from 'vitest';
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
  const result = reauthor(recipeOf({ kitchen: from, lines: [line, '2 carrots'] }), to, setting);
  if (isRefusal(result)) throw new Error(result.kind);
  expect(result.infeasible).toBeNull();
  expect(result.version.parts.flatMap((part) => part.lines.map(textOf))[0]).toBe(becomes);
});
