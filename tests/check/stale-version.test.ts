import { codesOfLines, codesOfMethod } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from '../reauthoring/recipe-in-post.js';
import { messagesOf, wordsAt } from './checked.js';

const native = ['2 cups (250 g) all-purpose flour', '1 cup milk', '1 tsp table salt (6 g)'];
const version = ['250 g plain flour', '240 ml whole milk', '1 tsp fine salt'];
const step = 'Heat the oven to :oven[400°F] and butter a :pan[8×8 in].';

function post({ lines = native, from = codesOf(native), words = step, methodFrom = methodCodesOf(step) } = {}): string {
  const list = (items: readonly string[]): string => items.map((item) => `- ${item}`).join('\n');
  return [
    `:::ingredients{kitchen=us}\n${list(lines)}\n:::`,
    `:::ingredients{kitchen=uk from="${from}"}\n${list(version)}\n:::`,
    `:::method\n${words}\n:::`,
    `:::method{kitchen=uk from="${methodFrom}"}\nHeat the oven to :oven[200°C] and butter a :pan[20 × 20 cm].\n:::\n`,
  ].join('\n\n');
}

function codesOf(lines: readonly string[]): string {
  const [part] = recipeInPost(
    `:::ingredients{kitchen=us}\n${lines.map((line) => `- ${line}`).join('\n')}\n:::\n`,
  ).parts;
  return part === undefined ? '' : codesOfLines(part.native).join(' ');
}

function methodCodesOf(words: string): string {
  const [steps] = recipeInPost(`:::method\n${words}\n:::\n`).steps;
  return steps === undefined ? '' : codesOfMethod(steps.native).join(' ');
}

describe('stale-version', () => {
  test('says nothing of a version that was drawn from the native lines of now', () => {
    expect(messagesOf(post(), 'stale-version')).toEqual([]);
  });

  test('names the lines that have changed, and what to do', () => {
    const lines = ['2¼ cups (280 g) all-purpose flour', '1¼ cups milk', '1 tsp table salt (6 g)'];
    const [message, ...others] = messagesOf(post({ lines }), 'stale-version');
    expect(others).toEqual([]);
    expect(message?.reason).toBe(
      'This UK version was drawn from older native amounts: all-purpose flour (now `2¼ cups (280 g)`, here `250 g`) and milk (now `1¼ cups`, here `240 ml`) have changed since. Re-read both lines, then run `retare draft posts/post.md --for uk`',
    );
    expect(message?.fatal).toBe(true);
  });

  test('stands at the codes, gives the new ones, and names both places of a line', () => {
    const lines = native.with(1, '1¼ cups milk');
    const text = post({ lines });
    const [message] = messagesOf(text, 'stale-version');
    expect(message && wordsAt(text, message)).toBe(`"${codesOf(native)}"`);
    expect(message?.expected).toEqual([codesOf(lines)]);
    expect(message?.note).toBe('milk is on line 3, in the version on line 9');
    expect(message?.cause).toMatchObject({ reason: 'The native line: milk', line: 3 });
  });

  test('names a line that has been added', () => {
    const [message] = messagesOf(post({ lines: [...native, '2 tbsp honey'] }), 'stale-version');
    expect(message?.reason).toContain('honey (now `2 tbsp`) has been added since. Re-read that line,');
    expect(message?.note).toBe('honey is on line 5, not in the version');
  });

  test('tells that a line has been taken away, and which line of the version stands alone', () => {
    const [message] = messagesOf(post({ lines: native.slice(0, 2) }), 'stale-version');
    expect(message?.reason).toContain('a line has been taken away since. Re-read that line,');
    expect(message?.note).toBe('fine salt on line 9 of the version has no native line now');
  });

  test('does not list more than a reader takes in', () => {
    const many = ['1 cup milk', '2 eggs', '1 cup sugar', '2 tbsp honey', '1 tsp vanilla extract'];
    const changed = ['2 cups milk', '3 eggs', '2 cups sugar', '3 tbsp honey', '2 tsp vanilla extract'];
    const [message] = messagesOf(post({ lines: changed, from: codesOf(many) }), 'stale-version');
    expect(message?.reason).toContain(
      'milk (now `2 cups`, here `240 ml`), eggs (now `3`), sugar (now `2 cups`) and 2 more have changed since',
    );
  });

  test('says nothing where lines only change places or words', () => {
    const lines = ['1 c. **milk**, warmed', '2 cups (250 g) all-purpose flour', '1 tsp table salt (6 g)'];
    expect(messagesOf(post({ lines }), 'stale-version')).toEqual([]);
  });

  test('names what has changed in a method', () => {
    const words = 'Heat the oven to :oven[425°F] and butter a :pan[8×8 in].';
    const [message] = messagesOf(post({ words }), 'stale-version');
    expect(message?.reason).toBe(
      'This UK method was drawn from an older native one: `425°F` (here `200°C`) has changed since. Re-read that line, then run `retare draft posts/post.md --for uk`',
    );
  });

  test('counts as the site says, and only for the kitchens that are asked for', () => {
    const text = post({ lines: native.with(1, '1¼ cups milk') });
    expect(messagesOf(text, 'stale-version', { severity: { 'stale-version': 'warning' } })[0]?.fatal).toBe(false);
    expect(messagesOf(text, 'stale-version', { severity: { 'stale-version': 'off' } })).toEqual([]);
    expect(messagesOf(text, 'stale-version', {}, ['au'])).toEqual([]);
    expect(messagesOf(text, 'stale-version', {}, ['uk'])).toHaveLength(1);
  });

  test('can be excused for a block, with a reason', () => {
    const text = post({ lines: native.with(1, '1¼ cups milk') });
    const excused = text.replace(
      ':::ingredients{kitchen=uk',
      '<!-- retare ignore stale-version: cooked again with the new amounts -->\n\n:::ingredients{kitchen=uk',
    );
    expect(messagesOf(excused, 'stale-version')).toEqual([]);
  });
});

describe('a `from` without codes', () => {
  test('is an annotation that cannot be understood, at the word that is no code', () => {
    const text = post({ from: 'flour and milk' });
    const [message] = messagesOf(text, 'annotation');
    expect(message?.reason).toBe(
      '`flour` in `from` is no code of a native line. Copy `from` out of what `retare draft` prints',
    );
    expect(message?.expected).toEqual([codesOf(native)]);
    expect(messagesOf(text, 'stale-version')).toEqual([]);
  });
});
