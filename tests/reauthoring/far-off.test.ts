import { checkPost } from '@retare/check';
import { builtInLarder, defaultSettings } from '@retare/larder';
import { describe, expect, test } from 'vitest';

/** Findings that a UK cook meets in a line from a US kitchen. */
function findings(line: string): { rule: string | undefined; text: string }[] {
  const post = `:::ingredients{kitchen=us}\n- ${line}\n:::\n`;
  const site = { larder: builtInLarder(), settings: { ...defaultSettings, tolerance: 1 }, only: ['uk'] };
  return checkPost(post, 'post.md', site).file.messages.map(({ ruleId, reason }) => ({ rule: ruleId, text: reason }));
}

describe('an amount whose nearest measure is far from it', () => {
  test('is a finding, since ⅛ tsp is not ¼ tsp', () => {
    expect(findings('⅛ tsp cayenne pepper')).toEqual([
      { rule: 'unmeasurable', text: expect.stringContaining('`⅛ tsp`') },
    ]);
  });

  test('is none where the nearest measure is within a fifth', () => {
    expect(findings('¼ tsp cayenne pepper')).toEqual([]);
    expect(findings('3 tbsp olive oil')).toEqual([]);
  });
});
