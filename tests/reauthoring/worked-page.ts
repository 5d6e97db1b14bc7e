import {
  Exact,
  foodsIn,
  type Kitchen,
  type RatioReport,
  type Reauthored,
  type VersionFood,
  type VersionLine,
  writeStated,
} from '@retare/core';
import { type Dish, kitchen, loaf, sponge, spongeByClass, stew, textOf, worked } from './worked-dishes.ts';

/** The page with the three dishes, every number computed. */
export function workedPage(): string {
  return [
    '# Three dishes, worked through',
    '',
    'Written by `node tests/reauthoring/worked-write.ts`; a test compares it with what the code computes. Percentages after an amount are its',
    'drift: how far it is from batch factor × native amount. Costs are those of the function that re-authoring minimises; only their',
    'differences mean anything.',
    '',
    ...[stew, loaf, sponge].flatMap(section),
    ...aboutEggs(),
  ].join('\n');
}

function section(dish: Dish): string[] {
  const lines = dish.to.flatMap((to) => version(dish, to));
  return [`## ${dish.title}`, '', wrapped(dish.words), '', ...lines];
}

function version(dish: Dish, to: string): string[] {
  const result = worked(dish, to);
  const batch = result.version.batchFactor;
  const rows = result.version.parts.flatMap((part) => part.lines.map((line) => row(line, batch, kitchen(to))));
  return [
    `### ${kitchen(to).name}: batch factor ${batch.toFixed(3)}, ${result.anchor === null ? 'no anchor' : `anchor ${result.anchor}`}`,
    '',
    '| native | weighs | × batch | becomes | drift | to buy | left |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...rows,
    '',
    '| guarded ratio | native | version | drift | limit |',
    '| --- | --- | --- | --- | --- |',
    ...result.ratios.map(ratioRow),
    '',
    ...pansUsed(result),
    wrapped(runnerUp(result)),
    '',
  ];
}

/** A stand-in of two foods has both in each cell. */
function row(line: VersionLine, batch: Exact, reader: Kitchen): string {
  const foods = foodsIn(line).map((own) => reasonsOf(own, batch, reader));
  const cell = (of: keyof ReturnType<typeof reasonsOf>): string =>
    foods
      .map((each) => each[of])
      .filter((words) => words !== '')
      .join(' and ');
  const cells = [
    line.line.text,
    cell('weight'),
    cell('exact'),
    textOf(line),
    cell('drift'),
    cell('packs'),
    cell('left'),
  ];
  return `| ${cells.join(' | ')} |`;
}

function reasonsOf({ native, drains, drift, bought, food }: VersionFood, batch: Exact, reader: Kitchen) {
  const inWords = (grams: Exact | undefined): string =>
    grams === undefined ? '' : `${grams.times(drains ?? 1).toFixed(1)} g${drains === null ? '' : ' drained'}`;
  const packs = (bought?.packs ?? []).map(({ count, pack }) =>
    writeStated(
      { statements: [[{ low: new Exact(count), high: null, unit: 'count' }]], pack, eggSize: null, approx: false },
      reader,
    ),
  );
  const loose = bought?.looseGrams == null ? [] : [`${bought.looseGrams.toFixed(0)} g loose`];
  const left = bought?.leftoverGrams;
  return {
    weight: inWords(native.grams ?? undefined),
    exact: inWords(native.grams?.times(batch)),
    drift: drift === null ? '' : signed(drift.toNumber()),
    packs: [...packs, ...loose].join(', '),
    left: left?.greaterThanOrEqualTo(1) ? `${left.toFixed(0)} g${keeps(food)}` : '',
  };
}

function keeps(food: VersionLine['food']): string {
  if (food === null || food.keeps.where === 'cupboard' || food.keeps.days === null) return '';
  return `, ${food.keeps.days} days${food.keeps.freezes ? ' or frozen' : ''}`;
}

function ratioRow({ name, native, version, limit }: RatioReport): string {
  const cells = [
    name,
    native.toFixed(4),
    version.toFixed(4),
    signed(version / native - 1),
    `${(100 * limit).toFixed(1)} %`,
  ];
  return `| ${cells.join(' | ')} |`;
}

function pansUsed({ pans }: Reauthored): string[] {
  return pans.flatMap(({ native, version, count, depthDrift, caution }) => [
    `Baked in ${count} × ${version}, where the author has ${native}: the depth of the batter changes by ${signed(depthDrift)}${caution ? ', of which the page warns' : ''}.`,
    '',
  ]);
}

function runnerUp({ cost, runnerUp: second }: Reauthored): string {
  const own = `It costs ${cost.toFixed(5)}.`;
  if (second === null) return `${own} There is no other batch to weigh it against.`;
  const anchor = second.anchor === null ? 'the native size' : `${second.anchor} as anchor`;
  return `${own} The runner-up, ${anchor} at batch factor ${second.batchFactor.toFixed(3)}, costs ${second.cost.toFixed(5)}.`;
}

/** What four eggs that were not weighed come to. */
function aboutEggs(): string[] {
  const byClass = worked(spongeByClass, 'us');
  const grams = (of: Kitchen): string =>
    of.eggs.sizes.find((size) => size.name === 'large')?.edibleGrams.toFixed(2) ?? '';
  const lines = byClass.version.parts.flatMap((part) => part.lines.map(textOf)).join('; ');
  const words =
    `Written “4 large eggs”, the UK class counts, a band per egg of which the middle is taken: 4 × ${grams(kitchen('uk'))} g without the shell. ` +
    `The US class is the least of a carton: 5 × ${grams(kitchen('us'))} g. So five eggs are a batch of ${byClass.version.batchFactor.toFixed(3)} at ${byClass.cost.toFixed(5)}: ${lines}.`;
  return ['## The same sponge with eggs that were not weighed', '', wrapped(words), ''];
}

function signed(fraction: number): string {
  const percent = (100 * fraction).toFixed(1);
  return `${Number(percent) > 0 ? '+' : ''}${Number(percent) === 0 ? '0.0' : percent} %`.replace('-', '−');
}

/** Lines of at most 130 characters. */
function wrapped(words: string): string {
  const lines: string[] = [''];
  for (const word of words.split(' ')) {
    const last = lines.at(-1) ?? '';
    if (last !== '' && last.length + word.length >= 130) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines.join('\n');
}
