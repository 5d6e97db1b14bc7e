import { type Kitchen, type Reauthored, type Stated, type VersionLine, writeStated } from '@retare/core';
import { buyWords, exactWords, leftoverWords, nativeWords } from './line-words.js';
import { changeWords, obstacleWords } from './obstacle-words.js';
import { signedPercent } from './percent-words.js';
import { table } from './table.js';

/** Why a version is as it is, in words and tables. */
export function reasons(result: Reauthored): string {
  return [batch(result), lines(result), ratios(result), pans(result), runnerUp(result), infeasible(result)]
    .filter((part) => part !== '')
    .join('\n\n');
}

function batch({ version, anchor, makes }: Reauthored): string {
  const factor = version.batchFactor.toDecimalPlaces(3).toString();
  const set = anchor === null ? 'the native size' : `set by whole packs or pieces of ${anchor}`;
  return `Batch factor ${factor}, ${set}.${makes === null ? '' : ` Makes ${makes}.`} Worked out by calculation, not cooked yet.`;
}

function lines({ version }: Reauthored): string {
  const rows = version.parts.flatMap((part) => part.lines.map((line) => row(line, version)));
  return table(['food', 'native', 'exact', 'chosen', 'drift', 'buy', 'left'], rows);
}

function row(line: VersionLine, { kitchen, batchFactor }: Reauthored['version']): string[] {
  const { stated, drift, bought } = line;
  const problems = [...new Set(line.problems.map(({ problem }) => problem.rule))].filter(
    (rule) => rule === 'unbuyable' || rule === 'unmeasurable',
  );
  return [
    line.line.reading.food?.text ?? line.line.text,
    nativeWords(line) ?? '',
    exactWords(line, batchFactor, kitchen) ?? '',
    [stated === null ? '' : withSize(stated, kitchen), ...problems.map((rule) => `(${rule})`)].join(' ').trim(),
    drift === null ? '' : signedPercent(drift.toNumber()),
    bought === null ? '' : buyWords(bought, kitchen),
    leftoverWords(line, kitchen),
  ];
}

/** An amount with its size of eggs, which stands behind the food where it is no plain word: `2 (800 g carton)`. */
function withSize(stated: Stated, kitchen: Kitchen): string {
  const written = writeStated(stated, kitchen);
  const { eggSize } = stated;
  return eggSize === null || written.includes(eggSize) ? written : `${written} (${eggSize})`;
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
  const rows = all.map(({ native, version, count, depthDrift, caution }) => [
    native,
    count === 1 ? version : `${count} × (${version})`,
    signedPercent(depthDrift),
    caution ? 'watch the time: it bakes faster or slower' : '',
  ]);
  return table(['pan', 'version', 'depth', ''], rows);
}

function runnerUp({ runnerUp: second, cost, anchor }: Reauthored): string {
  if (second === null) return '';
  const factor = second.batchFactor.toFixed(3);
  const set = second.anchor === null ? 'the native size' : `whole ${second.anchor}`;
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
  const least =
    found.leastChange === null
      ? 'No single limit that gives would help: change the native amounts, or write this version by hand.'
      : `The least change that would help: ${changeWords(found.leastChange)}.`;
  return [
    'No version keeps every guarded ratio and can be bought and measured. What stands in the way:',
    ...because,
    least,
    'The table shows the nearest version. Nothing was written.',
  ].join('\n');
}
