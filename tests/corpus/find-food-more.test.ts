import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { findFoodOfLine, readLine } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { expect, test } from 'vitest';
import { corpusFolder, recipeLines, withoutMarker } from './corpus.ts';
import { describeCorpus } from './describe-corpus.ts';

/**
 * Lines of the collection that were not labelled for reading, by the SHA-1 of their text without its marker, with the larder foods
 * that are right for each; null where none is. The readers saw no result, and the rules were mended on these lines afterwards.
 */
interface Judged {
  sha1: string;
  foods: (string | null)[];
}

const judged = JSON.parse(readFileSync(new URL('food-blind-more.json', import.meta.url), 'utf8')) as Judged[];

/** Every line of the collection without its marker, by its hash. */
function textsByHash(): Map<string, string> {
  const files = ['a', 'b'].flatMap((part) => readdirSync(`${corpusFolder()}/${part}`));
  const lines = files.filter((name) => name.endsWith('.md')).flatMap(recipeLines);
  const texts = lines.flatMap((line) => [line.trim(), withoutMarker(line), withoutMarker(line).trim()]);
  return new Map(texts.map((text) => [createHash('sha1').update(text).digest('hex'), text]));
}

describeCorpus('finding the food of 300 more lines', () => {
  const { foods, kitchens } = builtInLarder();
  const units = kitchens.get('us')?.units ?? {};
  const texts = textsByHash();
  const found = judged.map(({ sha1 }) => {
    const reading = readLine(texts.get(sha1) ?? '', { kitchen: units });
    return findFoodOfLine(reading, foods, 'us')?.food.id ?? null;
  });
  const share = (holds: (each: Judged, at: number) => boolean): number => judged.filter(holds).length / judged.length;

  test('covers all of them', () => {
    expect(judged.filter(({ sha1 }) => !texts.has(sha1))).toEqual([]);
    expect(judged).toHaveLength(300);
  });

  test('gives the right food, or rightly none, for 98 %', () => {
    expect(share(({ foods: right }, at) => right.includes(found[at] ?? null))).toBeGreaterThanOrEqual(0.98);
  });

  test('gives a wrong food for 0.5 % at most', () => {
    const isWrong = ({ foods: right }: Judged, at: number): boolean =>
      found[at] !== null && !right.includes(found[at] ?? null);
    expect(share(isWrong)).toBeLessThanOrEqual(0.005);
  });
});
