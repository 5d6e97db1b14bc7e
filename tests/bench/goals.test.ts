import { expect, test } from 'vitest';
import { describeCorpus } from '../corpus/describe-corpus.ts';
import { runBenchmark } from './run-benchmark.ts';
import { percentile } from './tally.ts';

// The time that a recipe takes is printed by the benchmark and not tested: a busy machine would fail it.
describeCorpus('re-authoring real recipes', () => {
  const bench = runBenchmark();
  const { lineByLine, converted, reauthored } = bench.ways;

  test('is measured on at least 150 recipes', () => {
    expect(bench.reading.recipes.length).toBeGreaterThanOrEqual(150);
  });

  test('makes every line of a feasible version one that can be bought and measured', () => {
    expect(bench.uncookable.map(({ file, kitchen, words }) => `${kitchen} ${file}: ${words}`)).toEqual([]);
    expect(reauthored.goodLines).toBe(reauthored.lines);
  });

  test('asks for no more than what is bought', () => {
    expect(bench.short.map(({ file, kitchen, words }) => `${kitchen} ${file}: ${words}`)).toEqual([]);
  });

  test('finds no version for at most 5 % of recipes, and no food or stand-in for at most 3 % of lines', () => {
    expect(bench.infeasible.length / reauthored.versions).toBeLessThanOrEqual(0.05);
    expect(reauthored.notSold / reauthored.allLines).toBeLessThanOrEqual(0.03);
  });

  test('keeps every guarded ratio of a feasible version', () => {
    expect(bench.brokenInFeasible).toBe(0);
    expect(bench.brokenReadBack).toEqual([]);
    expect(reauthored.ratios).toBeGreaterThan(1000);
  });

  test('keeps the batch between 0.8 and 1.25 in at least 95 % of versions', () => {
    const within = bench.batchFactors.filter((factor) => factor >= 0.8 && factor <= 1.25);
    expect(within.length / bench.batchFactors.length).toBeGreaterThanOrEqual(0.95);
  });

  test('drifts by at most 2.5 % in the median line and 8 % in the 95th of a hundred', () => {
    expect(percentile(reauthored.drifts, 0.5)).toBeLessThanOrEqual(0.025);
    expect(percentile(reauthored.drifts, 0.95)).toBeLessThanOrEqual(0.08);
  });

  // Cartons of milk and blocks of butter are opened for the same need by whatever way it is worked out.
  test('leaves at most half as much of packs that are used whole as converting line by line, and no more of the rest', () => {
    expect(reauthored.wholeLeftoverGrams).toBeLessThanOrEqual(lineByLine.wholeLeftoverGrams / 2);
    expect(reauthored.freshLeftoverGrams).toBeLessThanOrEqual(lineByLine.freshLeftoverGrams * 1.02);
  });

  // What a leftover is, and why it is not all that is left: packages/core/README.md.
  test('wastes at most half of what converting line by line does, and leaves no more in all', () => {
    expect(reauthored.wastedGrams).toBeLessThanOrEqual(lineByLine.wastedGrams / 2);
    const left = ({ wastedGrams, keptGrams }: typeof reauthored): number => wastedGrams + keptGrams;
    expect(left(reauthored)).toBeLessThanOrEqual(left(lineByLine));
    expect(lineByLine.wastedGrams / lineByLine.versions).toBeGreaterThan(10);
  });

  test('makes more versions wholly cookable than either way of converting', () => {
    expect(reauthored.wholeVersions).toBeGreaterThan(converted.wholeVersions);
    expect(converted.wholeVersions).toBeGreaterThan(lineByLine.wholeVersions);
  });
});
