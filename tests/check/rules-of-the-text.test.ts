import { describe, expect, test } from 'vitest';
import { lines, said, ukLines } from './said.ts';

describe('annotation', () => {
  test('is an error for what cannot be understood', () => {
    expect(said('Heat to :oven[hot] now.', 'annotation')).toEqual([
      {
        severity: 'error',
        kitchens: [],
        at: 'hot',
        text: '`hot` is no oven setting that can be read. Write it like `400°F` or `180 °C/160 °C fan/gas 4`',
        expected: ['400°F', '180 °C/160 °C fan/gas 4'],
      },
    ]);
  });

  test('is told of front matter in a post without any annotation', () => {
    expect(said('---\nretare:\n  kitchn: us\n---\n\nWords.', 'annotation').map(({ at }) => at)).toEqual(['kitchn']);
  });

  test('says nothing of what can be understood', () => {
    expect(said(`---\nretare: { kitchen: us }\n---\n\n${lines('1 cup milk')}`, 'annotation')).toEqual([]);
  });
});

describe('missing-from', () => {
  test('names a re-authored version that does not say what it was drawn from', () => {
    expect(said(ukLines('240 ml milk'), 'missing-from')).toEqual([
      {
        severity: 'warning',
        kitchens: [],
        at: ':::ingredients{kitchen=uk}',
        text: 'This UK version does not say which native lines it was drawn from, so nobody can tell when it has gone stale. Give it `from`',
        expected: ['from'],
      },
    ]);
  });

  test('names a method too', () => {
    const post = ':::method\nHeat to :oven[400°F].\n:::\n\n:::method{kitchen=uk}\nHeat to :oven[200°C].\n:::\n';
    expect(said(post, 'missing-from').map(({ at }) => at)).toEqual([':::method{kitchen=uk}']);
  });

  test('says nothing of a native block, nor of a version with `from`', () => {
    expect(said(lines('1 cup milk'), 'missing-from')).toEqual([]);
    expect(said(ukLines('240 ml milk').replace('kitchen=uk', 'kitchen=uk from=abc'), 'missing-from')).toEqual([]);
  });
});

describe('ask-preserve', () => {
  const post = (words: string, retare = ''): string =>
    `${retare === '' ? '' : `---\nretare: { ${retare} }\n---\n\n`}${lines('2 cups blackberries')}\n${words}\n`;

  test('asks at the word', () => {
    expect(said(post('Spoon it into *clean jars*, and shut them.'), 'ask-preserve')).toEqual([
      {
        severity: 'warning',
        kitchens: [],
        at: 'jars',
        text: 'This post talks of `jars` and does not say whether it is a preserve, whose amounts must never be changed. Write `preserve: true` or `preserve: false` under `retare` in its front matter',
        expected: ['preserve: true', 'preserve: false'],
      },
    ]);
  });

  // Salt that cures fish is as much a matter of safety as that of a brine.
  const told = [
    'A water bath does it.',
    'Leave it in the brine.',
    'Home canning is not hard.',
    '## Sterilizing',
    'Cover the fish with the cure.',
    'Turn it daily while it is curing.',
    '## Gravlax',
  ];
  test.for(told)('asks of `%s`', (words) => {
    expect(said(post(words), 'ask-preserve')).toHaveLength(1);
  });

  test.for(['Serve with cured ham.', 'Soup is a cure for most things.'])('asks nothing of `%s`', (words) => {
    expect(said(post(words), 'ask-preserve')).toEqual([]);
  });

  test.for(['preserve: true', 'preserve: false'])('is answered by `%s`', (retare) => {
    expect(said(post('Into jars.', retare), 'ask-preserve')).toEqual([]);
  });

  test('does not ask because a food is bought in a jar', () => {
    expect(said(lines('1 (24-oz) jar marinara sauce'), 'ask-preserve')).toEqual([]);
  });

  test('does not ask of a longer word', () => {
    expect(said(post('A jarring note, and a Jarman.'), 'ask-preserve')).toEqual([]);
  });
});
