import rehypeStringify from 'rehype-stringify';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import remarkRetare from 'remark-retare';
import { unified } from 'unified';
import { expect, test } from 'vitest';

function pageOf(post: string): string {
  const processor = unified().use(remarkParse).use(remarkRetare).use(remarkRehype).use(rehypeStringify);
  return String(processor.processSync(post));
}

test('a page tells once what to buy for two parts, and for which amounts', () => {
  const post =
    ':::ingredients[Crust]{kitchen=us}\n- ½ cup heavy cream\n:::\n\n:::ingredients[Filling]{kitchen=us}\n- ¾ cup heavy cream\n:::\n';
  const page = pageOf(post);
  expect(page).toContain('became 120 ml, 1.4 % more; buy 1 × 300 ml pot, for 120 ml + 180 ml');
  expect(page).toContain('became 180 ml, 1.4 % more');
  expect(page).not.toContain('became 180 ml, 1.4 % more; buy');
  expect(page).not.toContain('150 ml pot');
});

test('a page tells of each of several foods how its amount came about', () => {
  const page = pageOf(':::ingredients{kitchen=us}\n- 1 cup each flour and sugar\n:::\n');
  expect(page).toContain('1 cup, exactly 125 g, became 125 g');
  expect(page).toContain('1 cup, exactly 200 g, became 200 g');
});
