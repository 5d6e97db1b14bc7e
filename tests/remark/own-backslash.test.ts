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

test.for(['\\::kitchens', 'Words.\n\n\\::kitchens', '> \\::kitchens', '* \\::kitchens', 'Words\n\\::kitchens'])(
  'a name of ours that its author escaped on a line of its own stays escaped: %j',
  (post) => {
    const printed = markdownOf(`${post}\n`);
    expect(printed).toContain(':\\:kitchens');
    expect(htmlOf(printed)).toBe(htmlOf(`${post}\n`));
    expect(htmlOf(printed)).not.toContain('Cook this in');
    expect(markdownOf(printed)).toBe(printed);
  },
);

test('a name of ours inside a line needs no backslash', () => {
  expect(markdownOf('See ::kitchens here.\n')).toBe('See ::kitchens here.\n');
});
