import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { Command, Option } from 'commander';
import { withoutMark } from 'remark-retare';
import { loadSite } from '../load-site.js';
import type { Output } from '../output.js';
import { postFiles } from '../post-files.js';
import type { ReadLine } from '../read/read-line.js';
import { type ReadReport, readReport } from '../read/read-report.js';

interface ReadOptions {
  format: 'text' | 'json';
}

/** `retare read`: what is understood of posts, annotated or plain. */
export function readCommand(output: Output, done: (code: number) => void): Command {
  return new Command('read')
    .description('Shows what is understood of posts, annotated or plain.')
    .argument('<files...>', 'posts: files, folders or globs')
    .addOption(new Option('--format <format>', 'how it is written').choices(['text', 'json']).default('text'))
    .action((files: string[], { format }: ReadOptions) => {
      const paths = postFiles(files, output.cwd, 'Nothing was read.');
      const { larder, settings } = loadSite(paths[0], output.cwd, 'Nothing was read.');
      const reports = paths.map((path) =>
        readReport(withoutMark(readFileSync(path, 'utf8')), relative(output.cwd, path), larder, settings),
      );
      output.out(format === 'json' ? `${JSON.stringify(reports, null, 2)}\n` : `${reports.map(textOf).join('\n\n')}\n`);
      done(0);
    });
}

function textOf(report: ReadReport): string {
  const { file, kitchen, kitchenConfidence, makes, lines, mentions } = report;
  const sure = kitchenConfidence === 1 ? '' : `, a guess (confidence ${kitchenConfidence})`;
  return [
    file,
    `  kitchen: ${kitchen}${sure}`,
    `  makes: ${makes ?? 'not said'}`,
    ...partsOf(lines),
    ...mentions.map(
      ({ line, kind, low, high, unit }) =>
        `  ${line}  ${kind} ${high === null || high === low ? low : `${low} to ${high}`} ${unit}`,
    ),
  ].join('\n');
}

function partsOf(lines: readonly ReadLine[]): string[] {
  let part: string | null = null;
  return lines.flatMap((line) => {
    const heading = line.part === part || line.part === null ? [] : [`  ${line.part}`];
    part = line.part;
    return [...heading, `  ${line.line}  ${lineText(line)}`];
  });
}

function lineText({ kind, text, amounts, pack, food, foodId, prep, further, doubt }: ReadLine): string {
  if (kind === 'not-an-ingredient') return `(no ingredient) ${text}`;
  const number = (low: string, high: string | null): string => (high === null ? low : `${low} to ${high}`);
  const stated = amounts
    .map(({ low, high, unit, approx }) => `${approx ? 'about ' : ''}${number(low, high)} ${unit}`)
    .join(' = ');
  const packed = pack === null ? '' : ` of ${pack.size} ${pack.unit}`;
  const rest = [prep, ...further.map(({ low, high, unit }) => `also ${number(low, high)} ${unit}`)].filter(
    (each) => each !== '',
  );
  const name = `${food ?? '?'} [${foodId ?? 'not in the larder'}]`;
  const words = [stated === '' ? 'no amount' : `${stated}${packed}`, name, ...rest].join(' | ');
  return doubt === null ? words : `${words} | unread: ${doubt}`;
}
