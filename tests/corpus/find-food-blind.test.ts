import { readFileSync } from 'node:fs';
import { findFoodOfLine, readLine } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { expect, test } from 'vitest';
import { type LineLabel, lineLabels, withoutMarker } from './corpus.ts';
import { describeCorpus } from './describe-corpus.ts';

/**
 * Every labelled ingredient line by the SHA-1 of its text, with the larder foods that are right for it; null where no food is. Labelled twice
 * by readers who did not see what is found, and decided by a third where they, or the finder, differed.
 */
interface Blind {
  sha1: string;
  foods: (string | null)[];
}

const blind = JSON.parse(readFileSync(new URL('food-blind.json', import.meta.url), 'utf8')) as Blind[];

describeCorpus('finding the food of every labelled line, judged by blind labels', () => {
  const { foods, kitchens } = builtInLarder();
  const units = kitchens.get('us')?.units ?? {};
  const texts = new Map(lineLabels().map((label) => [(label as LineLabel & { sha1: string }).sha1, label.text]));
  const found = blind.map(({ sha1 }) => {
    const reading = readLine(withoutMarker(texts.get(sha1) ?? ''), { kitchen: units });
    return findFoodOfLine(reading, foods, 'us')?.food.id ?? null;
  });
  const share = (holds: (each: Blind, at: number) => boolean): number => blind.filter(holds).length / blind.length;

  test('covers all of them', () => {
    expect(blind.filter(({ sha1 }) => !texts.has(sha1))).toEqual([]);
    expect(blind.length).toBeGreaterThan(500);
  });

  test('gives the right food, or rightly none, for 98 %', () => {
    expect(share(({ foods: right }, at) => right.includes(found[at] ?? null))).toBeGreaterThanOrEqual(0.98);
  });

  test('gives a wrong food for 0.5 % at most', () => {
    const isWrong = ({ foods: right }: Blind, at: number): boolean =>
      found[at] !== null && !right.includes(found[at] ?? null);
    expect(share(isWrong)).toBeLessThanOrEqual(0.005);
  });

  test('gives some food for 95 %', () => {
    expect(share((_, at) => found[at] !== null)).toBeGreaterThanOrEqual(0.95);
  });
});
