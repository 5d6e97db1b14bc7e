import type { Benchmark, Trouble } from './run-benchmark.ts';
import { percentile, type Tally } from './tally.ts';

/** The goal of a row, and what is measured against it. */
interface Row {
  name: string;
  value(tally: Tally): string;
}

const rows: readonly Row[] = [
  { name: 'lines that can be bought and measured, of those sold', value: (t) => percent(t.goodLines, t.lines) },
  { name: 'versions wholly so, of all', value: (t) => percent(t.wholeVersions, t.versions) },
  { name: 'lines not sold there, without stand-in', value: (t) => percent(t.notSold, t.allLines) },
  { name: 'median drift of a line', value: (t) => hundredths(percentile(t.drifts, 0.5)) },
  { name: '95th percentile of drift', value: (t) => hundredths(percentile(t.drifts, 0.95)) },
  {
    name: 'guarded ratios within limits',
    value: (t) => `${percent(t.ratios - t.brokenRatios, t.ratios)} (${t.brokenRatios} broken)`,
  },
  { name: 'leftovers: thrown away of what is bought, g a version', value: (t) => grams(t, t.wastedGrams) },
  { name: 'kept in the fridge of it and used, g a version', value: (t) => grams(t, t.keptGrams) },
  { name: '  of this what keeps under a fortnight once opened', value: (t) => grams(t, t.keptShortlyGrams) },
  {
    name: 'over in all but the cupboard, kept or not, g a version',
    value: (t) => grams(t, t.wholeLeftoverGrams + t.freshLeftoverGrams),
  },
  { name: '  with every amount bent by up to 8 % to its packs', value: (t) => grams(t, t.leastLeftGrams) },
];

/** Prints the three ways side by side, then what only re-authoring has. */
export function printBenchmark(bench: Benchmark, withTroubles: boolean): void {
  const { reading, ways, batchFactors, infeasible, first, again } = bench;
  const { recipes, notFullyRead, withoutList } = reading;
  console.log(
    `${recipes.length} recipes with every line read, each for all other kitchens: ${ways.reauthored.versions} versions ` +
      `(${notFullyRead} recipes with a line or food unread, ${withoutList} posts without a list are left out)\n`,
  );
  console.log(cells('', 'line by line', 'converted', 're-authored'));
  for (const { name, value } of rows) {
    console.log(cells(name, value(ways.lineByLine), value(ways.converted), value(ways.reauthored)));
  }
  const versions = ways.reauthored.versions;
  const within = batchFactors.filter((factor) => factor >= 0.8 && factor <= 1.25).length;
  const other = batchFactors.filter((factor) => factor !== 1).length;
  console.log(
    `\nre-authored: infeasible ${percent(infeasible.length, versions)} (${infeasible.length}), shown with the nearest version`,
  );
  console.log(`guarded ratios broken in feasible versions: ${bench.brokenInFeasible}`);
  console.log(
    `batch factor within 0.8 to 1.25: ${percent(within, batchFactors.length)}; other than 1: ${percent(other, batchFactors.length)}`,
  );
  console.log(`  least ${Math.min(...batchFactors).toFixed(3)}, most ${Math.max(...batchFactors).toFixed(3)}`);
  console.log(
    `time for a recipe and kitchen, ms: median ${percentile(first, 0.5).toFixed(2)} at first sight, ${percentile(again, 0.5).toFixed(2)} again; ` +
      `95th percentile ${percentile(first, 0.95).toFixed(2)} and ${percentile(again, 0.95).toFixed(2)}, longest ${Math.max(...first).toFixed(1)}`,
  );
  if (!withTroubles) return;
  list('infeasible', infeasible);
  list('not sold, without stand-in', bench.notSold);
  list('not to be measured or bought', bench.uncookable);
  list('more than is bought', bench.short);
}

function list(title: string, troubles: readonly Trouble[]): void {
  console.log(`\n${title}: ${troubles.length}`);
  for (const { file, kitchen, words } of troubles) console.log(`  ${kitchen} ${file}: ${words}`);
}

function cells(name: string, ...values: string[]): string {
  return name.padEnd(54) + values.map((value) => value.padStart(22)).join('');
}

function grams({ versions }: Tally, value: number): string {
  return (value / versions).toFixed(1);
}

function percent(part: number, all: number): string {
  return all === 0 ? '–' : `${((100 * part) / all).toFixed(1)} %`;
}

function hundredths(value: number): string {
  return `${(100 * value).toFixed(2)} %`;
}
