import type { AstroConfig } from 'astro';
import remarkRetare, { type RemarkRetareOptions } from 'remark-retare';
import { renderInPlace } from './render-in-place.js';

/** The site's Markdown processor, as its settings name it. */
export type MarkdownProcessor = NonNullable<AstroConfig['markdown']['processor']>;

type CreateRenderer = MarkdownProcessor['createRenderer'];

const plain = Symbol('createRenderer without ours');

/**
 * Hooks our pages into the site's Markdown processor, whichever it is. Done again, after a restart, it leaves one hook.
 *
 * @returns The processor to use from now on.
 */
export function useProcessor(processor: MarkdownProcessor, options: RemarkRetareOptions): MarkdownProcessor {
  return isUnified(processor) ? useUnified(processor, options) : useAnother(processor, options);
}

/** Whether the processor runs remark plugins. */
export function isUnified(processor: MarkdownProcessor): boolean {
  return processor.name === 'unified';
}

/** Ours runs first, so that another plugin for directives finds only its own. */
function useUnified(processor: MarkdownProcessor, options: RemarkRetareOptions): MarkdownProcessor {
  const { remarkPlugins } = processor.options as { remarkPlugins: unknown[] };
  const others = remarkPlugins.filter((plugin) => !(Array.isArray(plugin) && plugin[0] === remarkRetare));
  remarkPlugins.splice(0, remarkPlugins.length, [remarkRetare, options], ...others);
  return processor;
}

/**
 * A processor that runs no remark plugins, Astro's default among them, gets our tags in the author's text. All else in the text stays
 * as it is, byte for byte.
 */
function useAnother(processor: MarkdownProcessor, options: RemarkRetareOptions): MarkdownProcessor {
  const createRenderer = (processor.createRenderer as CreateRenderer & { [plain]?: CreateRenderer })[plain];
  const create = createRenderer ?? processor.createRenderer.bind(processor);
  // Plain data in the processor's options is what Astro's content cache follows.
  Object.assign(processor.options, { retare: options });
  const withOurs: CreateRenderer = async (shared) => {
    const renderer = await create(shared);
    return {
      render: (content, given) => renderer.render(renderInPlace(content, given?.frontmatter, options), given),
    };
  };
  return { ...processor, createRenderer: Object.assign(withOurs, { [plain]: create }) };
}
