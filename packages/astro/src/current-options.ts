import type { RemarkRetareOptions } from 'remark-retare';

const handedOut = new Map<string, RemarkRetareOptions>();

/**
 * The options of a site, one object for as long as the process runs: Astro's content layer outlives a restart of the development server
 * and holds on to the first that it was given.
 *
 * @param root Absolute path of the site's root.
 * @param options What holds from now on.
 */
export function currentOptions(root: string, options: RemarkRetareOptions): RemarkRetareOptions {
  const current = handedOut.get(root) ?? {};
  handedOut.set(root, current);
  delete current.larder;
  return Object.assign(current, options);
}
