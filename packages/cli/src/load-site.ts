import { type LoadedSettings, loadSettings, problemLine } from '@retare/larder';
import { siteRootOf } from './site-root.js';
import { Stop } from './stop.js';

/**
 * Settings and larder of the site that a post belongs to.
 *
 * @throws {Stop} Where they have a problem: nothing is checked against settings that may be wrong.
 */
export function loadSite(post: string | undefined, cwd: string): LoadedSettings {
  const root = post === undefined ? cwd : (siteRootOf(post) ?? cwd);
  const loaded = loadSettings(root);
  if (loaded.problems.length > 0) {
    throw new Stop([...loaded.problems.map(problemLine), 'Nothing was checked.'].join('\n'));
  }
  return loaded;
}
