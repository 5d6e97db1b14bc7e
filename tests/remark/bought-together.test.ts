import rehypeStringify from 'rehype-stringify';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import remarkRetare from 'remark-retare';
import { unified } from 'unified';
import { expect, test } from 'vitest';

test('a page tells once what to buy for two parts, and for which amounts', () => {
  const post =
    ':::ingredients[Crust]{kitchen=us}\n- ½ cup heavy cream\n:::\n\n:::ingredients[Filling]{kitchen=us}\n- ¾ cup heavy cream\n:::\n';
  const processor = unified().use(remarkParse).use(remarkRetare).use(remarkRehype).use(rehypeStringify);
  const page = String(processor.processSync(post));
  expect(page).toContain('became 120 ml, 1.4 % more; buy 1 × 300 ml pot, for 120 ml + 180 ml');
  expect(page).toContain('became 180 ml, 1.4 % more');
  expect(page).not.toContain('became 180 ml, 1.4 % more; buy');
  expect(page).not.toContain('150 ml pot');
});
