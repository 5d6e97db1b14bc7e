import { describe, expect, test } from 'vitest';
import { renderInPlace } from '../../packages/astro/src/render-in-place.ts';

const options = { settings: { kitchens: ['us', 'uk'] } };
const render = (markdown: string, frontMatter: unknown = {}): string => renderInPlace(markdown, frontMatter, options);
const us = (words: string): string => `<span data-retare="us" class="retare-native">${words}</span>`;
const uk = (words: string): string => `<span data-retare="uk">${words}</span>`;

describe('text of the author', () => {
  test.each([
    ['a post without annotations', 'Up at 10:30, ratio 2:1, Serves:four.\r\n\r\n* a\n* b\n\n\n:::note\nno\n:::\n'],
    ['a name of ours without words', 'It is in the :pan and on the note:pan.\n'],
    ['code', '`:oven[350°F]`\n\n    :temp[40°F]\n'],
  ])('stays as it is: %s', (_, markdown) => {
    expect(render(markdown)).toBe(markdown);
  });

  test('stays as it is around an annotation', () => {
    const before = '* One   \\* two &amp; "three" -- [a\\]b](c "d")\n\n<b>x</b> ';
    expect(render(`${before}:length[2 in]  \nend\t.\n`)).toBe(`${before}${us('2 in')}${uk('5 cm')}  \nend\t.\n`);
  });
});

describe('a line', () => {
  const line = (markdown: string): string =>
    render(`[m]: /milk\n\n:::ingredients{kitchen=us}\n${markdown}\n:::\n`)
      .split('\n')
      .find((each) => each.includes('- ')) ?? '';

  test('keeps its mark, its task box and its markup', () => {
    expect(line('- [ ] *2 cups* whole milk')).toBe(
      `- [ ] ${us('*2 cups* whole milk')}${uk('<em>475 ml</em> whole milk')}`,
    );
  });

  test('keeps a picture and a link as Markdown, for the site’s own processor', () => {
    expect(line('- ![m](./m.png) 2 cups [milk][m]')).toBe(
      `- ${us('![m](./m.png) 2 cups [milk][m]')}${uk('![m](./m.png) 475 ml [milk][m]')}`,
    );
  });

  test('takes no sign of an author’s words for markup', () => {
    expect(line('- 2 cups whole milk \\*raw\\* \\<b> a\\_b')).toContain('&#42;raw&#42; &#60;b&#62; a&#95;b');
  });

  test('that all kitchens share has no mark', () => {
    expect(line('- salt, to taste')).toBe('- salt, to taste');
  });
});

describe('a block', () => {
  test('in a quotation stays in it', () => {
    const lines = render('> :::method\n> Chill to :temp[40°F].\n>\n> Eat.\n> :::\n').split('\n');
    expect(lines.slice(0, -1).every((each) => each.startsWith('> '))).toBe(true);
    expect(lines).toContain(`> Chill to ${us('40°F')}${uk('4°C')}.`);
  });

  test('in a list item stays in it', () => {
    const lines = render('- first\n\n  :::method\n  Chill to :temp[40°F].\n  :::\n- second\n').split('\n');
    expect(lines).toContain(`  Chill to ${us('40°F')}${uk('4°C')}.`);
    expect(lines).toContain('  </div>');
    expect(lines).toContain('- second');
  });

  test('that is never closed comes out as it was written', () => {
    const markdown = ':::ingredients\n- 1 cup whole milk\n';
    expect(render(markdown)).toBe(markdown);
  });
});

test('front matter says which kitchen is native', () => {
  const markdown = 'Keep it at :temp[4°C].\n';
  expect(render(markdown, { retare: { kitchen: 'uk' } })).toContain(
    '<span data-retare="uk" class="retare-native">4°C</span>',
  );
});
