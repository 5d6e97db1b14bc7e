import { expect, test } from 'vitest';
import { htmlOf, markdownOf } from './pipeline.ts';

test('a backslash of an address is printed, since it is no escape', () => {
  const post = '<http://a.example/b:c\\:tada>:\n';
  expect(markdownOf(post)).toBe(markdownOf(post, { without: true }));
  expect(markdownOf(post)).toContain('c\\:tada');
  expect(htmlOf(post)).toBe(htmlOf(post, { without: true }));
});
