import type { Root } from 'mdast';
import { toString as wordsIn } from 'mdast-util-to-string';
import remarkDirective from 'remark-directive';
import { visit } from 'unist-util-visit';
import { describe, expect, test } from 'vitest';
import { type Around, htmlOf, markdownOf, render } from './pipeline.ts';

const pipelines: { name: string; around: Around; whole: boolean }[] = [
  { name: 'alone', around: {}, whole: false },
  { name: 'behind remark-directive', around: { before: [remarkDirective] }, whole: true },
  { name: 'in front of remark-directive', around: { after: [remarkDirective] }, whole: true },
];

const accidents = [
  'Dinner is at 10:30 sharp.',
  'Serves:four',
  'A ratio of 2:1 by weight.',
  'Posted 2026-05-01T10:30 by the author.',
  'Done :tada: and :+1: again.',
  'See https://saltmarsh-suppers.example/a:b for it.',
  'In C++ that is std::vector, and :: is nothing.',
  'Serves :4 or more.',
  'note:pan and my:amount are words.',
  '**Serves**:four',
];

describe.each(pipelines)('$name', ({ around, whole }) => {
  test.for(accidents)('`%s` reads as it was written', (line) => {
    expect(htmlOf(line, around)).toBe(htmlOf(line, { without: true }));
    expect(htmlOf(line, around).replace(/<[^>]+>/g, '')).toBe(line.replaceAll('**', ''));
    expect(render(line, around).messages).toEqual([]);
  });

  test.for(accidents.filter((line) => !line.includes('https')))('`%s` is printed as it was written', (line) => {
    expect(markdownOf(line, around)).toBe(`${line}\n`);
  });

  test('a directive of nobody reads as it was written', () => {
    const html = htmlOf(':abbr[x]{title=y} and :br\n\n::embed[a]{id=1}', around);
    expect(html.replace(/<\/?span>/g, '')).toBe('<p>:abbr[x]{title=y} and :br</p>\n<p>::embed[a]{id=1}</p>');
  });

  test('the words of a foreign block are all there', () => {
    const html = htmlOf(':::note{depth=2}\nMind the *step*.\n:::', around);
    // What fences a block is the business of the plugin that brought the whole syntax.
    expect(html).toBe(
      whole ? '<div><p>Mind the <em>step</em>.</p></div>' : '<p>:::note{depth=2}\nMind the <em>step</em>.\n:::</p>',
    );
  });

  test('an annotation inside a foreign block is read', () => {
    const html = htmlOf(':::note\nHeat to :temp[110°F].\n:::', {
      ...around,
      options: { settings: { kitchens: ['uk'] } },
    });
    expect(html).toContain(
      '<span data-retare="us" class="retare-native">110°F</span><span data-retare="uk">43°C</span>',
    );
  });
});

describe.each(pipelines.filter(({ whole }) => whole))('$name', ({ around }) => {
  test.for([
    ':abbr[x]{title=y}',
    '::embed[a *b*]{id=1 #me .two}',
    ':::note{depth=2}\nMind the step.\n\n*   with a list of its own style\n:::',
    '> Aside, :abbr[x]{title=y}.',
  ])('`%s` is printed with its own attributes', (text) => {
    expect(markdownOf(text, around)).toBe(`${text}\n`);
  });

  test('a directive that another plugin has changed is printed anew', () => {
    const change = () => (tree: Root) =>
      visit(tree, 'textDirective', (node) => {
        node.attributes = { title: 'z' };
      });
    expect(markdownOf(':abbr[x]{title=y}', { ...around, after: [...(around.after ?? []), change] })).toBe(
      ':abbr[x]{title="z"}\n',
    );
  });
});

/** A small plugin of somebody else's: notes, abbreviations and embeds. */
function asides(only: 'hName' | 'all') {
  return (tree: Root): void =>
    visit(tree, (node) => {
      if (node.type === 'containerDirective' && node.name === 'note') {
        node.data ??= {};
        node.data.hName = 'aside';
      }
      if (node.type === 'leafDirective' && node.name === 'embed') node.data = { hName: 'figure' };
      if (node.type !== 'textDirective' || node.name !== 'abbr') return;
      node.data ??= {};
      node.data.hName = 'abbr';
      if (only === 'all') node.data.hProperties = { title: `${node.attributes?.title}: ${wordsIn(node)}` };
    });
}

const foreign = ':::note{depth=2}\nMind :abbr[the step]{title=y}.\n:::\n\n::embed[a]\n\nAt 10:30.';

const orders = ['before', 'after'] as const;

describe.each(orders)('another plugin %s ours', (order) => {
  const around = (only: 'hName' | 'all'): Around =>
    order === 'before'
      ? { before: [remarkDirective, [asides, only]] }
      : { before: [remarkDirective], after: [[asides, only]] };

  test('handles its own directives', () => {
    expect(htmlOf(foreign, around('all'))).toBe(
      '<aside><p>Mind <abbr title="y: the step">the step</abbr>.</p></aside>\n<figure>a</figure>\n<p>At 10:30.</p>',
    );
  });

  test('handles them by an element name alone', () => {
    expect(htmlOf(foreign, around('hName'))).toContain('<abbr>the step</abbr>');
  });

  test('keeps them when our annotations stand beside them', () => {
    const html = htmlOf(`${foreign}\n\n:::ingredients\n- 1 cup milk, :abbr[whole]{title=y}\n:::`, around('hName'));
    expect(html).toContain('<abbr>whole</abbr>');
    expect(html).toContain('<retare-kitchens>');
  });
});

test('what is written like an annotation and escaped stays text', () => {
  const text = 'Write \\:oven\\[400°F] for it.';
  expect(htmlOf(text)).toBe('<p>Write :oven[400°F] for it.</p>');
  expect(htmlOf(markdownOf(text))).toBe('<p>Write :oven[400°F] for it.</p>');
});

test('attributes that are not known do not reach the page', () => {
  const html = htmlOf(':::ingredients{onclick=steal style=x .big}\n- 1 cup milk, at :temp[40°C]{onload=y}\n:::');
  expect(html).not.toMatch(/onclick|steal|style=|big|onload/);
});
