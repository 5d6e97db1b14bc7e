import { checkFiles, summarise, summaryLine, textReport } from '@retare/check';
import { loadSettings } from '@retare/larder';
import type { AstroIntegrationLogger } from 'astro';
import { globSync } from 'tinyglobby';

/**
 * Checks a site's posts as they lie on disk and says what was found.
 *
 * @param posts Globs from the root; those of the settings where it is undefined.
 * @param onErrors `stop` throws when there are errors, `tell` only reports.
 * @throws {Error} So that the build ends with exit code 1 before any page is written.
 */
export function checkSite(
  root: string,
  posts: readonly string[] | undefined,
  logger: AstroIntegrationLogger,
  onErrors: 'stop' | 'tell',
): void {
  const started = performance.now();
  const { settings, larder } = loadSettings(root);
  const paths = globSync([...(posts ?? settings.posts)], { cwd: root, absolute: true }).sort();
  const checked = checkFiles(paths, root, { settings, larder });
  const summary = summarise(checked, settings.kitchens.length);
  const report = textReport(checked, false);
  const line = `${summaryLine(summary)}, ${((performance.now() - started) / 1000).toFixed(1)} s`;
  if (report !== '') (summary.errors > 0 ? logger.error : logger.warn).call(logger, `\n${report}\n`);
  if (summary.errors === 0) logger.info(line);
  else if (onErrors === 'tell') logger.error(line);
  else
    throw new Error(`${line}. No page was written: correct the errors above, or excuse them in the post with a reason`);
}
