import { fileURLToPath } from 'node:url';
import { loadSettings, problemLine } from '@retare/larder';
import type { AstroIntegration } from 'astro';
import { checkSite } from './check-site.js';
import { readerAssets } from './reader-assets.js';
import { useProcessor } from './use-processor.js';
import { version } from './version.js';

/** What a site may say beside its `retare.yaml`. */
export interface RetareOptions {
  /** Globs of the posts to check, from the site's root, instead of those in `retare.yaml`. */
  posts?: readonly string[];
}

/**
 * Every reader's kitchen on every recipe page, and a check that stops the build before a page is written that cannot be cooked.
 *
 * Settings come from `retare.yaml` at the site's root. The check reads the files itself on every build: Astro runs no Markdown plugin
 * on a post that it has in its cache.
 */
export default function retare(options: RetareOptions = {}): AstroIntegration {
  let root = '';
  return {
    name: '@retare/astro',
    hooks: {
      'astro:config:setup': async ({ config, updateConfig, injectScript, addWatchFile }) => {
        root = fileURLToPath(config.root);
        const site = loadSettings(root);
        if (site.problems.length > 0) throw new Error(site.problems.map(problemLine).join('\n'));
        addWatchFile(new URL('retare.yaml', config.root));
        if (site.settings.larder !== null) addWatchFile(new URL(site.settings.larder, config.root));
        await useProcessor(config.markdown.processor, {
          settings: site.settings,
          ...(site.siteLarder === null ? {} : { larder: site.siteLarder }),
          digest: `${version}-${site.digest}`,
        });
        updateConfig({ vite: { plugins: [readerAssets(site.settings.kitchens)] } });
        injectScript('page-ssr', `import 'virtual:retare/reader.css';`);
        injectScript('page', `import 'remark-retare/reader.js';`);
      },
      'astro:build:start': ({ logger }) => checkSite(root, options.posts, logger, 'stop'),
      'astro:server:start': ({ logger }) => checkSite(root, options.posts, logger, 'tell'),
    },
  };
}
