import { codesIn, codesOfLines, codesOfMethod, isLineCode, lineCode, movedSince } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from './recipe-in-post.js';

function codesOf(...items: readonly string[]): string[] {
  const [part] = recipeInPost(`:::ingredients{kitchen=us}\n${items.join('\n')}\n:::\n`).parts;
  return part === undefined ? [] : codesOfLines(part.native);
}

function methodCodes(words: string): string[] {
  const post = `:::ingredients{kitchen=us}\n- 1 cup heavy cream\n- 2 lb chicken thighs\n:::\n\n:::method\n${words}\n:::\n`;
  const [steps] = recipeInPost(post).steps;
  return steps === undefined ? [] : codesOfMethod(steps.native);
}

describe('the code of a line', () => {
  test('is three letters or figures', () => {
    for (const code of codesOf('- 1½ cups all-purpose flour', '- salt, to taste'))
      expect(code).toMatch(/^[0-9a-z]{3}$/);
  });

  test.each([
    ['another bullet', '* 1½ cups all-purpose flour'],
    ['a task list', '- [ ] 1½ cups all-purpose flour'],
    ['emphasis', '- **1½ cups** *all-purpose flour*'],
    ['a fraction in figures', '- 1 1/2 cups all-purpose flour'],
    ['a decimal', '- 1.5 cups all-purpose flour'],
    ['capital letters', '- 1½ Cups All-Purpose Flour'],
    ['another spelling of the unit', '- 1½ c. all-purpose flour'],
    ['words on preparation', '- 1½ cups all-purpose flour, sifted twice'],
    ['an annotation', '- :amount[1½ cups] all-purpose flour'],
  ])('stays with %s', (_, item) => {
    expect(codesOf(item)).toEqual(codesOf('- 1½ cups all-purpose flour'));
  });

  test.each([
    ['another amount', '- 1⅓ cups all-purpose flour'],
    ['a range', '- 1½ to 2 cups all-purpose flour'],
    ['another unit', '- 1½ tbsp all-purpose flour'],
    ['another food', '- 1½ cups bread flour'],
    ['a second statement', '- 1½ cups (200 g) all-purpose flour'],
    ['a further amount', '- 1½ cups all-purpose flour, plus 2 tbsp for the counter'],
    ['no amount', '- all-purpose flour'],
  ])('changes with %s', (_, item) => {
    expect(codesOf(item)).not.toEqual(codesOf('- 1½ cups all-purpose flour'));
  });

  test('changes with the number and the size of packs', () => {
    const codes = codesOf(
      '- 2 (15-oz) cans butter beans',
      '- 1 (15-oz) can butter beans',
      '- 2 (28-oz) cans butter beans',
      '- 2 (15-oz) cans cannellini beans',
    );
    expect(new Set(codes).size).toBe(4);
  });

  test('changes with the upper end of what a pack or a piece weighs', () => {
    const codes = codesOf('- 4 (6-oz) cod fillets', '- 4 (6 to 8-oz) cod fillets', '- 4 (6 to 9-oz) cod fillets');
    expect(new Set(codes).size).toBe(3);
  });

  test('changes with the size of a counted food', () => {
    expect(codesOf('- 2 large onions')).not.toEqual(codesOf('- 2 small onions'));
  });

  test('does not depend on what a larder knows of the food', () => {
    const [line] = recipeInPost(':::ingredients{kitchen=us}\n- 1 cup milk\n:::\n').parts[0]?.native.lines ?? [];
    if (line === undefined) throw new RangeError('The post has a line.');
    expect(line.food).not.toBeNull();
    expect(lineCode({ ...line, food: null, name: null })).toBe(lineCode(line));
  });

  test('stands for the words of a line that the larder does not know', () => {
    expect(codesOf('- 2 cups glimmerweed')).toEqual(codesOf('- 2 cups *Glimmerweed*'));
    expect(codesOf('- 2 cups glimmerweed')).not.toEqual(codesOf('- 2 cups shimmerweed'));
  });
});

describe('the codes of a method', () => {
  test('are one for each oven, core, temp, pan and share, and none for a length', () => {
    const words = [
      'Heat to :oven[400°F], butter a :pan[9×13 in]{depth="2 in"}, cut :length[2 in] squares,',
      'warm :amount[½ cup]{of="heavy cream"} to :temp[110°F] and cook to :core[165°F]{of=poultry}.',
    ].join(' ');
    expect(methodCodes(words)).toHaveLength(5);
  });

  test.each([
    ['heat', 'Heat to :oven[400°F].', 'Heat to :oven[425°F].'],
    ['fan', 'Heat to :oven[400°F].', 'Heat to :oven[400°F convection].'],
    ['pan', 'Use a :pan[9×13 in].', 'Use a :pan[8×8 in].'],
    ['depth', 'Use a :pan[9×13 in]{depth="2 in"}.', 'Use a :pan[9×13 in]{depth="3 in"}.'],
    ['number of pans', 'Use :pan[9-inch round]{count=2}.', 'Use :pan[9-inch round]{count=3}.'],
    ['share', 'Add :amount[½ cup]{of="heavy cream"}.', 'Add :amount[¼ cup]{of="heavy cream"}.'],
    ['food of a core', 'Cook to :core[165°F]{of=poultry}.', 'Cook to :core[165°F]{of=leftovers}.'],
    ['kind', 'Cook to :core[165°F]{of=poultry}.', 'Cook to :temp[165°F].'],
  ])('change with the %s', (_, before, after) => {
    expect(methodCodes(before)).toHaveLength(1);
    expect(methodCodes(before)).not.toEqual(methodCodes(after));
  });

  test('stay when only the words around an annotation change', () => {
    expect(methodCodes('Heat the oven to :oven[400°F].')).toEqual(methodCodes('Get the oven very hot, :oven[400 °F].'));
  });
});

describe('what has moved', () => {
  const from = ['aaa', 'bbb', 'ccc'];
  test.each([
    ['nothing', ['aaa', 'bbb', 'ccc'], null],
    ['lines that change places only', ['ccc', 'aaa', 'bbb'], null],
    ['a changed line', ['aaa', 'xxx', 'ccc'], { changed: [1], added: [], removed: [] }],
    ['an added line', ['aaa', 'bbb', 'xxx', 'ccc'], { changed: [], added: [2], removed: [] }],
    ['a removed line', ['aaa', 'ccc'], { changed: [], added: [], removed: [1] }],
    ['a changed and an added line', ['xxx', 'bbb', 'ccc', 'yyy'], { changed: [0], added: [3], removed: [] }],
    ['everything', ['xxx', 'yyy'], { changed: [0, 1], added: [], removed: [2] }],
    ['a line written twice', ['aaa', 'bbb', 'bbb', 'ccc'], { changed: [], added: [2], removed: [] }],
  ])('is told of %s', (_, now, moved) => {
    expect(movedSince(from, now)).toEqual(moved);
  });
});

test('codes stand apart by blanks of any kind', () => {
  expect(codesIn(' k3f  a9q\n0aa ')).toEqual(['k3f', 'a9q', '0aa']);
});

test.each(['k3', 'k3fa', 'K3F', 'k-f', ''])('`%s` is no code', (word) => {
  expect(isLineCode(word)).toBe(false);
});

test('the code of a pan changes with its depth', () => {
  const codes = ['9 × 13 in', '9 × 13 × 2 in', '9 × 13 × 3 in'].flatMap((size) =>
    methodCodes(`Use a :pan[${size}] pan.`),
  );
  expect(new Set(codes).size).toBe(3);
});
