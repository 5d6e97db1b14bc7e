import {
  applyEdits,
  Exact,
  foodsIn,
  type Ingredients,
  isRefusal,
  linesIn,
  type RatioReport,
  type Reauthored,
  type Recipe,
  ratiosOfVersion,
  readingIn,
  readLine,
  reauthor,
  type Setting,
  type Version,
  versionFor,
} from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { type CorpusReading, type CorpusRecipe, corpusRecipes } from './corpus-recipes.ts';
import { lineByLine } from './line-by-line.ts';
import { comparableLines, count, emptyTally, isBroken, isCookable, isNotSold, isShort, type Tally } from './tally.ts';

/** Something for the authors of the larder to look at. */
export interface Trouble {
  file: string;
  kitchen: string;
  words: string;
}

/** What the benchmark comes to. */
export interface Benchmark {
  reading: CorpusReading;
  ways: { lineByLine: Tally; converted: Tally; reauthored: Tally };
  batchFactors: number[];
  /** Guarded ratios outside their limits in versions that are called feasible. */
  brokenInFeasible: number;
  /** The same, once the version is read again as its draft writes it. */
  brokenReadBack: Trouble[];
  infeasible: Trouble[];
  notSold: Trouble[];
  /** Lines of feasible versions that cannot be measured or bought. */
  uncookable: Trouble[];
  /** Lines of feasible versions that ask for more than is bought for them. */
  short: Trouble[];
  /** Milliseconds for each recipe and kitchen: the first time it is re-authored, and again. */
  first: number[];
  again: number[];
}

/** Versions are judged as they stand; an author's own amounts with the usual tolerance. */
const exactly = new Exact('0.001');
const asAuthored = new Exact('0.05');

/** Every fully read recipe of the collection, to all other kitchens, in three ways. */
export function runBenchmark(): Benchmark {
  const larder = builtInLarder();
  const reading = corpusRecipes(larder);
  const bench: Benchmark = {
    reading,
    ways: { lineByLine: emptyTally(), converted: emptyTally(), reauthored: emptyTally() },
    batchFactors: [],
    brokenInFeasible: 0,
    brokenReadBack: [],
    infeasible: [],
    notSold: [],
    uncookable: [],
    short: [],
    first: [],
    again: [],
  };
  const setting: Setting = { foods: larder.foods, kitchens: larder.kitchens, tolerance: exactly };
  // A machine that has just started is no measure of the work.
  for (const { recipe } of reading.recipes.slice(0, 40))
    reauthor(recipe, recipe.kitchen === 'uk' ? 'au' : 'uk', setting);
  for (const each of reading.recipes) {
    for (const kitchen of larder.kitchens.keys())
      if (kitchen !== each.recipe.kitchen) one(each, kitchen, setting, bench);
  }
  return bench;
}

function one({ file, recipe }: CorpusRecipe, kitchenId: string, setting: Setting, bench: Benchmark): void {
  const kitchen = setting.kitchens.get(kitchenId);
  if (kitchen === undefined) throw new Error(`no kitchen ${kitchenId}`);
  const native = versionFor(recipe, recipe.kitchen, setting);
  const { ways } = bench;
  const plain = lineByLine(recipe, kitchen, { ...setting, tolerance: asAuthored });
  const converted = versionFor(recipe, kitchenId, setting);
  const result = timed(() => reauthor(recipe, kitchenId, setting), bench.first);
  timed(() => reauthor(recipe, kitchenId, setting), bench.again);
  if (isRefusal(result)) throw new Error(`${file} for ${kitchenId}: ${result.kind}`);
  note(file, kitchenId, result, bench);
  const { version } = result;
  if (result.infeasible === null) {
    const broken = ratiosAsRead(recipe, version, setting).filter(isBroken);
    bench.brokenReadBack.push(...broken.map(({ name }) => ({ file, kitchen: kitchenId, words: name })));
  }
  const same = { native, comparable: comparableLines([plain, converted, version]) };
  count(ways.lineByLine, { ...same, version: plain, ratios: ratiosAsRead(recipe, plain, setting) });
  count(ways.converted, { ...same, version: converted, ratios: ratiosAsRead(recipe, converted, setting) });
  count(ways.reauthored, { ...same, version, ratios: result.ratios });
}

function timed<T>(work: () => T, into: number[]): T {
  const start = performance.now();
  const result = work();
  into.push(performance.now() - start);
  return result;
}

/** The guarded ratios of a version as a reader reads it: its words are read again. */
function ratiosAsRead(recipe: Recipe, version: Version, setting: Setting): RatioReport[] {
  return version.parts.flatMap(({ part, lines, ingredients }) => {
    const read: Ingredients = {
      ...ingredients,
      kitchen: version.kitchen.id,
      lines: lines.flatMap((each) =>
        foodsIn(each).flatMap(({ food, stated, alone }) => {
          const text = applyEdits(each.line.text, alone);
          // What another line's amount holds is stated there.
          if (stated === null) return each.line.reading.amounts.length === 0 ? [each.line] : [];
          return [{ ...each.line, food, text, reading: readLine(text, readingIn(version.kitchen)) }];
        }),
      ),
    };
    return ratiosOfVersion(part, read, { recipe, setting }).map((ratio) => ({
      name: ratio.name,
      part: part.native.label,
      native: ratio.native,
      version: ratio.version,
      limit: ratio.limit,
    }));
  });
}

function obstacleInWords(each: NonNullable<Reauthored['infeasible']>['because'][number]): string {
  switch (each.kind) {
    case 'ratio':
      return `${each.name} ${(100 * each.drift).toFixed(1)} % (limit ${(100 * each.limit).toFixed(1)} %)`;
    case 'not-sold':
      return `not sold: ${each.food.id}`;
    case 'no-weight':
      return `whole packs only, of unknown weight: “${each.line.text}”`;
    case 'no-amount':
      return `no amount for “${each.line.text}” (${each.line.food?.id ?? 'unknown'}): needs ${each.need.toFixed(1)}, nearest ${each.pack?.toFixed(1) ?? 'none'}`;
  }
}

function note(file: string, kitchen: string, { version, infeasible, ratios }: Reauthored, bench: Benchmark): void {
  const lines = version.parts.flatMap((part) => part.lines);
  for (const line of lines.filter(isNotSold)) bench.notSold.push({ file, kitchen, words: line.food?.id ?? '' });
  if (infeasible !== null) {
    const because = infeasible.because.map(obstacleInWords);
    bench.infeasible.push({ file, kitchen, words: because.join('; ') });
    return;
  }
  bench.brokenInFeasible += ratios.filter(isBroken).length;
  bench.batchFactors.push(version.batchFactor.toNumber());
  const all = lines.flatMap(linesIn);
  for (const line of all.filter((each) => isShort(each, all)))
    bench.short.push({ file, kitchen, words: `${line.line.text} → ${applyEdits(line.line.text, line.edits)}` });
  for (const line of lines) {
    if (isCookable(line) || isNotSold(line)) continue;
    const rules = line.problems.map(({ problem }) =>
      'reason' in problem ? `${problem.rule}: ${problem.reason}` : problem.rule,
    );
    const words = `${line.line.text} → ${applyEdits(line.line.text, line.edits)} [${rules.join(', ')}] ${line.food?.id ?? ''}`;
    bench.uncookable.push({ file, kitchen, words });
  }
}
