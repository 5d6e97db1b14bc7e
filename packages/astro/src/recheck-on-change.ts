import { resolve } from 'node:path';
import type { CheckedSite } from './check-site.js';

/** What watches a development server's files. */
interface Watcher {
  on(event: 'add' | 'change', heard: (path: string) => void): unknown;
}

/**
 * Checks a post again as soon as it is saved. Settings and larder need no such care: a change to them starts the server anew.
 *
 * @param site The posts and settings of the moment.
 */
export function recheckOnChange(
  watcher: Watcher,
  site: () => CheckedSite,
  check: (changed: CheckedSite) => void,
): void {
  const heard = (path: string): void => {
    const { paths, ...rest } = site();
    const changed = paths.filter((each) => resolve(each) === resolve(path));
    if (changed.length > 0) check({ ...rest, paths: changed });
  };
  watcher.on('change', heard);
  watcher.on('add', heard);
}
