import { oneOf } from '@retare/core';
import { ruleNames } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { said } from './said.ts';

const us = { kitchens: ['us'] };
const excuse = '<!-- retare ignore unbuyable: the shop halves them -->';
const unbuyable = (post: string): string[] => said(post, 'unbuyable', us).map(({ at }) => at);

describe('a comment with a reason', () => {
  test('excuses the next line, and only that', () => {
    const post = `:::ingredients\n- 1 cup milk\n\n${excuse}\n\n- 1½ large eggs\n- 2½ large eggs\n:::\n`;
    expect(unbuyable(post)).toEqual(['2½']);
  });

  test('excuses the next line from inside the line before', () => {
    const post = `:::ingredients\n- 1 cup milk\n  ${excuse}\n- 1½ large eggs\n- 2½ large eggs\n:::\n`;
    expect(unbuyable(post)).toEqual(['2½']);
  });

  test('excuses the next block', () => {
    const block = ':::ingredients\n- 1½ large eggs\n- 2½ large eggs\n:::\n';
    expect(unbuyable(`${excuse}\n\n${block}`)).toEqual([]);
    expect(unbuyable(`${excuse}\n\n${block}\n${block}`)).toEqual(['1½', '2½']);
  });

  test('among the words of a line excuses that line', () => {
    expect(unbuyable(`:::ingredients\n- 1½ large eggs ${excuse}\n- 2½ large eggs\n:::\n`)).toEqual(['2½']);
  });

  test('in braces, as MDX has it, excuses too', () => {
    const post = `{/* retare ignore unbuyable: the shop halves them */}\n\n:::ingredients\n- 1½ large eggs\n:::\n`;
    expect(unbuyable(post)).toEqual([]);
  });

  test('excuses from the rules that it names, and from no other', () => {
    const line = '- 1½ large eggs\n';
    expect(unbuyable(`:::ingredients\n${excuse.replace('unbuyable', 'unmeasurable')}\n\n${line}:::\n`)).toEqual(['1½']);
    expect(
      unbuyable(`:::ingredients\n${excuse.replace('unbuyable', 'unmeasurable unbuyable')}\n\n${line}:::\n`),
    ).toEqual([]);
  });
});

test.for([
  {
    comment: '<!-- retare ignore unbuyable -->',
    text: 'This comment gives no reason, so it excuses nothing. Write it like `<!-- retare ignore unbuyable: why it is meant -->`',
  },
  {
    comment: '<!-- retare ignore unbuyable: -->',
    text: 'This comment gives no reason, so it excuses nothing. Write it like `<!-- retare ignore unbuyable: why it is meant -->`',
  },
  {
    comment: '<!-- retare ignore: because -->',
    text: 'This comment names no rule to ignore, so it excuses nothing. Write it like `<!-- retare ignore unbuyable: why it is meant -->`',
  },
  {
    comment: '<!-- retare ignore unbyable: because -->',
    text: `This comment names \`unbyable\`, which is no rule, so it excuses nothing. Use ${oneOf(ruleNames)}`,
  },
])('`$comment` excuses nothing and is a finding', ({ comment, text }) => {
  const post = `${comment}\n\n:::ingredients\n- 1½ large eggs\n:::\n`;
  expect(unbuyable(post)).toEqual(['1½']);
  expect(said(post, 'annotation', us)).toEqual([expect.objectContaining({ severity: 'error', at: comment, text })]);
});

test('a comment of somebody else is none of ours', () => {
  const post = '<!-- lint ignore unbuyable -->\n\n<!-- retared -->\n\n:::ingredients\n- 1½ large eggs\n:::\n';
  expect(said(post, 'annotation', us)).toEqual([]);
});
