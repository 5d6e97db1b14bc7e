import { Exact, type Kitchen, type RatioReport, type Reauthored, type VersionLine, writeStated } from '@retare/core';
import {
  type Dish,
  kitchen,
  leastAtAnEighth,
  loaf,
  sponge,
  stew,
  textOf,
  withLightEggs,
  worked,
} from './worked-dishes.ts';

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
    wrapped(runnerUp(result)),
    '',
  ];
}

function row(line: VersionLine, batch: Exact, reader: Kitchen): string {
  const { native, drift, bought, food } = line;
  const weight = native.grams === null ? '' : `${native.grams.toFixed(1)} g`;
  const exact = native.grams === null ? '' : `${native.grams.times(batch).toFixed(1)} g`;
  const packs = (bought?.packs ?? []).map(({ count, pack }) =>
    writeStated(
      { statements: [[{ low: new Exact(count), high: null, unit: 'count' }]], pack, eggSize: null, approx: false },
      reader,
    ),
  );
  const loose = bought?.looseGrams == null ? [] : [`${bought.looseGrams.toFixed(0)} g loose`];
  const left =
    bought === null || bought.leftoverGrams.lessThan(1) ? '' : `${bought.leftoverGrams.toFixed(0)} g${keeps(food)}`;
  const cells = [
    line.line.text,
    weight,
    exact,
    textOf(line),
    drift === null ? '' : signed(drift.toNumber()),
    [...packs, ...loose].join(', '),
    left,
  ];
  return `| ${cells.join(' | ')} |`;
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

function runnerUp({ cost, runnerUp: second }: Reauthored): string {
  const own = `It costs ${cost.toFixed(5)}.`;
  if (second === null) return `${own} There is no other batch to weigh it against.`;
  const anchor = second.anchor === null ? 'the native size' : `${second.anchor} as anchor`;
  return `${own} The runner-up, ${anchor} at batch factor ${second.batchFactor.toFixed(3)}, costs ${second.cost.toFixed(5)}.`;
}

/** Why the sponge is not made an eighth larger. */
function aboutEggs(): string[] {
  const [us, light] = [worked(sponge, 'us'), worked(sponge, 'us', withLightEggs())];
  const grams = (of: Kitchen, name: string): string =>
    of.eggs.sizes.find((size) => size.name === name)?.edibleGrams.toFixed(2) ?? '';
  const least = leastAtAnEighth();
  const words =
    `Five large US eggs hold 5 × ${grams(kitchen('us'), 'large')} g, four large UK ones 4 × ${grams(kitchen('uk'), 'large')} g without the shell: ` +
    `the UK class is a band per egg, and its middle counts, while the US class is the least of a carton. So five eggs are a batch of ${us.version.batchFactor.toFixed(3)}. ` +
    `Made ${least.batch.toFixed(3)} of the native size on the same five eggs, the egg alone would be ${signed(least.drift)} off; with the size of the batch that costs ${least.cost.toFixed(5)} before any other line, against ${us.cost.toFixed(5)} in all. ` +
    `A batch of ${least.batch.toFixed(3)} is what five eggs give if the UK egg too weighs the least of its class, 63 g in the shell, which is not how this larder weighs it; ` +
    `even then the choice is ${light.version.batchFactor.toFixed(3)} at ${light.cost.toFixed(5)}, and the runner-up ${light.runnerUp?.batchFactor.toFixed(3) ?? 'none'} at ${light.runnerUp?.cost.toFixed(5) ?? ''}.`;
  return ['## Why not a batch of 1.13 for the sponge', '', wrapped(words), ''];
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
