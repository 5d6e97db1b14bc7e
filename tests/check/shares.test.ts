import { expect, test } from 'vitest';
import { messagesOf } from './checked.ts';

const post = (lines: string, method: string): string =>
  `:::ingredients{kitchen=us}\n${lines}\n:::\n\n:::method\n${method}\n:::\n`;
const about = (text: string): string[] => messagesOf(text, 'annotation').map(({ reason }) => reason);

test.for([
  ['as much as its line', '- 1 cup milk', ':amount[1 cup]{of=milk}'],
  ['as much as the upper end of its line', '- 1–1½ cups milk', ':amount[1½ cups]{of=milk}'],
  ['as much as two lines of its food', '- 1 cup milk\n- ½ cup milk, warm', ':amount[1½ cups]{of=milk}'],
  ['as much as its line and what is added there', '- 2 cups flour, plus 2 tbsp', ':amount[2¼ cups]{of=flour}'],
  ['as much in another unit', '- 1 stick butter', ':amount[8 tbsp]{of=butter}'],
  ['of something whose weight is not known', '- 1 cup glasswort', ':amount[3 pieces]{of=glasswort}'],
] as const)('a share may be %s', ([, lines, share]) => {
  expect(about(post(lines, `Stir in ${share}.`))).toEqual([]);
});

test.for([
  ['more than its line', '- 1 cup milk', ':amount[1¼ cups]{of=milk}', '1¼ cups', '1 cup'],
  ['more than its line in another unit', '- 1 stick butter', ':amount[½ lb]{of=butter}', '½ lb', '1 stick'],
  ['more than the pieces of its line', '- 2 onions', ':amount[3 onions]', '3 onions', '2'],
] as const)('a share that is %s is a finding', ([, lines, share, own, whole]) => {
  expect(about(post(lines, `Stir in ${share}.`))).toEqual([
    expect.stringMatching(new RegExp(`^\`${own}\` is more than the \`${whole}\` of \\w+ that is listed`, 'u')),
  ]);
});

test('a share of a version is held against the lines of that version', () => {
  const versions =
    ':::ingredients{kitchen=uk}\n- 250 ml milk\n:::\n\n:::method{kitchen=uk}\nStir in :amount[300 ml]{of=milk}.\n:::\n';
  expect(about(`${post('- 2 cups milk', 'Stir.')}\n${versions}`)).toEqual([
    '`300 ml` is more than the `250 ml` of milk that is listed, so it is no share of it. Write at most that, or list more',
  ]);
});
