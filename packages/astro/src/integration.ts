import { fileURLToPath } from 'node:url';
import type { CheckedPost } from '@retare/check';
import { type LoadedSettings, loadSettings, problemLine } from '@retare/larder';
import type { AstroIntegration, AstroIntegrationLogger } from 'astro';
import { type CheckedSite, checkSite, postsIn } from './check-site.js';
import { currentOptions } from './current-options.js';
import { readerAssets } from './reader-assets.js';
import { recheckOnChange } from './recheck-on-change.js';
import { stop } from './stop.js';
import { isUnified, useProcessor } from './use-processor.js';
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
 *
 * @throws {Error} From Astro's hooks, so that the command ends with exit code 1: where the settings have a problem, and on a build where
 * the check finds an error.
 */
export default function retare(options: RetareOptions = {}): AstroIntegration {
  let root = '';
  let site: LoadedSettings;
  let plainMarkdownOnly = false;
  let restarted = false;
  const globs = (): readonly string[] => options.posts ?? site.settings.posts;
  const whole = () => ({ root, site, paths: postsIn(root, globs()) });
  return {
    name: '@retare/astro',
    hooks: {
      'astro:config:setup': ({ config, isRestart, updateConfig, injectScript, addWatchFile }) => {
        restarted = isRestart;
        root = fileURLToPath(config.root);
        addWatchFile(new URL('retare.yaml', config.root));
        site = loadSettings(root);
        if (site.settings.larder !== null) addWatchFile(new URL(site.settings.larder, config.root));
        if (site.problems.length > 0) throw stop(site.problems.map(problemLine).join('\n'));
        const { processor } = config.markdown;
        plainMarkdownOnly = !isUnified(processor);
        updateConfig({
          markdown: { processor: useProcessor(processor, currentOptions(root, pluginOptions(site))) },
          vite: { plugins: [readerAssets([...site.larder.kitchens.keys()])] },
        });
        injectScript('page-ssr', `import 'virtual:retare/reader.css';`);
        injectScript('page', `import 'remark-retare/reader.js';`);
      },
      'astro:build:start': ({ logger }) => {
        const { checked, line, errors } = checkSite(whole(), logger);
        if (plainMarkdownOnly) refuseMdx(checked);
        if (errors > 0)
          throw stop(`${line}. No page was written: correct the errors above, or excuse them with a reason`);
        logger.info(line);
      },
      'astro:server:setup': ({ server, logger }) => {
        recheckOnChange(server.watcher, whole, (changed) => tell(changed, logger));
        if (!restarted) return;
        tell(whole(), logger);
        // Astro's content layer outlives the restart and renders only what is saved.
        logger.warn(
          'Settings or larder changed. A page follows when its post is saved, all when `astro dev` starts anew',
        );
      },
      'astro:server:start': ({ logger }) => tell(whole(), logger),
    },
  };
}

function pluginOptions({ settings, siteLarder, digest }: LoadedSettings) {
  return { settings, ...(siteLarder === null ? {} : { larder: siteLarder }), digest: `${version}-${digest}` };
}

/** A development server goes on: the author is at work on it. */
function tell(checked: CheckedSite, logger: AstroIntegrationLogger): void {
  const { line, errors } = checkSite(checked, logger);
  logger[errors > 0 ? 'error' : 'info'](line);
}

/** A processor without remark plugins gives us no way into MDX: better no page than one with its annotations bare. */
function refuseMdx(checked: readonly CheckedPost[]): void {
  const post = checked.find(({ file, isRecipe }) => isRecipe && file.path.endsWith('.mdx'));
  if (post === undefined) return;
  throw stop(
    `${post.file.path} is MDX, where this Markdown processor leaves the annotations as they are. Use \`unified()\` of @astrojs/markdown-remark in the site's \`markdown.processor\`, or make the post plain Markdown. No page was written`,
  );
}
