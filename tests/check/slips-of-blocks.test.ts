import { checkPost } from '@retare/check';
import { builtInLarder, defaultSettings } from '@retare/larder';
import { describe, expect, test } from 'vitest';

const site = { larder: builtInLarder(), settings: defaultSettings, only: ['us'] };

describe('a block whose name is a slip', () => {
  test.each([
    [':::ingredient\n- 1 cup milk\n:::\n', 1, 4, 'ingredients'],
    ['Hello.\n\n:::Ingredients\n- 1 cup milk\n:::\n', 3, 4, 'ingredients'],
    [':::metod\n1. Stir.\n:::\n', 1, 4, 'method'],
  ])('%j is an error at its place', (post, line, column, meant) => {
    const [message] = checkPost(post, 'post.md', site).file.messages;
    expect(message).toMatchObject({ ruleId: 'annotation', fatal: true, line, column, expected: [meant] });
  });

  test.each([':::note\nHello.\n:::\n', ':::ingredients\n- 1 cup milk\n:::\n', 'a ::: b\n'])('%j is none', (post) => {
    expect(checkPost(post, 'post.md', site).file.messages).toEqual([]);
  });
});

describe('a number that is none', () => {
  test.each(['1//2 cup heavy cream', '½½ cup honey', '1e3 cups milk'])('%s is left unread and is an error', (line) => {
    const { messages } = checkPost(`:::ingredients\n- ${line}\n:::\n`, 'post.md', site).file;
    expect(messages.map(({ ruleId, fatal }) => [ruleId, fatal])).toContainEqual(['unreadable-amount', true]);
  });
});
