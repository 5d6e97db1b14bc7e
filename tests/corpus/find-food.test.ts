import { readFileSync } from 'node:fs';
import { findFoodOfLine, readLine } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { expect, test } from 'vitest';
import { type LineLabel, lineLabels, withoutMarker } from './corpus.ts';
import { describeCorpus } from './describe-corpus.ts';

/**
 * A line by the SHA-1 of its text, and the larder food that a cook would say it means, as a person read it: null where it names
 * several foods, another recipe, or a food that the larder does not have. Of two foods without an amount, the first. Labelled while
 * the finder was being mended: find-food-blind.test.ts judges harder.
 */
interface Checked {
  sha1: string;
  food: string | null;
}

const checked = JSON.parse(readFileSync(new URL('food-sample.json', import.meta.url), 'utf8')) as Checked[];

/** The ingredient lines in the order of their hashes: the sample is the first 300, so that nobody chose them. */
function firstByHash(count: number): LineLabel[] {
  const lines = new Map(lineLabels().map((label) => [(label as LineLabel & { sha1: string }).sha1, label]));
  return [...lines]
    .filter(([, { kind }]) => kind !== 'not-an-ingredient')
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .slice(0, count)
    .map(([, label]) => label);
}

describeCorpus('finding the food of 300 hand-checked lines', () => {
  const { foods, kitchens } = builtInLarder();
  const units = kitchens.get('us')?.units ?? {};
  const lines = firstByHash(checked.length);
  const found = lines.map(({ text }) => {
    const reading = readLine(withoutMarker(text), { kitchen: units });
    return findFoodOfLine(reading, foods, 'us')?.food.id ?? null;
  });
  const share = (count: number) => count / checked.length;

  test('covers 300 lines, each the one that was checked', () => {
    expect(lines.map((line) => (line as LineLabel & { sha1: string }).sha1)).toEqual(checked.map(({ sha1 }) => sha1));
    expect(lines).toHaveLength(300);
  });

  test('names only foods of the larder', () => {
    expect(checked.filter(({ food }) => food !== null && !foods.has(food))).toEqual([]);
  });

  test('gives the right food, or rightly none, for 98 %', () => {
    expect(share(checked.filter(({ food }, at) => food === found[at]).length)).toBeGreaterThanOrEqual(0.98);
  });

  test('gives a wrong food for 0.5 % at most', () => {
    const wrong = checked.filter(({ food }, at) => found[at] !== null && food !== found[at]);
    expect(share(wrong.length)).toBeLessThanOrEqual(0.005);
  });

  test('gives some food for 95 %', () => {
    expect(share(found.filter((food) => food !== null).length)).toBeGreaterThanOrEqual(0.95);
  });
});
