import { type CheckedPost, checkFiles, jsonReport, summarise, summaryLine, textReport } from '@retare/check';
import { Command, Option } from 'commander';
import { kitchensNamed } from '../kitchens-named.js';
import { loadSite } from '../load-site.js';
import type { Output } from '../output.js';
import { postFiles } from '../post-files.js';

interface CheckOptions {
  kitchen?: string;
  format: 'text' | 'json';
}

/** `retare check`: whether every amount of the posts can be bought and measured. Exit code 0 without errors, 1 with. */
export function checkCommand(output: Output, done: (code: number) => void): Command {
  return new Command('check')
    .description('Checks that every amount can be bought and measured, and every core temperature is safe.')
    .argument('<files...>', 'posts: files, folders or globs')
    .option('--kitchen <ids>', 'only these kitchens, with commas between')
    .addOption(new Option('--format <format>', 'how findings are written').choices(['text', 'json']).default('text'))
    .action((files: string[], options: CheckOptions) => done(check(files, options, output)));
}

function check(args: readonly string[], { kitchen, format }: CheckOptions, output: Output): number {
  const started = performance.now();
  const paths = postFiles(args, output.cwd, 'Nothing was checked.');
  const site = loadSite(paths[0], output.cwd, 'Nothing was checked.');
  const only = kitchen === undefined ? undefined : kitchensNamed(kitchen, site, 'Nothing was checked.');
  const checked = checkFiles(paths, output.cwd, only === undefined ? site : { ...site, only });
  const summary = summarise(checked, only?.length ?? site.settings.kitchens.length);
  if (format === 'json') output.out(`${JSON.stringify(jsonReport(checked), null, 2)}\n`);
  else output.out(textOf(checked, output.color, `${summaryLine(summary)}, ${seconds(started)} s`));
  return summary.errors > 0 ? 1 : 0;
}

function textOf(checked: readonly CheckedPost[], color: boolean, last: string): string {
  const report = textReport(checked, color);
  return report === '' ? `${last}\n` : `${report}\n\n${last}\n`;
}

function seconds(started: number): string {
  return ((performance.now() - started) / 1000).toFixed(1);
}
