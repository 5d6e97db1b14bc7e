import {
  dimensionOf,
  foodsIn,
  type Kitchen,
  linesIn,
  listed,
  type Reauthored,
  type Stated,
  servedBy,
  type VersionFood,
  type VersionLine,
  withArticle,
  writeStated,
} from '@retare/core';
import { linesInDoubt } from './in-doubt.js';
import {
  exactAmount,
  exactWords,
  foodWord,
  leftoverWords,
  nativeWords,
  standInName,
  toBuyWords,
} from './line-words.js';
import { leastChangeWords, obstacleWords } from './obstacle-words.js';
import { signedPercent } from './signed-percent.js';
import { table } from './table.js';

/** Why a version is as it is, in words and tables. */
export function reasons(result: Reauthored): string {
  return [
    batch(result),
    lines(result),
    allergens(result),
    inDoubt(result),
    ratios(result),
    pans(result),
    time(result),
    ovens(result),
    runnerUp(result),
    infeasible(result),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

function batch({ version, anchor, makes }: Reauthored): string {
  const factor = version.batchFactor.toDecimalPlaces(3).toString();
  const set = setBy(version.batchFactor.toNumber(), anchor, (food) => anchorWords(food, version));
  return `Batch factor ${factor}, ${set}.${makes === null ? '' : ` ${yieldInWords(makes)}.`} Worked out by calculation, not cooked yet.`;
}

/** `Makes 4 servings`; what has a verb of its own keeps it: `Serves about 4`. */
function yieldInWords(makes: string): string {
  const verb = /^(?:serves|makes|feeds|yields)\b/i.test(makes);
  return verb ? makes.charAt(0).toUpperCase() + makes.slice(1) : `Makes ${makes}`;
}

/** A named anchor need not come in packs or pieces: water is measured, potatoes are weighed off. */
function anchorWords(anchor: string, { parts }: Reauthored['version']): string {
  const lines = parts.flatMap((part) => part.lines);
  const own = lines.find(({ line }) => line.reading.food?.text === anchor)?.stated ?? null;
  const unit = own?.statements[0]?.[0]?.unit;
  const isWhole = own?.pack !== null || (unit !== undefined && dimensionOf(unit) === 'count');
  return isWhole ? `set by whole packs or pieces of ${anchor}` : `set by ${anchor}, the anchor`;
}

/** What a batch factor comes from. */
function setBy(factor: number, anchor: string | null, words: (anchor: string) => string): string {
  if (anchor !== null) return words(anchor);
  return factor === 1 ? 'the native size' : 'so that what can be measured keeps the guarded ratios';
}

function lines({ version }: Reauthored): string {
  const all = version.parts.flatMap((part) => part.lines);
  const rows = all.flatMap(linesIn).flatMap((line) => foodsIn(line).map((own) => row(line, own, all, version)));
  return table(['food', 'native', 'exact', 'chosen', 'drift', 'buy', 'left'], rows);
}

function row(
  line: VersionLine,
  own: VersionFood,
  all: readonly VersionLine[],
  { kitchen, batchFactor }: Reauthored['version'],
): string[] {
  const { stated, drift } = own;
  const problems = [...new Set(line.problems.map(({ problem }) => problem))].filter(
    (problem) => (problem.rule === 'unbuyable' || problem.rule === 'unmeasurable') && problem.food === own.food,
  );
  const rules = [...new Set(problems.map(({ rule }) => `(${rule})`))];
  const exact = exactAmount(line, own, batchFactor, kitchen);
  const elsewhere =
    stated === null && nativeWords(line) !== null && own.food?.role !== 'cure' ? '(in another line)' : '';
  return [
    foodWords(line, own, all, kitchen),
    own === line || line.stated === null ? (nativeWords(line) ?? '') : '',
    exact === null ? '' : exactWords(exact),
    [stated === null ? elsewhere : withSize(stated, kitchen), ...rules].join(' ').trim(),
    drift === null ? '' : signedPercent(drift.toNumber()),
    toBuyWords(own, kitchen),
    leftoverWords(own, kitchen),
  ];
}

/** An amount with its size of eggs, which stands behind the food where it is no plain word: `2 (800 g carton)`. */
function withSize(stated: Stated, kitchen: Kitchen): string {
  const written = writeStated(stated, kitchen);
  const { eggSize } = stated;
  return eggSize === null || written.includes(eggSize) ? written : `${written} (${eggSize})`;
}

/** `half-and-half → whole milk`, and `milk + half-and-half` for an amount that serves both. */
function foodWords(line: VersionLine, own: VersionFood, all: readonly VersionLine[], kitchen: Kitchen): string {
  const word = (each: VersionLine): string => foodWord(each.line);
  const standIn = standInName(line, own, kitchen);
  const also = own === line ? servedBy(line, all).map((each) => ` + ${word(each)}`) : [];
  return `${word(line)}${standIn === null ? '' : ` → ${standIn}`}${also.join('')}`;
}

/** What a stand-in brings that the native food has not: the page says it too. */
function allergens({ version }: Reauthored): string {
  const said = version.parts
    .flatMap((part) => part.lines)
    .flatMap(({ notes }) => notes)
    .flatMap((note) =>
      note.kind === 'stand-in' && note.allergens.length > 0
        ? [`Allergen: what stands in for ${note.food} adds ${listed(note.allergens, 'and')}.`]
        : [],
    );
  return [...new Set(said)].join('\n');
}

/** What nobody has checked: the larder does not know it. */
function inDoubt({ version }: Reauthored): string {
  const names = linesInDoubt(version).map(({ line }) => `\`${foodWord(line)}\``);
  if (names.length === 0) return '';
  const them = names.length === 1 ? 'it' : 'them';
  return `Not in the larder: ${names.join(', ')}. Whether ${withArticle(version.kitchen)} cook can buy and measure ${them} is not known; add ${them} to the site's larder file.`;
}

function ratios({ ratios: all }: Reauthored): string {
  if (all.length === 0) return '';
  const rows = all.map(({ name, part, native, version, limit }) => [
    `${name}${part === null ? '' : ` (${part})`}`,
    Number(native.toPrecision(3)).toString(),
    Number(version.toPrecision(3)).toString(),
    signedPercent(version / native - 1),
    `${Number((limit * 100).toFixed(1))} %`,
  ]);
  return table(['guarded ratio', 'native', 'version', 'drift', 'limit'], rows);
}

function pans({ pans: all }: Reauthored): string {
  if (all.length === 0) return '';
  const rows = all.map(({ native, version, count, depthDrift, changed, caution }) => [
    native,
    count === 1 ? version : `${count} × (${version})`,
    signedPercent(depthDrift),
    [
      changed === null ? '' : changedWords(changed.from, count),
      caution ? 'watch the time: it bakes faster or slower' : '',
    ]
      .filter((words) => words !== '')
      .join('; '),
  ]);
  return table(['pan', 'version', 'depth', ''], rows);
}

/** A batch that is much larger or smaller cooks in another time, whatever it is cooked in; a row of pans says so for itself. */
function time({ version: { cautions }, pans: all }: Reauthored): string {
  const far = cautions.find((caution) => caution.kind === 'bake' && caution.changed === 'batch');
  if (all.length > 0 || far?.kind !== 'bake') return '';
  const by = `${far.drift.abs().times(100).toDecimalPlaces(0)} %`;
  return `The batch is ${by} ${far.drift.isNegative() ? 'smaller' : 'larger'}: watch the time, and say in the method what changes.`;
}

/** An oven beyond the dial: no setting is the same heat, so the block says the heat itself. */
function ovens({ version: { steps, kitchen } }: Reauthored): string {
  const problems = steps.flatMap(({ mentions }) => mentions.flatMap((each) => each.problems));
  const said = problems.flatMap(({ problem }) => {
    if (problem.rule !== 'oven-beyond-dial') return [];
    const { end, mark, asked, unit } = problem.beyond;
    const goes = end === 'hottest' ? 'higher' : 'lower';
    return [
      `Oven: \`${problem.text}\` is ${asked}°${unit}, and ${kitchen.adjective} ovens go no ${goes} than ${mark}°${unit}, so it cannot be set. Say in the method what a cook there does.`,
    ];
  });
  return [...new Set(said)].join('\n');
}

function changedWords(from: number, to: number): string {
  return `${to} for the author's ${from}, else the batter would be over a tenth deeper or shallower: read the method's words again`;
}

function runnerUp({ runnerUp: second, cost, anchor }: Reauthored): string {
  if (second === null) return 'Runner-up: none. No other batch would do.';
  const factor = second.batchFactor.toFixed(3);
  const set = setBy(second.batchFactor, second.anchor, (food) => `${food} as the anchor`);
  const [theirs, ours] = [second.cost.toFixed(4), cost.toFixed(4)];
  // Of one anchor a cheaper batch loses only where it is another dish.
  const why = second.anchor === anchor ? 'it is further from the size of the dish' : 'the anchor was named';
  return second.cost < cost
    ? `Runner-up: batch factor ${factor} (${set}) costs ${theirs} against ${ours} here, and lost only because ${why}.`
    : `Runner-up: batch factor ${factor} (${set}). It lost because it costs ${theirs} against ${ours} here.`;
}

function infeasible({ infeasible: found, version }: Reauthored): string {
  if (found === null) return '';
  const because = found.because.map((obstacle) => `- ${obstacleWords(obstacle, version.kitchen)}`);
  const least = leastChangeWords(found, version.kitchen);
  return [
    'No version keeps every guarded ratio and can be bought and measured. What stands in the way:',
    ...because,
    least,
    'The table shows the nearest version. Nothing was written.',
  ].join('\n');
}
