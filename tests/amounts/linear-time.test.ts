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

function milliseconds(read: (text: string) => unknown, text: string): number {
  const start = performance.now();
  read(text);
  return performance.now() - start;
}

/** The shortest of some runs: noise only ever adds. */
function shortest(read: (text: string) => unknown, text: string, runs: number): number {
  return Math.min(...Array.from({ length: runs }, () => milliseconds(read, text)));
}

function median(values: readonly number[]): number {
  return [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? 0;
}

describe('twice the text takes at most 2.5 times as long', () => {
  const cases = scraps.flatMap(([name, scrap]) => Object.keys(readers).map((reader) => ({ name, scrap, reader })));

  test.for(cases)('$reader of $name', ({ scrap, reader }) => {
    const read: (text: string) => unknown = readers[reader as keyof typeof readers];
    const sizes = [16_000, 32_000, 64_000, 128_000];
    const texts = sizes.map((size) => prefix + scrap.repeat(Math.ceil(size / scrap.length)));
    const times = texts.map((text) => shortest(read, text, 5));
    const ratios = times.slice(1).map((time, index) => time / Math.max(times[index] ?? 0, 1));
    expect(median(ratios), times.map((time) => time.toFixed(1)).join(' ms, ')).toBeLessThanOrEqual(2.5);
  });
});

describe('a line of a megabyte and one of two', () => {
  const megabyte = 1_000_000;

  test.for(scraps.slice(0, 5))('of %s are read, the longer in at most 2.5 times the time', ([, scrap]) => {
    const once = scrap.repeat(Math.ceil(megabyte / scrap.length));
    const single = shortest(readLine, once, 3);
    const double = shortest(readLine, once + once, 3);
    expect(double / single, `${single.toFixed(0)} and ${double.toFixed(0)} ms`).toBeLessThanOrEqual(2.5);
  });
});
