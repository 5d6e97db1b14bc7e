import { checkPost } from '@retare/check';
import { builtInLarder, defaultSettings } from '@retare/larder';
import { describe, expect, test } from 'vitest';

/** Findings about unread amounts of one line, in a kitchen of its own. */
function unread(line: string, kitchen = 'us'): string[] {
  const post = `:::ingredients{kitchen=${kitchen}}\n- ${line}\n:::\n`;
  const { file } = checkPost(post, 'post.md', { larder: builtInLarder(), settings: defaultSettings, only: [kitchen] });
  return file.messages.filter(({ ruleId }) => ruleId === 'unreadable-amount').map(({ reason }) => reason);
}

describe('units that may be meant in two ways', () => {
  test.each([
    ['8 oz milk', 'us', 'weight or fluid ounces'],
    ['1 T sugar', 'us', 'a tablespoon or a teaspoon'],
    ['2t salt', 'us', 'a tablespoon or a teaspoon'],
    ['1 c flour', 'uk', 'is a cup'],
    ['5/6 bay leaves', 'us', ''],
  ])('%s in the %s kitchen is a finding', (line, kitchen, because) => {
    expect(unread(line, kitchen)).toEqual([expect.stringContaining(because)]);
  });

  test.each([
    ['8 fl oz milk', 'us'],
    ['8 oz (225 g) milk', 'us'],
    ['8 oz cheddar', 'us'],
    ['1 (14-oz) can coconut milk', 'us'],
    ['1 c flour', 'us'],
    ['1 tbsp sugar', 'us'],
    ['8 oz milk', 'eu'],
  ])('%s in the %s kitchen is settled', (line, kitchen) => {
    expect(unread(line, kitchen)).toEqual([]);
  });
});
