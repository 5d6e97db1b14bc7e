import { applyEdits, Exact, versionFor } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from './recipe-in-post.ts';

/** What a UK cook reads of a line from a US kitchen. */
function inBritain(line: string, from = 'us'): string {
  const { foods, kitchens } = builtInLarder();
  const recipe = recipeInPost(`:::ingredients{kitchen=${from}}\n- ${line}\n:::\n`);
  const read = versionFor(recipe, 'uk', { foods, kitchens, tolerance: new Exact('0.05') }).parts[0]?.lines[0];
  return read === undefined ? '' : applyEdits(read.line.text, read.edits);
}

// ½ lb is 226.8 g, a pound 453.6 g, 2 lb 907 g (international pound); 3 in is 7.62 cm. Steps of a British scale: common practice, no source.
describe('a line whose count stays as it is', () => {
  test.each([
    ['2 carrots (about ½ lb)', '2 carrots (about 225 g)'],
    ['1 small onion (4 oz)', '1 small onion (115 g)'],
    ['1 (3-inch) piece ginger', '1 × 7.5 cm piece ginger'],
    ['3-inch piece ginger', '7.5 cm piece ginger'],
  ])('%s keeps no unit of the other kitchen', (line, read) => {
    expect(inBritain(line)).toBe(read);
  });
});

test('the size of a pack that may be taken instead is converted and not lost', () => {
  expect(inBritain('2 lb tomatoes, chopped, or 1 (28-oz) can tomatoes')).toBe(
    '900 g tomatoes, chopped, or 1 (800 g) can tomatoes',
  );
});

test('a second statement in a unit that neither kitchen has falls away', () => {
  // Whose pint it is nobody can say.
  expect(inBritain('600 ml (1 pint) warm water', 'eu')).toBe('600 ml warm water');
});
