import type { Root } from 'mdast';
import remarkSmartypants from 'remark-smartypants';
import { removePosition } from 'unist-util-remove-position';
import { describe, expect, test } from 'vitest';
import { type Around, htmlOf, readIn, render, serving } from './pipeline.ts';

const options = serving('us', 'uk');

/** A list of native US lines as HTML, without what stands below it. */
function listOf(markdown: string, around: Around = {}): string {
  const html = htmlOf(`:::ingredients\n${markdown}\n:::`, { options, ...around });
  return html.slice(html.indexOf('<div class="retare-ingredients">')).replace(/<details.*<\/details>/s, '');
}

const lines = [
  { what: 'emphasis', markdown: '- **1 cup** milk', uk: '<strong>240 ml</strong> milk' },
  { what: 'emphasis around half an amount', markdown: '- **1** cup milk', uk: '<strong>240 ml</strong> milk' },
  { what: 'code', markdown: '- `1 cup` milk', uk: '<code>240 ml</code> milk' },
  { what: 'a link', markdown: '- 1 cup [milk](a.html "t")', uk: '240 ml <a href="a.html" title="t">milk</a>' },
  { what: 'a strike', markdown: '- 1 cup ~~cold~~ milk', uk: '240 ml <del>cold</del> milk' },
  { what: 'an escape', markdown: '- 1 cup milk \\*', uk: '240 ml milk *' },
  { what: 'a reference', markdown: '- 1&nbsp;cup milk &amp; no more', uk: '240 ml milk &#x26; no more' },
  { what: 'a picture', markdown: '- 1 cup milk ![a jug](j.png)', uk: '240 ml milk <img src="j.png" alt="a jug">' },
  { what: 'a line broken in two', markdown: '- 1 cup\n  milk', uk: '240 ml\nmilk' },
  { what: 'an amount at the end', markdown: '- Milk, 1 cup', uk: 'Milk, 240 ml' },
  { what: 'a numbered list', markdown: '1. 1 cup milk', uk: '240 ml milk' },
];

test.for(lines)('a line with $what keeps it', ({ markdown, uk }) => {
  expect(listOf(markdown)).toContain(`<span data-retare="uk">${uk}</span>`);
});

test('a task list keeps its boxes', () => {
  const html = listOf('- [ ] 1 cup milk\n- [x] 2 bay leaves');
  expect(html).toContain('<input type="checkbox" disabled>');
  expect(html).toContain('<span data-retare="uk">240 ml milk</span>');
  expect(html).toContain('<input type="checkbox" checked disabled> 2 bay leaves');
});

test('a loose list keeps its paragraphs', () => {
  expect(listOf('- 1 cup milk\n\n- 2 bay leaves')).toMatch(/<p><span [^>]*>1 cup milk<\/span><span [^>]*>240 ml milk/);
});

test('a nested list is a list of lines', () => {
  const html = listOf('- For the sauce\n  - 1 cup milk\n  - 2 bay leaves');
  expect(html).toContain('<span data-retare="uk">240 ml milk</span>');
  expect(html.split('<ul>')).toHaveLength(3);
});

test('a block inside a quotation is read', () => {
  const html = htmlOf('> :::ingredients\n> - 1 cup milk\n> :::\n', { options });
  expect(html).toMatch(/^<blockquote>/);
  expect(html).toContain('<span data-retare="uk">240 ml milk</span>');
});

test('a block inside a list item is read', () => {
  const html = htmlOf('- Sauce\n\n  :::ingredients\n  - 1 cup milk\n  :::\n', { options });
  expect(html).toContain('<span data-retare="uk">240 ml milk</span>');
});

test('an empty item and one that holds a picture only are left alone', () => {
  expect(listOf('-\n- ![a jug](j.png)\n- 2 bay leaves')).toContain('<li><img src="j.png" alt="a jug"></li>');
});

test('Windows line ends make no difference', () => {
  const post = ':::ingredients{kitchen=us}\n- 1 cup milk\n:::\n\n:::method\n1. Heat to :oven[400°F].\n:::\n';
  expect(htmlOf(post.replaceAll('\n', '\r\n'), { options })).toBe(htmlOf(post, { options }));
});

describe('behind smart punctuation', () => {
  const smart: Around = { before: [[remarkSmartypants, { dashes: 'oldschool' }]], options };

  test('inch marks and dashes are still read', () => {
    const html = htmlOf(
      ':::ingredients\n- 1--2 cups milk\n:::\n\n:::method\nButter a :pan[9"] pan -- "well".\n:::',
      smart,
    );
    expect(readIn('uk', html)).toContain('240–475 ml milk');
    expect(readIn('uk', html)).toMatch(/Butter a 23 cm pan – “well”/);
    expect(readIn('us', html)).toContain('1–2 cups milk');
  });

  test('places are those of the file', () => {
    const { messages } = render('"Well" -- bake it at :oven["hot"].', smart);
    expect(messages.map(({ line, column }) => [line, column])).toEqual([[1, 28]]);
  });
});

describe('a tree without places', () => {
  const bare = () => (tree: Root) => removePosition(tree, { force: true });

  test('is read as the same tree with places', () => {
    const post =
      ':::ingredients\n- 1 cup milk, :length[2 in]\n:::\n\n:::method\n1. Heat to :oven[400°F] at 10:30, note:pan.\n:::\n';
    expect(htmlOf(post, { before: [bare], options })).toBe(htmlOf(post, { options }));
  });

  test('has its slips reported without a place', () => {
    const { html, messages } = render(
      ':::ingredients{kitchn=uk}\n- 1 cup milk\n:::\n\nAt :oven[hot] and :pan{depth=x}.',
      {
        before: [bare],
        options,
      },
    );
    expect(messages.map(({ line, reason }) => [line, reason.split('. ')[0]])).toEqual([
      [undefined, '`ingredients` has no attribute `kitchn`'],
      [undefined, '`hot` is no oven setting that can be read'],
      [undefined, '`depth` of `pan` cannot be `x`'],
      [undefined, '`pan` has no words between its square brackets'],
    ]);
    expect(html).toContain('<p>At hot and :pan.</p>');
  });
});

test('what other plugins hang on a node may be anything', () => {
  const hang = () => (tree: Root) => {
    for (const node of tree.children) Object.assign(node, { data: { ...node.data, run: () => 1 } });
    const walk = (node: { children?: unknown[]; data?: object }): void => {
      if ((node as { type?: string }).type === 'text') node.data = { run: () => 1 } as object;
      for (const child of (node.children ?? []) as (typeof node)[]) walk(child);
    };
    walk(tree as never);
  };
  expect(listOf('- 1 cup milk', { before: [hang] })).toContain('240 ml milk');
});
