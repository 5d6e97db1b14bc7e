import { describe, expect, test } from 'vitest';
import { htmlOf, readIn, render, serving } from './pipeline.ts';

const usAndUk = serving('us', 'uk');

/** What a US and a UK reader read of a line in a native US method. */
function inMethod(line: string, block = ''): { us: string; uk: string } {
  const html = htmlOf(`${block}:::method\n${line}\n:::`, { options: usAndUk });
  const method = html.slice(html.indexOf('<div class="retare-method">')).replace(/<p class="retare-caution">.*/s, '');
  return { us: readIn('us', method), uk: readIn('uk', method) };
}

const annotations = [
  // Oven settings of 200 °C, 180 °C fan, gas 6 beside 400 °F: common practice, no source.
  { name: 'oven', line: 'Heat to :oven[400°F].', uk: 'Heat to 200°C/180°C fan/gas 6.' },
  { name: 'oven by hand', line: 'Heat to :oven[350 °F convection].', uk: 'Heat to 190°C/170°C fan/gas 5.' },
  // 110 °F is 43.3 °C: arithmetic.
  { name: 'temp', line: 'Warm it to :temp[110°F].', uk: 'Warm it to 43°C.' },
  // 165 °F is 73.9 °C, and never down: arithmetic.
  { name: 'core', line: 'Bake to :core[165°F]{of=poultry}.', uk: /^Bake to 74°C( \(.+\))?\.$/ },
  // One inch is 2.54 cm: NIST SP 811.
  { name: 'pan', line: 'Butter a :pan[9×13 in]{depth="2 in"} dish.', uk: 'Butter a 23 × 33 cm dish.' },
  { name: 'length', line: 'Cut it into :length[2 in] squares.', uk: 'Cut it into 5 cm squares.' },
  // A US cup is 236.6 ml: NIST Handbook 44.
  { name: 'amount', line: 'Pour in :amount[1 cup]{of=water}.', uk: 'Pour in 240 ml.' },
] as const;

test.for(annotations)('`$name` follows the kitchen', ({ line, uk }) => {
  const read = inMethod(line);
  expect(read.us).toBe(line.replace(/:\w+\[([^\]]*)\](?:\{[^}]*\})?/g, '$1'));
  if (typeof uk === 'string') expect(read.uk).toBe(uk);
  else expect(read.uk).toMatch(uk);
});

const beans = ':::ingredients\n- 1 cup heavy cream\n- 2 (15-oz) cans butter beans\n:::\n\n';

test('the shares of a listed food add up to it', () => {
  const { uk } = inMethod('Pour :amount[½ cup]{of="heavy cream"}, then :amount[½ cup]{of="heavy cream"}.', beans);
  expect(uk).toBe('Pour 120 ml, then 120 ml.');
});

test('several settings of one oven are one setting', () => {
  const html = htmlOf(':::method{kitchen=uk}\nHeat to :oven[180 °C/160 °C fan/gas 4].\n:::', {
    options: { settings: { kitchen: 'uk', kitchens: ['uk', 'us'] } },
  });
  expect(readIn('uk', html)).toContain('Heat to 180 °C/160 °C fan/gas 4.');
  expect(readIn('us', html)).toContain('Heat to 350°F.');
});

test('an annotation outside the blocks follows the kitchen too', () => {
  const html = htmlOf('Proof it at :temp[110°F] first.', { options: usAndUk });
  expect([readIn('us', html), readIn('uk', html)]).toEqual(['Proof it at 110°F first.', 'Proof it at 43°C first.']);
});

