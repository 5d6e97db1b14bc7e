import { checkPost, jsonReport, summarise, summaryLine, textReport } from '@retare/check';
import { builtInLarder, defaultSettings } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { worked } from '../growth.ts';

const site = { larder: builtInLarder(), settings: { ...defaultSettings, kitchens: ['us'] } };
const post = [
  '---',
  'title: Eggs',
  'retare:',
  '  kitchen: us',
  '---',
  '',
  'Words, with an &amp; and a \\* in them.',
  '',
  ':::ingredients{kitchen=us}',
  '- [ ] **1½** large eggs, beaten',
  '- 130 g all-purpose flour, from a line that',
  '  goes on, \\& on',
  '- 1 cup flibbertigibbet',
  ':::',
  '',
  '> :::method',
  '> 1. Roast until it',
  '>    reads :core[150°F]{of=poultry}.',
  '> :::',
  '',
].join('\n');

const found = [
  { line: 10, column: 9, rule: 'unbuyable' },
  { line: 11, column: 3, rule: 'unmeasurable' },
  { line: 13, column: 9, rule: 'unknown-food' },
  { line: 18, column: 18, rule: 'underdone' },
];

describe.each([
  { name: 'on Unix', eol: '\n' },
  { name: 'on Windows', eol: '\r\n' },
  { name: 'on Windows, with a byte order mark', eol: '\r\n', mark: '\uFEFF' },
])('a file written $name', ({ eol, mark = '' }) => {
  const checked = checkPost(mark + post.replaceAll('\n', eol), 'posts/eggs.md', site);

  test('has its findings at the places of the file on disk', () => {
    expect(jsonReport([checked]).map(({ line, column, rule }) => ({ line, column, rule }))).toEqual(found);
  });

  test('has findings that say all a tool needs', () => {
    expect(jsonReport([checked])[1]).toEqual({
      file: 'posts/eggs.md',
      line: 11,
      column: 3,
      endLine: 11,
      endColumn: 8,
      rule: 'unmeasurable',
      severity: 'error',
      kitchens: ['us'],
      message: 'A US kitchen has no scale to weigh `130 g` of all-purpose flour. Write `1 cup`',
      actual: '130 g',
      expected: ['1 cup'],
      note: null,
    });
  });

  test('reads as text', () => {
    const [first, second] = textReport([checked], false).split('\n');
    expect(first).toBe('posts/eggs.md');
    expect(second).toBe(
      '  10:9   error   US shops sell eggs whole, so `1½` of them cannot be bought. Write `1` or `2` (unbuyable)',
    );
  });

  test('is summed up', () => {
    expect(summaryLine(summarise([checked], 1))).toBe('1 post, 4 amounts, 1 kitchen: 3 errors, 1 warning');
  });
});

test('a post without annotations is not parsed', () => {
  // Half a megabyte of nested quotations would take seconds to parse.
  const text = `${'> '.repeat(2000)}x\n`.repeat(60);
  const time = worked(() => {
    expect(checkPost(text, 'post.md', site)).toMatchObject({ amounts: 0, isRecipe: false });
  });
  expect(time).toBeLessThan(100);
});

test('a post without annotations has no line in a report', () => {
  const checked = [checkPost('Words at 10:30.', 'a.md', site)];
  expect(textReport(checked, false)).toBe('');
  expect(jsonReport(checked)).toEqual([]);
  expect(summaryLine(summarise(checked, 5))).toBe('0 posts, 0 amounts, 5 kitchens: 0 errors, 0 warnings');
});

test('colours are shown only where they are asked for', () => {
  const checked = [checkPost(post, 'eggs.md', site)];
  const colour = String.fromCharCode(27);
  expect(textReport(checked, false)).not.toContain(colour);
  expect(textReport(checked, true)).toContain(`${colour}[31m`);
});

test('`only` tells of a kitchen that is not served, and of no other', () => {
  const checked = checkPost(':::ingredients{kitchen=us}\n- ½ (15-oz) can butter beans\n:::\n', 'a.md', {
    ...site,
    only: ['uk'],
  });
  expect(jsonReport([checked]).map(({ kitchens }) => kitchens)).toEqual([['uk']]);
});

test('every message is two sentences without blame', () => {
  const text = `${post}\n\n:::ingredients{kitchen=uk}\n- 390 g butter beans\n:::\n`;
  const messages = jsonReport([checkPost(text, 'a.md', { ...site, settings: defaultSettings })]);
  expect(messages.length).toBeGreaterThan(5);
  for (const { message } of messages) {
    expect(message).toMatch(/^[^\n]+[.;] [A-Z][^\n]*[^.]$/);
    expect(message).not.toMatch(/!|invalid|oops|wrong|undefined|null|\bNaN\b/i);
  }
});
