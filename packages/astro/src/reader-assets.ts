import type { AstroIntegration } from 'astro';
import { readerStyle } from 'remark-retare';

type VitePlugin = NonNullable<
  NonNullable<
    Parameters<Parameters<NonNullable<AstroIntegration['hooks']['astro:config:setup']>>[0]['updateConfig']>[0]['vite']
  >['plugins']
>[number];

const name = 'virtual:retare/reader.css';
// The ending tells Vite that it is a stylesheet.
const resolved = '\0virtual:retare/reader.css';

/**
 * The reader's stylesheet, as a module of the site's bundle.
 *
 * @param kitchens Ids of all kitchens that a page may show: a post's native kitchen need not be one that the site serves.
 */
export function readerAssets(kitchens: readonly string[]): VitePlugin {
  return {
    name: 'retare-reader-assets',
    resolveId: (id: string) => (id === name ? resolved : undefined),
    load: (id: string) => (id === resolved ? readerStyle(kitchens) : undefined),
  } as VitePlugin;
}
