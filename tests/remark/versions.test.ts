import { describe, expect, test } from 'vitest';
import { htmlOf, readIn, render, serving } from './pipeline.ts';

const three = serving('us', 'uk', 'eu');
const native = ':::ingredients{kitchen=us}\n- 1 cup milk\n:::\n\n';
const method = ':::method\nHeat to :oven[400°F].\n:::\n\n';

describe("an author's own version", () => {
  test("takes the native block's place for its kitchen, word for word", () => {
    const html = htmlOf(`${native}:::ingredients{kitchen=uk}\n- 237 ml *very* good milk\n:::\n`, { options: three });
    expect(readIn('uk', html)).toContain('237 ml very good milk');
    expect(readIn('uk', html)).not.toContain('1 cup');
    expect(readIn('us', html)).toContain('1 cup milk');
    expect(readIn('eu', html)).toContain('240 ml milk');
    expect(html).toContain('<em>very</em>');
  });

  test('says its standing in plain words', () => {
    const of = (attributes: string): string =>
      readIn(
        'uk',
        htmlOf(`${native}:::ingredients{kitchen=uk ${attributes}}\n- 240 ml milk\n:::\n`, { options: three }),
      );
    expect(of('')).toContain('rewritten by the author, not cooked yet');
    expect(of('cooked=2026-05-01')).toContain('rewritten by the author, and cooked on 1 May 2026');
  });

  test('leaves the other kitchens a version by calculation, and says so', () => {
    const html = htmlOf(`${native}:::ingredients{kitchen=uk}\n- 240 ml milk\n:::\n`, { options: three });
    expect(readIn('eu', html)).toContain('worked out by calculation, not cooked yet');
    expect(readIn('us', html)).not.toMatch(/by calculation|rewritten/);
  });

  test('says nothing of an amount whose word alone is another', () => {
    const html = htmlOf(':::ingredients{kitchen=us}\n- 2 ribs celery\n- 1 cup milk\n:::\n', { options: three });
    expect(readIn('uk', html)).toContain('2 sticks celery');
    expect(html).toContain('milk: 1 cup, exactly 236.6 ml, became 240 ml');
    expect(html).not.toContain('celery: 2 ribs');
  });

  test('of a method takes its place too', () => {
    const html = htmlOf(`${method}:::method{kitchen=uk}\nHeat to :oven[gas 6].\n:::\n`, { options: three });
    expect(readIn('uk', html)).toContain('Heat to gas 6.');
    expect(readIn('us', html)).toContain('Heat to 400°F.');
    expect(readIn('eu', html)).toContain('Heat to 200°C/180°C fan.');
  });

  test('of one part is tied to it by its id', () => {
    const part = (id: string, kitchen: string, milk: string): string =>
      `:::ingredients[Part ${id}]{#${id} kitchen=${kitchen}}\n- ${milk}\n:::\n\n`;
    const html = htmlOf(
      part('a', 'us', '1 cup milk') + part('b', 'us', '2 cups milk') + part('a', 'uk', '235 ml milk'),
      { options: serving('us', 'uk') },
    );
    const read = readIn('uk', html.replace(/<details.*?<\/details>/gs, ''));
    expect(read).toContain('Part a 235 ml milk');
    expect(read).toContain('Part b 475 ml milk');
  });

  test('may have a label of its own', () => {
    const html = htmlOf(
      ':::ingredients[For the pan]\n- 1 cup milk\n:::\n\n:::ingredients[For the *tin*]{kitchen=uk}\n- 240 ml milk\n:::',
      { options: serving('us', 'uk') },
    );
    expect(readIn('uk', html)).toContain('For the tin');
    expect(readIn('uk', html)).not.toContain('For the pan');
    expect(readIn('us', html)).toContain('For the pan');
  });

  test('is left out where its kitchen is not served', () => {
    const html = htmlOf(`${native}:::ingredients{kitchen=au}\n- 240 ml milk\n:::\n`, { options: serving('us', 'uk') });
    expect(html).not.toContain('"au"');
  });
});

describe('a native block', () => {
  test.for([
    '1 cup **whole** milk, `warm`',
    '2⅝ cups milk (a made-up measure)',
    '½ cup half-and-half',
    '1.1 lb boneless chicken thighs',
    '1 cup milk or 236 ml soy milk, plus 1 tbsp',
  ])('shows `%s` as it was written', (line) => {
    const html = htmlOf(`:::ingredients\n- ${line}\n:::`, { options: serving('us', 'uk', 'eu', 'ca', 'au') });
    expect(readIn('us', html.slice(html.indexOf('<ul>'), html.indexOf('</ul>')))).toBe(line.replace(/\*\*|`/g, ''));
  });

  test('keeps its words that are no line', () => {
    const { html } = render(':::ingredients\nYou need a :pan[9 in] pan:\n\n- 1 cup milk\n\nand *patience*.\n:::', {
      options: serving('us', 'uk'),
    });
    expect(readIn('us', html)).toContain('You need a 9 in pan:');
    expect(readIn('uk', html)).toMatch(/You need a 23 cm pan:/);
    expect(html).toContain('and <em>patience</em>.');
    expect(html).not.toMatch(/<div>9/);
  });

  test("keeps the author's markup inside an annotation", () => {
    const html = htmlOf('Warm it to :temp[*110*°F].', { options: serving('us', 'uk') });
    expect(html).toContain('<em>110</em>°F</span><span data-retare="uk">43°C</span>');
  });

  test('of a method keeps its label', () => {
    expect(htmlOf(':::method[For the *sauce*]\nStir.\n:::')).toContain(
      '<p class="retare-part">For the <em>sauce</em></p>',
    );
  });
});

test('kitchens that read the same share one text', () => {
  const html = htmlOf(native, { options: serving('us', 'uk', 'eu', 'au') });
  expect(html).toContain('<span data-retare="uk eu au">240 ml milk</span>');
});

test('a text that all kitchens share has no mark', () => {
  expect(htmlOf(':::ingredients\n- 2 bay leaves\n:::', { options: three })).toContain('<li>2 bay leaves</li>');
});

test('text around the blocks passes through untouched', () => {
  const before = 'A *word* and a [link](a.html).';
  const after = '| a | b |\n| - | - |\n| 1 cup | 2 |';
  const html = htmlOf(`${before}\n\n${native}${after}`, { options: three });
  expect(html.startsWith(htmlOf(before, { without: true }))).toBe(true);
  expect(html.endsWith(htmlOf(after, { without: true }))).toBe(true);
});
