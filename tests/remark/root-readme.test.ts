import { readFileSync } from 'node:fs';
import { parsePost } from '@retare/check';
import { applyEdits } from '@retare/core';
import { builtInLarder, defaultSettings } from '@retare/larder';
import { readPost, versionsOf } from 'remark-retare';
import { VFile } from 'vfile';
import { describe, expect, test } from 'vitest';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

/** The post that the README shows, and the quotation of what a UK reader reads. */
function example(): { post: string; quoted: string[] } {
  const post = /```markdown\n(:::ingredients[\s\S]*?)```/.exec(readme)?.[1] ?? '';
  const quoted = readme.split('\n').filter((line) => /^> (?:- |\d\. )/.test(line));
  return { post, quoted: quoted.map((line) => line.replace(/^> (?:- |\d\. )/, '')) };
}

describe('the README', () => {
  const { post, quoted } = example();
  const file = new VFile(post);
  const tree = parsePost(file);
  const reading = readPost(tree, file, undefined, builtInLarder(), defaultSettings);
  const uk =
    reading === null
      ? undefined
      : versionsOf(reading, builtInLarder(), defaultSettings).find(({ kitchen }) => kitchen.id === 'uk');

  test('shows ingredient lines as a UK reader reads them', () => {
    const lines = uk?.parts.flatMap((part) => part.lines.map(({ line, edits }) => applyEdits(line.text, edits))) ?? [];
    expect(lines.length).toBe(3);
    expect(quoted.slice(0, lines.length)).toEqual(lines);
  });

  test('shows every annotation of the method as a UK reader reads it', () => {
    const mentions =
      uk?.steps.flatMap((steps) =>
        steps.mentions.map(({ text, hold }) => (hold === '' ? text : `${text} (${hold})`)),
      ) ?? [];
    expect(mentions.length).toBe(4);
    for (const mention of mentions) expect(quoted.join('\n')).toContain(mention);
  });
});
