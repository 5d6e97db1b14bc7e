import { checkPost } from '@retare/check';
import { builtInLarder, defaultSettings } from '@retare/larder';
import fc from 'fast-check';
import remarkDirective from 'remark-directive';
import { expect, test } from 'vitest';
import { htmlOf, markdownOf, render, serving } from './pipeline.ts';

/** Pieces that Markdown, directives and recipes are made of, in any order. */
const pieces = fc.constantFrom(
  ...[
    '\n',
    '\n\n',
    '- ',
    '1. ',
    '> ',
    '    ',
    '  ',
    '# ',
    '| a |\n| - |\n',
    '```\n',
    '---\n',
    '<b>',
    '<!-- x -->',
    '\\',
    '&amp;',
  ],
  ...[
    '**',
    '*',
    '_',
    '`',
    '[',
    ']',
    '(',
    ')',
    '{',
    '}',
    '![',
    '~~',
    '[^1]',
    'http://a.example/b:c',
    '"',
    "'",
    '=',
    '#',
    '.',
  ],
  ...[
    ':',
    '::',
    ':::',
    ':note',
    ':::note\n',
    '10:30',
    'a:b',
    '2:1',
    ':tada:',
    '\r\n',
    '\t',
    '\u0000',
    '½',
    '°F',
    'é',
    '\u{1F600}',
  ],
  ...[
    '1 cup milk',
    '2 (15-oz) cans beans',
    'salt',
    '500 g',
    '400',
    'kitchen',
    'us',
    'uk',
    'retare',
    'words ',
    '9×13 in',
  ],
);
const ours = fc.constantFrom(
  ...[
    ':::ingredients',
    ':::method',
    '::kitchens',
    ':oven[',
    ':amount[',
    ':core[',
    ':pan[',
    ':temp[',
    ':length[',
    ':oven',
    '::oven',
  ],
  ...[
    ':::ingredients{kitchen=uk}\n',
    ':::method[Bake]{kitchen=us}\n',
    '{of="milk"}',
    '{kitchen=',
    '\n:::\n',
    ':oven[400°F]',
  ],
  ...['---\nretare:\n  kitchen: uk\n---\n', '<!-- retare ignore unbuyable: why -->'],
);

const foreignText = fc.array(pieces, { maxLength: 24 }).map((found) => found.join(''));
const anyText = fc.array(fc.oneof(pieces, ours), { maxLength: 24 }).map((found) => found.join(''));
const runs = { numRuns: 300 };
const options = serving('us', 'uk');

test('any text goes through the plugin', () => {
  fc.assert(
    fc.property(anyText, fc.boolean(), (markdown, beside) => {
      render(markdown, { options, before: beside ? [remarkDirective] : [] });
    }),
    runs,
  );
}, 300_000);

test('any text goes through the check', () => {
  const site = { larder: builtInLarder(), settings: defaultSettings };
  fc.assert(
    fc.property(anyText, (markdown) => {
      const { file } = checkPost(markdown, 'post.md', site);
      for (const { place } of file.messages) {
        const offset = (place as { start: { offset: number } } | undefined)?.start.offset ?? 0;
        expect(offset).toBeLessThanOrEqual(markdown.length);
      }
    }),
    runs,
  );
}, 300_000);

test('text without annotations of ours comes out as without the plugin', () => {
  fc.assert(
    fc.property(foreignText, (markdown) => {
      expect(htmlOf(markdown, { options })).toBe(htmlOf(markdown, { without: true }));
      expect(markdownOf(markdown, { options })).toBe(markdownOf(markdown, { without: true }));
    }),
    { numRuns: 600 },
  );
}, 300_000);

test('so does text without colons beside the whole directives syntax', () => {
  const before = [remarkDirective];
  fc.assert(
    fc.property(foreignText, (text) => {
      const markdown = text.replaceAll(':', '');
      expect(htmlOf(markdown, { options, before })).toBe(htmlOf(markdown, { without: true, before }));
    }),
    runs,
  );
}, 300_000);

test('no text is lost: every word of a line stands in the native version', () => {
  const word = fc.stringMatching(/^[a-z]{1,8}$/);
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 6 }), (words) => {
      const line = `1 cup ${words.join(' ')}`;
      const html = htmlOf(`:::ingredients\n- ${line}\n:::`, { options });
      expect(html).toMatch(new RegExp(`(?:<li>|class="retare-native">)${line}<`));
    }),
    { numRuns: 100 },
  );
}, 300_000);
