import { readLine } from '@retare/core';
import { corpusFolder, hasCorpus, type LineLabel, lineLabels, withoutMarker } from './corpus.ts';
import { type LineScore, scoreLine, type Verdict } from './score.ts';

/** Prints how the ingredient lines of the collection are read: a table by stratum, then every line that is not right. */

interface Row {
  label: LineLabel;
  score: LineScore;
  read: string;
  hasAmount: boolean;
}

function readAll(): Row[] {
  return lineLabels().map((label) => {
    const reading = readLine(withoutMarker(label.text));
    const amounts = reading.amounts.map(
      ({ low, high, unit, approx }) =>
        `${low.toDecimalPlaces(4)}${high === null ? '' : `-${high.toDecimalPlaces(4)}`} ${unit}${approx ? '~' : ''}`,
    );
    const pack =
      reading.pack === null
        ? ''
        : ` [${reading.pack.count ?? 1} x ${reading.pack.size} ${reading.pack.unit} ${reading.pack.word}]`;
    const doubt = reading.doubt === null ? '' : ` (${reading.doubt.because})`;
    const read = `${reading.kind}: ${amounts.join(' | ')}${pack}, food “${reading.food?.text ?? ''}”${reading.optional ? ', optional' : ''}${doubt}`;
    return { label, score: scoreLine(reading, label), read, hasAmount: reading.amounts.length > 0 };
  });
}

function count(rows: readonly Row[], part: keyof LineScore, verdict: Verdict): number {
  return rows.filter(({ score }) => score[part] === verdict).length;
}

function line(name: string, rows: readonly Row[]): string {
  const cells = [
    rows.length,
    count(rows, 'amount', 'right'),
    count(rows, 'amount', 'wrong'),
    count(rows, 'amount', 'unread'),
    count(rows, 'food', 'right'),
    count(rows, 'kind', 'right'),
    count(rows, 'optional', 'right'),
    ...precisionAndRecall(rows),
  ];
  return `${name.padEnd(20)}${cells.map((cell) => String(cell).padStart(10)).join('')}`;
}

/**
 * Of the lines in which an amount is read, the share read right; of those that are labelled with one, the share read right. An
 * ambiguous line left unread is right by the scoring and still not read: it counts against recall.
 */
function precisionAndRecall(rows: readonly Row[]): string[] {
  const read = rows.filter(({ hasAmount }) => hasAmount);
  const labelled = rows.filter(({ label }) => label.amounts.length > 0);
  const right = (of: readonly Row[]): number =>
    of.filter(({ hasAmount, score }) => hasAmount && score.amount === 'right').length;
  const percent = (of: readonly Row[]): string =>
    of.length === 0 ? '–' : `${((100 * right(of)) / of.length).toFixed(1)} %`;
  return [percent(read), percent(labelled)];
}

if (!hasCorpus()) {
  console.log(
    `No collection in ${corpusFolder()}: set RETARE_CORPUS to the folder that holds labels.jsonl. Nothing was read.`,
  );
  process.exitCode = process.env.CI === undefined ? 0 : 1;
} else {
  const rows = readAll();
  const strata = [...new Set(rows.flatMap(({ label }) => label.strata))].sort();
  console.log(
    `${'stratum'.padEnd(20)}${['lines', 'right', 'wrong', 'unread', 'food', 'kind', 'optional', 'precision', 'recall'].map((name) => name.padStart(10)).join('')}`,
  );
  for (const stratum of strata)
    console.log(
      line(
        stratum,
        rows.filter(({ label }) => label.strata.includes(stratum)),
      ),
    );
  console.log(line('all', rows));
  const failing = rows.filter(({ score }) => Object.values(score).some((verdict) => verdict !== 'right'));
  for (const { label, score, read } of failing) {
    const parts = Object.entries(score)
      .filter(([, verdict]) => verdict !== 'right')
      .map(([part, verdict]) => `${part} ${verdict}`);
    const amounts = label.amounts.map(
      ({ low, high, unit, approx }) => `${low}${high === null ? '' : `-${high}`} ${unit}${approx ? '~' : ''}`,
    );
    const pack =
      label.pack === null ? '' : ` [${label.pack.count} x ${label.pack.size} ${label.pack.unit} ${label.pack.word}]`;
    console.log(
      `\n${label.file}:${label.line}  ${parts.join(', ')}\n  text   ${label.text}\n  read   ${read}\n  label  ${label.kind}: ${amounts.join(' | ')}${pack}, food “${label.food}”${label.optional ? ', optional' : ''}${label.ambiguous ? ', ambiguous' : ''}`,
    );
  }
}
