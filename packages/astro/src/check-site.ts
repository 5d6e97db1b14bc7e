import { type CheckedPost, checkFiles, summarise, summaryLine } from '@retare/check';
import type { LoadedSettings } from '@retare/larder';
import type { AstroIntegrationLogger } from 'astro';
import { globSync } from 'tinyglobby';
import { findingLines } from './finding-lines.js';

/** What is checked, and against what. */
export interface CheckedSite {
  /** Absolute path of the site's root. */
  root: string;
  /** Absolute paths of the posts. */
  paths: readonly string[];
  site: LoadedSettings;
}

/** Posts of a site, as absolute paths in order. */
export function postsIn(root: string, globs: readonly string[]): string[] {
  return globSync([...globs], { cwd: root, absolute: true }).sort();
}

/**
 * Checks posts as they lie on disk and says what was found, every finding once and the sum last.
 *
 * @returns The sum in a line, and whether there were errors.
 */
export function checkSite(
  { root, paths, site }: CheckedSite,
  logger: Pick<AstroIntegrationLogger, 'info' | 'warn' | 'error'>,
): { checked: CheckedPost[]; line: string; errors: number } {
  const started = performance.now();
  const checked = checkFiles(paths, root, site);
  const summary = summarise(checked, site.settings.kitchens.length);
  const lines = findingLines(checked);
  if (lines !== '') logger[summary.errors > 0 ? 'error' : 'warn'](`The check of amounts found:\n${lines}`);
  const line = `${summaryLine(summary)}, ${((performance.now() - started) / 1000).toFixed(1)} s`;
  return { checked, line, errors: summary.errors };
}
