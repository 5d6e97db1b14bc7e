import { lineOfText, readLength, readLine, readMentions, readOven, readPan, readTemperature } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { leastGrowth } from '../growth.ts';

/** What a hostile or broken line may consist of, many times over. */
const scraps = [
  ['digits', '1234567890'],
  ['slashes', '1/2/'],
  ['fractions', '½ 1/3 '],
  ['open brackets', '('],
  ['bracketed amounts', '(2 cups) '],
  ['nested amounts', '(1 cup '],
  ['ranges', '1-'],
  ['sums', '1 cup + 2 tbsp + '],
  ['words for about', 'about up to '],
  ['adjectives', 'small heaped '],
  ['hyphens', 'a-b-'],
  ['clauses', ', 2 cups chopped'],
  ['alternatives', ' or 2 cups oil'],
  ['sides', '2 x '],
  ['quotation marks', '"2" '],
  ['link brackets', '[a]('],
  ['fan settings', '180 fan '],
  ['foods that are counted', 'plus 1 egg yolk '],
  ['unknown foods that are counted', 'and 1 gloop '],
  ['foods of one amount each', 'each, flour and '],
] as const;

const { foods, kitchens } = builtInLarder();
const us = kitchens.get('us');
if (us === undefined) throw new Error('The larder has a US kitchen.');
/** A line with its food and what else it counts. */
const readWhole = (text: string): unknown => lineOfText(text, 'line', us, foods);

const readers = { readLine, readWhole, readMentions, readOven, readTemperature, readPan, readLength };
const prefix = '1 cup flour ';

const doubling = 2.5;
describe('twice the text takes at most 2.5 times as long', () => {
  // Labels share their grammar with lines, so that a few scraps do for them.
  const labels = scraps.filter(([name]) => ['digits', 'fractions', 'ranges', 'sides', 'fan settings'].includes(name));
  const cases = Object.keys(readers).flatMap((reader) => {
    const texts = reader === 'readLine' || reader === 'readMentions' || reader === 'readWhole' ? scraps : labels;
    return texts.map(([name, scrap]) => ({ name, scrap, reader }));
  });

  test.for(cases)('$reader of $name', ({ scrap, reader }) => {
    const read: (text: string) => unknown = readers[reader as keyof typeof readers];
    const sizes = [8_000, 16_000, 32_000];
    const texts = sizes.map((size) => prefix + scrap.repeat(Math.ceil(size / scrap.length)));
    expect(leastGrowth(read, texts, { runs: 2, goodEnough: doubling })).toBeLessThanOrEqual(doubling);
  });

  test('and a reading that is quadratic is seen to take longer', () => {
    const quadratic = (text: string): number => {
      let sum = 0;
      for (let at = 0; at < text.length; at += 1)
        for (let other = 0; other < text.length; other += 1) sum += at ^ other;
      return sum;
    };
    const texts = [3_000, 6_000, 12_000].map((size) => 'x'.repeat(size));
    expect(leastGrowth(quadratic, texts, { runs: 6, goodEnough: doubling })).toBeGreaterThan(doubling);
  });
});

describe('a line of half a megabyte and one of a megabyte', () => {
  const half = 500_000;

  test.for(scraps.slice(0, 4))('of %s are read, the longer in at most 2.5 times the time', ([, scrap]) => {
    const once = scrap.repeat(Math.ceil(half / scrap.length));
    expect(leastGrowth(readLine, [once, once + once], { runs: 1, goodEnough: doubling })).toBeLessThanOrEqual(doubling);
  });
});
