import { oneOf } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { render, serving } from './pipeline.ts';

const options = serving('us', 'uk');
const { kitchens } = builtInLarder();
const known = [...kitchens.keys()];
const classes = (kitchens.get('us')?.safe ?? []).map((safe) => safe.class);

/** A slip, what is said of it, and the words at its place. */
interface Slip {
  markdown: string;
  /** The words of the file that the place spans. */
  at: string;
  says: string;
  actual?: string;
  expected?: string[];
  /** Words that still come out. */
  shows?: string;
}

const native = ':::ingredients\n- 1 cup milk\n:::\n\n';

const slips: Slip[] = [
  {
    markdown: `${native}Stir in :amount[½ cup]{of=mikl}.`,
    at: 'mikl',
    says: 'No ingredient line lists `mikl`. Write `milk`',
    actual: 'mikl',
    expected: ['milk'],
    shows: '½ cup',
  },
  {
    markdown: `${native}Ladle out :amount[½ cup]{of=batter}.`,
    at: 'batter',
    says: 'No ingredient line lists `batter`. Write `milk`, or leave out `of` where it is a mixture',
    actual: 'batter',
    expected: ['milk'],
    shows: '½ cup',
  },
  {
    markdown: `${native}Stir in :amount[1½ cups]{of=milk}.`,
    at: '1½ cups',
    says: '`1½ cups` is more than the `1 cup` of milk that is listed, so it is no share of it. Write at most that, or list more',
    actual: '1½ cups',
    expected: ['1 cup'],
  },
  {
    markdown:
      ':::ingredients{kitchen=us anchor="butter bens"}\n- 2 (15-oz) cans butter beans\n- 1 cup milk\n- lemon, to serve\n:::',
    at: '"butter bens"',
    says: 'No ingredient line with an amount is called `butter bens`, so it cannot be the anchor. Write `butter beans`',
    actual: 'butter bens',
    expected: ['butter beans'],
  },
  {
    markdown: '---\nretare:\n  anchor: lemon\n---\n\n:::ingredients\n- 1 cup milk\n- lemon, to serve\n:::',
    at: 'lemon',
    says: 'No ingredient line with an amount is called `lemon`, so it cannot be the anchor. Write `milk`',
    expected: ['milk'],
  },
  {
    markdown: 'Before.\n\n:::ingredients{kitchen=us}\n- 1 cup milk\n\nAfter.',
    at: ':::ingredients{kitchen=us}',
    says: 'This `ingredients` block is never closed, so it is shown as plain text. Put `:::` on a line of its own after its last line',
    expected: [':::'],
    shows: '<p>:::ingredients{kitchen=us}</p>\n<ul>\n<li>1 cup milk</li>\n</ul>\n<p>After.</p>',
  },
  {
    markdown: ':::ingredients\n- 1 cup milk\n\n:::method\nStir.\n:::\n\nAfter.',
    at: ':::ingredients',
    says: 'This `ingredients` block is not closed before the next one begins on line 4, so it is shown as plain text. Put `:::` on a line of its own after its last line',
    shows: '<div class="retare-method"><p>Stir.</p></div>\n<p>After.</p>',
  },
  {
    markdown: ':::ingredients{kitchen=gb}\n- 1 cup milk\n:::',
    at: 'gb',
    says: `There is no kitchen \`gb\`. Use ${oneOf(known)}, or add it to your larder file`,
    actual: 'gb',
    expected: known,
    shows: '<li>1 cup milk</li>',
  },
  {
    markdown: ':::ingredients{kitchen="UK"}\n- 1 cup milk\n:::',
    at: '"UK"',
    says: 'There is no kitchen `UK`. Write `uk`',
    expected: ['uk'],
    shows: '<li>1 cup milk</li>',
  },
  {
    markdown: `${native}:::ingredients{kichen=uk}\n- 240 ml milk\n:::`,
    at: 'kichen',
    says: '`ingredients` has no attribute `kichen`. Write `kitchen`',
    expected: ['kitchen'],
    shows: '<li>240 ml milk</li>',
  },
  {
    markdown: ':::method{wide #m}\nStir.\n:::',
    at: 'wide',
    says: '`method` has no attribute `wide`. Use `kitchen`, `cooked`, `from` or `id`',
    shows: '<p>Stir.</p>',
  },
  {
    markdown: ':::method{.wide}\nStir.\n:::',
    at: '.wide',
    says: '`method` has no attribute `class`. Use `kitchen`, `cooked`, `from` or `id`',
  },
  {
    markdown: ':::ingredients{cooked=1.5.2026}\n- 1 cup milk\n:::',
    at: '1.5.2026',
    says: '`cooked` of `ingredients` cannot be `1.5.2026`. Write it like `2026-05-01`',
    expected: ['2026-05-01'],
  },
  {
    markdown: ':::ingredients{cooked=2026-02-30}\n- 1 cup milk\n:::',
    at: '2026-02-30',
    says: '`cooked` of `ingredients` cannot be `2026-02-30`. Write it like `2026-05-01`',
  },
  {
    markdown: ':::ingredients{anchor}\n- 1 cup milk\n:::',
    at: 'anchor',
    says: '`anchor` of `ingredients` is empty. Give it a value, or take it away',
  },
  {
    markdown: 'In a :pan[9 in]{depht="2 in"} pan.',
    at: 'depht',
    says: '`pan` has no attribute `depht`. Write `depth`',
    shows: '9 in',
  },
  {
    markdown: 'In a :pan[9 in]{depth=deep} pan.',
    at: 'deep',
    says: '`depth` of `pan` cannot be `deep`. Write it like `2 in` or `5 cm`',
  },
  {
    markdown: 'Line a :pan[loaf pan].',
    at: 'loaf pan',
    says: '`loaf pan` says no size, and US ones differ. Write `5 × 9 in`, `4.5 × 8.5 in` or `4 × 8 in` before it, or take the annotation away where no size matters',
    expected: ['5 × 9 in', '4.5 × 8.5 in', '4 × 8 in'],
    shows: 'loaf pan',
  },
  {
    markdown: 'Heat a :pan[pizza stone].',
    at: 'pizza stone',
    says: '`pizza stone` says no size. Write `9×13 in`, `20 cm round` or `2 lb loaf tin` before it, or take the annotation away where no size matters',
    shows: 'pizza stone',
  },
  {
    markdown: 'Bake until the middle reads :core[205°F]{of=bread}.',
    at: 'bread',
    says: '`bread` is no food with a safe temperature, so this core temperature cannot be checked. Write `of=` with a listed meat or fish, or with `poultry`, `poultry-pieces`, `ground-poultry`, `ground-meat`, `whole-meat`, `game`, `pork`, `ham`, `sausage`, `fish`, `shellfish`, `egg-dish`, `casserole`, `leftovers`, `stuffing` or `offal`; where it tells when bread is done, not when it is safe, write `:temp[205°F]`',
  },
  {
    markdown: 'At :oven[350°F]{fan=yes}.',
    at: 'fan',
    says: '`oven` has no attribute `fan`. Take it away: it takes none',
  },
  {
    markdown: 'Heat to :oven[a good heat] now.',
    at: 'a good heat',
    says: '`a good heat` is no oven setting that can be read. Write it like `400°F` or `180 °C/160 °C fan/gas 4`',
    shows: '<p>Heat to a good heat now.</p>',
  },
  {
    markdown: 'Stir in :amount[some *more*]{of=milk} now.',
    at: 'some *more',
    says: '`some more` is no amount that can be read. Write it like `½ cup` or `100 g`',
    shows: '<p>Stir in some <em>more</em> now.</p>',
  },
  {
    markdown: ':::ingredients\n- Milk, :amount[plenty]\n:::',
    at: 'plenty',
    says: '`plenty` is no amount that can be read. Write it like `½ cup` or `100 g`',
    shows: '<li>Milk, plenty</li>',
  },
  {
    markdown: 'Cut :length[small].',
    at: 'small',
    says: '`small` is no length that can be read. Write it like `2 in` or `5 cm`',
  },
  {
    markdown: 'Use a :pan{depth="2 in"} here.',
    at: ':pan{depth="2 in"}',
    says: '`pan` has no words between its square brackets. Write it like `:pan[9×13 in]`',
    shows: '<p>Use a :pan{depth="2 in"} here.</p>',
  },
  {
    markdown: 'Bake to :core[165°F].',
    at: '165°F',
    says: `\`165°F\` does not say of what, so this core temperature cannot be checked. Write \`of=\` with a listed meat or fish, or with ${oneOf(classes)}`,
  },
  {
    markdown: 'Bake to :core[165°F]{of=poltry}.',
    at: 'poltry',
    says: '`poltry` is no food with a safe temperature, so this core temperature cannot be checked. Write `of=poultry`',
    expected: ['poultry'],
  },
  {
    markdown: '---\nretare:\n  kitchen: us\n---\n\n:::ingredients{kitchen=uk}\n- 240 ml milk\n:::',
    at: 'kitchen=uk',
    says: 'This `ingredients` block is for the kitchen `uk`, and no native one (`us`) stands before it. Put the native block first, or name its kitchen under `retare` in the front matter',
    shows: '<li>240 ml milk</li>',
  },
  {
    markdown: `---\nretare: { kitchen: us }\n---\n\n:::method{kitchen=uk}\nStir.\n:::`,
    at: 'kitchen=uk',
    says: 'This `method` block is for the kitchen `uk`, and no native one (`us`) stands before it. Put the native block first, or name its kitchen under `retare` in the front matter',
    shows: '<p>Stir.</p>',
  },
  {
    markdown: `${native}:::ingredients{kitchen=uk}\n- 240 ml milk\n:::\n\n:::ingredients{kitchen=uk}\n- 2 g salt\n:::`,
    at: 'kitchen=uk',
    says: 'There is another `ingredients` block for `uk` of the same part, so this one is not used. Tie each to its native block with the same `#id` in both, or take one away',
    shows: '<li>2 g salt</li>',
  },
  {
    markdown:
      ':::ingredients{#crumb kitchen=us}\n- 1 cup milk\n:::\n\n:::ingredients{#crum kitchen=uk}\n- 240 ml milk\n:::',
    at: '#crum',
    says: 'No native `ingredients` block before this one has the id `#crum`. Write `#crumb`',
    expected: ['#crumb'],
    shows: '<li>240 ml milk</li>',
  },
  {
    markdown: 'See:\n\n::oven[400°F]\n',
    at: '::oven[400°F]',
    says: '`oven` cannot be read in this form. Write `:oven[…]` in a line of words',
    expected: [':oven[…]'],
    shows: '<p>::oven[400°F]</p>',
  },
  {
    markdown: '::ingredients{kitchen=us}\n\n- 1 cup milk\n',
    at: '::ingredients{kitchen=us}',
    says: '`ingredients` cannot be read in this form. Write `:::ingredients` on a line of its own, and `:::` after its last line',
    shows: '<p>::ingredients{kitchen=us}</p>',
  },
  {
    markdown: ':::kitchens\nHere.\n:::',
    at: ':::kitchens',
    says: '`kitchens` cannot be read in this form. Write `::kitchens` on a line of its own',
    shows: '<p>:::kitchens</p>\n<p>Here.</p>\n<p>:::</p>',
  },
  {
    markdown: '---\ntitle: T\nretare:\n  kitchen: uk\n  mades: 4\n---\n\nAt :temp[40°C].',
    at: 'mades',
    says: '`retare` has no key `mades`. Write `makes`',
    expected: ['makes'],
    shows: '40°C',
  },
  {
    markdown: '---\nretare:\n  kitchen: gb\n---\n\nAt :temp[40°C].',
    at: 'gb',
    says: `There is no kitchen \`gb\`. Use ${oneOf(known)}, or add it to your larder file`,
  },
  {
    markdown: '---\nretare:\n  preserve: maybe\n---\n\nAt :temp[40°C].',
    at: 'maybe',
    says: '`preserve` cannot be `maybe`. Write `true` or `false`',
  },
  {
    markdown: '---\nretare: [us]\n---\n\nAt :temp[40°C].',
    at: '[us]',
    says: '`retare` takes a block of keys, not `us`. Use `kitchen`, `makes`, `anchor` or `preserve`',
  },
  {
    markdown: '---\nretare:\n  makes: [4]\n---\n\nWords only.',
    at: '[4]',
    says: '`makes` takes words, not a list or a block. Write them on one line, in quotes if they hold a colon',
    shows: '<p>Words only.</p>',
  },
];

