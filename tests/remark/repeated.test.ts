import { readFileSync } from 'node:fs';
import type { Root } from 'mdast';
import remarkDirective from 'remark-directive';
import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import remarkRetare from 'remark-retare';
import { unified } from 'unified';
import { visit } from 'unist-util-visit';
import { VFile } from 'vfile';
import { describe, expect, test } from 'vitest';
import { htmlOf, markdownOf, render, serving, treeOf } from './pipeline.ts';

const fixture = (name: string): string => readFileSync(new URL(`fixtures/${name}/input.md`, import.meta.url), 'utf8');
const posts = ['whole-post', 'parts-and-versions', 'slips'];
const options = serving('us', 'uk', 'eu');

describe.for(posts)('%s', (name) => {
  const markdown = fixture(name);

  test('the plugin twice in a pipeline does what it does once', () => {
    const twice = { options, after: [[remarkRetare, options]] } as never;
    expect(htmlOf(markdown, twice)).toBe(htmlOf(markdown, { options }));
  });

  test('a second pass over the same tree changes nothing', () => {
    const tree = treeOf(markdown, { options });
    const before = JSON.stringify(tree);
    unified().use(remarkRetare, options).runSync(tree, new VFile(markdown));
    expect(JSON.stringify(tree)).toBe(before);
  });

  test('the plugin twice says everything once', () => {
    const twice = { options, after: [[remarkRetare, options]] } as never;
    expect(render(markdown, twice).messages.map(String)).toEqual(render(markdown, { options }).messages.map(String));
  });

  test('the whole directives syntax beside ours makes no difference', () => {
    const alone = render(markdown, { options });
    for (const around of [{ before: [remarkDirective] }, { after: [remarkDirective] }]) {
      const beside = render(markdown, { options, ...around });
      expect(beside.html).toBe(alone.html);
      expect(beside.messages.map(String)).toEqual(alone.messages.map(String));
    }
  });

  test('what is placed can be printed', () => {
    expect(markdownOf(markdown, { options })).toContain('Cook this in');
  });

  test('no node is HTML', () => {
    visit(treeOf(markdown, { options }), (node) => expect(node.type).not.toBe('html'));
  });
});

describe('in MDX', () => {
  const mdx = unified().use(remarkParse).use(remarkMdx).use(remarkRetare, options).freeze();

  const source = [
    'export const title = "Soup"',
    '',
    '<Note at="10:30">Serves:four {1 + 1}</Note>',
    '',
    ':::ingredients{kitchen=us anchor="butter beans"}',
    '- 2 (15-oz) cans butter beans',
    '- 1 cup milk, {props.warm}',
    ':::',
    '',
    ':::method',
    '1. Heat to :oven[400°F] in a :pan[9×13 in]{depth="2 in"} dish.',
    ':::',
  ].join('\n');

  test('annotations are read, and expressions and elements stay', () => {
    const file = new VFile(source);
    const tree = mdx.runSync(mdx.parse(file), file) as Root;
    const types: string[] = [];
    visit(tree, (node) => {
      types.push(node.type);
    });
    expect(file.messages).toEqual([]);
    expect(types).toEqual(
      expect.arrayContaining(['mdxjsEsm', 'mdxJsxTextElement', 'mdxTextExpression', 'containerDirective']),
    );
    expect(types).not.toContain('html');
    expect(JSON.stringify(tree)).toContain('"dataRetare":"uk eu"');
    expect(JSON.stringify(tree)).toContain('200°C/180°C fan/gas 6');
  });

  test('elements of ours reach HTML beside those of MDX', async () => {
    const file = new VFile(source);
    const hast = await unified()
      .use(remarkRehype, { passThrough: ['mdxjsEsm', 'mdxJsxTextElement', 'mdxTextExpression'] as never[] })
      .run(mdx.runSync(mdx.parse(file), file) as Root, file);
    const tags: string[] = [];
    visit(hast, 'element', (node: { tagName: string }) => {
      tags.push(node.tagName);
    });
    expect(tags).toEqual(expect.arrayContaining(['retare-kitchens', 'select', 'details', 'ol']));
  });
});