describe('an ingredient line', () => {
  /** What a US and a UK reader read of native US lines. */
  function lines(...items: string[]): { us: string; uk: string } {
    const html = htmlOf(`:::ingredients\n${items.join('\n')}\n:::`, { options: usAndUk });
    const list = html.slice(html.indexOf('<ul'), html.indexOf('<details') < 0 ? undefined : html.indexOf('<details'));
    return { us: readIn('us', list), uk: readIn('uk', list) };
  }

  test('finds its amount without annotation', () => {
    expect(lines('- 1 cup milk')).toEqual({ us: '1 cup milk', uk: '240 ml milk' });
  });

  test('has every further quantity converted in place', () => {
    expect(lines('- 1 cup milk, cut into 2-inch pieces').uk).toBe('240 ml milk, cut into 5 cm pieces');
  });

  test('follows an annotation among its words', () => {
    expect(lines('- 1 cup milk, warmed to :temp[110°F]')).toEqual({
      us: '1 cup milk, warmed to 110°F',
      uk: '240 ml milk, warmed to 43°C',
    });
  });

  test('has its amount overridden by `amount`', () => {
    expect(lines('- No. 3 milk: :amount[1 cup]{of=milk} of it')).toEqual({
      us: 'No. 3 milk: 1 cup of it',
      uk: 'No. 3 milk: 240 ml of it',
    });
  });

  test('without an amount reads the same everywhere', () => {
    const html = htmlOf(':::ingredients\n- salt, to taste\n:::', { options: usAndUk });
    expect(html).toContain('<li>salt, to taste</li>');
  });

  test("shows the method's own word in brackets", () => {
    const html = htmlOf(':::ingredients\n- 1 bunch cilantro\n:::\n\n:::method\nAdd the cilantro.\n:::', {
      options: usAndUk,
    });
    expect(readIn('uk', html)).toMatch(/1 bunch (fresh )?coriander \(cilantro\)/);
    expect(readIn('us', html)).toContain('1 bunch cilantro');
    expect(readIn('us', html)).not.toContain('coriander');
  });
});

describe('the chooser', () => {
  const block = ':::ingredients\n- 1 cup milk\n:::';
  const count = (html: string): number => html.split('<retare-kitchens').length - 1;

  test('stands before the first block', () => {
    const html = htmlOf(`Words.\n\n:::method\nStir.\n:::\n\n${block}`, { options: usAndUk });
    expect(html.indexOf('<retare-kitchens>')).toBeLessThan(html.indexOf('<div class="retare-method">'));
    expect(count(html)).toBe(1);
  });

  test('stands at its marker', () => {
    const html = htmlOf(`::kitchens\n\nWords.\n\n${block}`, { options: usAndUk });
    expect(html.startsWith('<retare-kitchens>')).toBe(true);
    expect(count(html)).toBe(1);
  });

  test('stands at each marker, and says which are further ones', () => {
    const html = htmlOf(`::kitchens\n\n${block}\n\n::kitchens`, { options: usAndUk });
    expect(count(html)).toBe(2);
    expect(html.split('data-again')).toHaveLength(2);
  });

  test('is left out where there is one kitchen', () => {
    expect(htmlOf(block, { options: serving('us') })).not.toContain('retare-kitchens');
  });

  test('has the native kitchen chosen', () => {
    expect(htmlOf(block, { options: usAndUk })).toMatch(/<option value="us"[^>]* selected>/);
  });
});

describe('front matter', () => {
  const post = (retare: string, kitchen = ''): string =>
    `---\ntitle: A post\nretare:\n${retare}\n---\n\n:::ingredients${kitchen}\n- 500 ml milk\n:::\n`;

  test('names the native kitchen of the whole post', () => {
    const html = htmlOf(post('  kitchen: uk'), { options: usAndUk });
    expect(html).toMatch(/<option value="uk"[^>]* selected>/);
    expect(readIn('uk', html)).toContain('500 ml milk');
  });

  test('makes a preserve read the same in every kitchen', () => {
    const html = htmlOf(post('  preserve: true'), { options: usAndUk });
    expect(html).toContain('<li>500 ml milk</li>');
    expect(html).not.toContain('retare-kitchens');
    expect(html).toContain('Follow your own food-safety authority.');
  });

  test('is read where another plugin keeps it', () => {
    const matter = () => (_: unknown, file: { data: Record<string, unknown> }) => {
      file.data.matter = { retare: { kitchen: 'uk' } };
    };
    const { html } = render(':::ingredients\n- 500 ml milk\n:::', { before: [matter], options: usAndUk });
    expect(html).toMatch(/<option value="uk"[^>]* selected>/);
  });
});
