import { type LoadedSettings, loadSettings, problemLine } from '@retare/larder';
import { siteRootOf } from './site-root.js';
import { Stop } from './stop.js';

/**
 * Settings and larder of the site that a post belongs to.
 *
 * @param post Absolute path of the first; undefined for a command that reads none, which takes those of the folder that it runs in.
 * @param undone What was then not done: `Nothing was checked.`
 * @throws {Stop} Where they have a problem: nothing is checked against settings that may be wrong.
 */
export function loadSite(post: string | undefined, cwd: string, undone: string): LoadedSettings {
  const root = post === undefined ? cwd : (siteRootOf(post) ?? cwd);
  const loaded = loadSettings(root);
  if (loaded.problems.length > 0) {
    throw new Stop([...loaded.problems.map(problemLine), undone].join('\n'));
  }
  return loaded;
}
