import { checkPost } from '@retare/check';
import { builtInLarder, defaultSettings } from '@retare/larder';
import { expect, test } from 'vitest';
import { leastGrowth, worked } from '../growth.ts';
import { markdownOf, render, serving } from './pipeline.ts';

const options = serving('us', 'uk');

/** Texts that repeat one piece, each a trap of its own. */
const traps: { what: string; piece: string; before?: string; after?: string }[] = [
  { what: 'colons', piece: ':' },
  { what: 'colons and words', piece: 'a:b 10:30 ' },
  { what: 'names of ours without a label', piece: ':oven ' },
  { what: 'labels that are never closed', piece: ':oven[' },
  { what: 'attributes that are never closed', piece: ':pan[9 in]{depth="' },
  { what: 'pans of one paragraph', piece: 'in two :pan[9 in] pie plates, ' },
  { what: 'blocks that are never closed', piece: ':::method\nStir.\n\n' },
  { what: 'attributes of one annotation', piece: ' a=b', before: ':pan[9 in]{', after: '}' },
  { what: 'foreign directives', piece: ':::note{depth=2}\nx :abbr[y]{z=1}\n:::\n\n' },
  {
    what: 'shares of one line',
    piece: 'Stir in :amount[1 tbsp]{of="milk"}.\n\n',
    before: ':::ingredients{kitchen=us}\n- 90 cups milk\n:::\n\n',
  },
  {
    what: 'shares of many lines',
    piece: ':::ingredients{kitchen=us}\n- 1 cup milk\n:::\n\n:::method\nStir in :amount[1 tbsp]{of="milk"}.\n:::\n\n',
  },
  { what: 'comments', piece: '<!-- retare ignore unbuyable: why -->\n\n', after: '\n:temp[40°C]' },
];

test.for(traps)(
  'reading $what takes no more than its length asks',
  { timeout: 120_000 },
  ({ piece, before = '', after = '' }) => {
    const textOf = (bytes: number): string => before + piece.repeat(Math.ceil(bytes / piece.length)) + after;
    const site = { larder: builtInLarder(), settings: defaultSettings };
    const read = (text: string): void => {
      render(text, { options });
      checkPost(text, 'post.md', site);
    };
    read(textOf(1_000));
    // Eight times the text: eight times the work, with room for what a small text does not need, and far from the 64 times of quadratic reading.
    const most = 8 * 3;
    const grown = leastGrowth(read, [textOf(2_000), textOf(16_000)], { runs: 3, goodEnough: most });
    expect(grown).toBeLessThan(most);
  },
);

test('a post of 1 MB with a directive on every line does not hang', () => {
  const line = '1. At 10:30 heat to :oven[400°F], serves:four, cut :length[2 in] and :::\n';
  const text = `:::method\n${line.repeat(Math.ceil(1_000_000 / line.length))}:::\n`;
  let html = '';
  const time = worked(() => {
    html = render(text, { options }).html;
  });
  expect(html).toContain('200°C/180°C fan/gas 6');
  expect(time).toBeLessThan(60_000);
}, 300_000);

test('a post of 1 MB of prose with colons does not hang, read and printed', () => {
  const text = 'Dinner:at 10:30, a ratio of 2:1 :tada: for note:pan and std::vector.\n\n'.repeat(15_000);
  let printed = '';
  const time = worked(() => {
    printed = markdownOf(text, { options });
  });
  expect(printed.trim()).toBe(text.trim());
  expect(time).toBeLessThan(60_000);
}, 300_000);
