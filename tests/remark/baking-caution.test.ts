import rehypeStringify from 'rehype-stringify';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import remarkRetare from 'remark-retare';
import { unified } from 'unified';
import { describe, expect, test } from 'vitest';

/** The cautions of a cake in one pan, each with the kitchens that are told it. */
function cautions(pan: string): { kitchens: string | undefined; text: string | undefined }[] {
  const post = `:::ingredients{kitchen=us}\n- 2 cups all-purpose flour\n:::\n\n:::method\nBake in a :pan[${pan}].\n:::\n`;
  const processor = unified().use(remarkParse).use(remarkRetare).use(remarkRehype).use(rehypeStringify);
  const html = String(processor.processSync(post));
  const found = html.matchAll(/<p(?: data-retare="([^"]*)")? class="retare-caution">([^<]*)<\/p>/g);
  return [...found].map(([, kitchens, text]) => ({ kitchens, text }));
}

describe('the caution on baking time', () => {
  // Area of an 11 in (27.94 cm) round over that of a 26 cm one: 1.15. Usual pans are common practice, no source.
  test('is told to the kitchen whose pan makes the batter over a tenth deeper, and to no other', () => {
    expect(cautions('11 in round')).toEqual([
      { kitchens: 'uk', text: expect.stringContaining('It stands 15 % deeper in this pan') },
    ]);
  });

  test('is not told where the base is within a tenth', () => {
    expect(cautions('9×13 in')).toEqual([]);
    expect(cautions('8 in round')).toEqual([]);
  });
});

// A Canadian half sheet of 13 × 18 in has 1.15 of the base.
test('what holds no batter has no depth: a sheet of cookies is not told', () => {
  expect(cautions('12×17 in sheet pan')).toEqual([]);
});

test('of two ovens beyond the dial each is told, once', () => {
  const post =
    ':::ingredients{kitchen=eu}\n- 500 g plain flour\n:::\n\n:::method\nProve at :oven[35 °C], rest, and again at :oven[35 °C].\nBake at :oven[330 °C].\n:::\n';
  const processor = unified().use(remarkParse).use(remarkRetare).use(remarkRehype).use(rehypeStringify);
  const page = String(processor.processSync(post));
  expect(page.match(/The recipe asks for 95°F \(35 °C\)/gu)).toHaveLength(1);
  expect(page.match(/The recipe asks for 626°F \(330 °C\)/gu)).toHaveLength(1);
  expect(page).not.toMatch(/>170°F|>550°F/u);
});

test.for([
  ['600°F', 'The recipe asks for 316°C (600°F). An oven here goes only as high as 250°C'],
  [
    '95°F',
    'The recipe asks for 35°C (95°F). An oven here goes only as low as 50°C, which is too hot: do not set it to that instead',
  ],
] as const)('readers whose oven does not go so far are told what the recipe asks for: %s', ([oven, told]) => {
  const post = `:::ingredients{kitchen=us}\n- 2 eggs\n:::\n\n:::method\nHeat to :oven[${oven}].\n:::\n`;
  const processor = unified().use(remarkParse).use(remarkRetare).use(remarkRehype).use(rehypeStringify);
  expect(String(processor.processSync(post))).toContain(told);
});
