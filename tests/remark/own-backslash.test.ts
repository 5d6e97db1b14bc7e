import { expect, test } from 'vitest';
import { htmlOf, markdownOf } from './pipeline.ts';

test('a backslash of an address is printed, since it is no escape', () => {
  const post = '<http://a.example/b:c\\:tada>:\n';
  expect(markdownOf(post)).toBe(markdownOf(post, { without: true }));
  expect(markdownOf(post)).toContain('c\\:tada');
  expect(htmlOf(post)).toBe(htmlOf(post, { without: true }));
});

test('a name that only begins like one of ours gets no backslash', () => {
  // An entity, so that the text is not printed as it stood.
  const post = '::kitchensalt &amp; pepper\n';
  expect(markdownOf(post)).toBe(markdownOf(post, { without: true }));
  // One that is ours keeps its escape, so that it is not read as an annotation the next time.
  expect(markdownOf('\\:::method\n')).toBe('::\\:method\n');
});
