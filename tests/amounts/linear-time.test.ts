import { readLength, readLine, readMentions, readOven, readPan, readTemperature } from '@retare/core';
import { describe, expect, test } from 'vitest';

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
] as const;

const readers = { readLine, readMentions, readOven, readTemperature, readPan, readLength };
const prefix = '1 cup flour ';

const doubling = 2.5;
const attempts = 4;
/** Below this a measurement is noise. */
const leastMilliseconds = 5;

/**
 * The shortest of some runs of each text: another process on the machine only ever adds. The texts take turns, so that a busy moment does
 * not fall on all the runs of one of them.
 */
function shortestOfEach(read: (text: string) => unknown, texts: readonly string[], runs: number): number[] {
  const shortest = texts.map(() => Number.POSITIVE_INFINITY);
  for (let run = 0; run < runs; run += 1) {
    for (const [at, text] of texts.entries()) {
      const start = performance.now();
      read(text);
      shortest[at] = Math.min(shortest[at] ?? 0, performance.now() - start);
    }
  }
  return shortest.map((time) => Math.max(leastMilliseconds, time));
}

/** By what factor the time grows with each doubling of the text, on average over the sizes. */
function growth(read: (text: string) => unknown, texts: readonly string[], runs: number): number {
  const times = shortestOfEach(read, texts, runs);
  return ((times.at(-1) ?? 0) / (times[0] ?? 1)) ** (1 / (texts.length - 1));
}

/** The least growth of some attempts, ended by the first that is good enough: quadratic reading would show 4 each time. */
function leastGrowth(read: (text: string) => unknown, texts: readonly string[], runs: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let attempt = 0; attempt < attempts && least > doubling; attempt += 1) {
    least = Math.min(least, growth(read, texts, runs));
  }
  return least;
}

describe('twice the text takes at most 2.5 times as long', () => {
  // Labels share their grammar with lines, so that a few scraps do for them.
  const labels = scraps.filter(([name]) => ['digits', 'fractions', 'ranges', 'sides', 'fan settings'].includes(name));
  const cases = Object.keys(readers).flatMap((reader) => {
    const texts = reader === 'readLine' || reader === 'readMentions' ? scraps : labels;
    return texts.map(([name, scrap]) => ({ name, scrap, reader }));
  });

  test.for(cases)('$reader of $name', ({ scrap, reader }) => {
    const read: (text: string) => unknown = readers[reader as keyof typeof readers];
    const sizes = [8_000, 16_000, 32_000];
    const texts = sizes.map((size) => prefix + scrap.repeat(Math.ceil(size / scrap.length)));
    expect(leastGrowth(read, texts, 2)).toBeLessThanOrEqual(doubling);
  });

  test('and a reading that is quadratic is seen to take longer', { timeout: 60_000 }, () => {
    const quadratic = (text: string): number => {
      let sum = 0;
      for (let at = 0; at < text.length; at += 1)
        for (let other = 0; other < text.length; other += 1) sum += at ^ other;
      return sum;
    };
    const texts = [3_000, 6_000, 12_000].map((size) => 'x'.repeat(size));
    expect(leastGrowth(quadratic, texts, 6)).toBeGreaterThan(doubling);
  });
});

describe('a line of half a megabyte and one of a megabyte', () => {
  const half = 500_000;

  test.for(scraps.slice(0, 4))('of %s are read, the longer in at most 2.5 times the time', ([, scrap]) => {
    const once = scrap.repeat(Math.ceil(half / scrap.length));
    expect(leastGrowth(readLine, [once, once + once], 1)).toBeLessThanOrEqual(doubling);
  });
});