/** The text that a place spans. */
function spanned(markdown: string, { place }: { place?: unknown }): string {
  const { start, end } = place as { start: { offset: number }; end: { offset: number } };
  return markdown.slice(start.offset, end.offset);
}

const lineEnds = [
  { name: 'on Unix', eol: '\n' },
  { name: 'on Windows', eol: '\r\n' },
];

describe.each(lineEnds)('$name', ({ eol }) => {
  test.for(slips.map((slip) => ({ ...slip, title: slip.says.split('. ')[0] })))('$title', (slip) => {
    const markdown = slip.markdown.replaceAll('\n', eol);
    const { messages, html } = render(markdown, { options });
    expect(messages.map(({ reason }) => reason)).toEqual([slip.says]);
    const [message] = messages;
    if (message === undefined) throw new Error('There is a message.');
    expect(spanned(markdown, message)).toBe(slip.at);
    const before = markdown.slice(0, (message.place as { start: { offset: number } }).start.offset).split('\n');
    expect([message.line, message.column]).toEqual([before.length, (before.at(-1)?.length ?? 0) + 1]);
    expect(message).toMatchObject({ ruleId: 'annotation', source: 'retare', fatal: false });
    if (slip.actual !== undefined) expect(message.actual).toBe(slip.actual);
    if (slip.expected !== undefined) expect(message.expected).toEqual(slip.expected);
    if (slip.shows !== undefined) expect(html).toContain(slip.shows);
    expect(html).not.toContain('undefined');
  });
});

test('a block whose kitchen is misspelt is not taken for a native one', () => {
  const { html } = render(`${native}:::ingredients{kichen=uk}\n- 240 ml milk\n:::`, { options });
  expect(html.split('<div class="retare-ingredients">')).toHaveLength(2);
});

test('front matter that is no YAML is reported where it breaks', () => {
  const markdown = '---\ntitle: "Soup\nretare:\n  kitchen: uk\n---\n\nAt :temp[40°C].';
  const { messages, html } = render(markdown, { options });
  expect(messages).toHaveLength(1);
  expect(messages[0]?.reason).toMatch(
    /^This front matter cannot be read as YAML \(.+\), so nothing under `retare` counts\. Correct it there$/,
  );
  expect(messages[0]?.line).toBeGreaterThan(1);
  expect(html).toContain('40°C');
});

test('an escape or a reference before it does not move a place', () => {
  const markdown = 'A \\* and &amp; then\n  > more :oven[so \\& hot].';
  const { messages } = render(markdown, { options });
  expect(messages.map((message) => spanned(markdown, message))).toEqual(['so \\& hot']);
});
