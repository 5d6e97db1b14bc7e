import type { AstroConfig } from 'astro';
import remarkRetare, { type RemarkRetareOptions } from 'remark-retare';
import { renderInPlace } from './render-in-place.js';

type MarkdownProcessor = NonNullable<AstroConfig['markdown']['processor']>;

/** Hooks our plugin into the site's Markdown processor, whichever it is. */
export async function useProcessor(processor: MarkdownProcessor, options: RemarkRetareOptions): Promise<void> {
  if (processor.name === 'unified') useUnified(processor, options);
  else useAnother(processor, options);
}

function useUnified(processor: MarkdownProcessor, options: RemarkRetareOptions): void {
  const { remarkPlugins } = processor.options as { remarkPlugins: unknown[] };
  remarkPlugins.push([remarkRetare, options]);
}

/**
 * A processor that runs no remark plugins, Astro's default among them, gets our blocks as finished HTML in the author's text. All else
 * in the text stays as it is, byte for byte.
 */
function useAnother(processor: MarkdownProcessor, options: RemarkRetareOptions): void {
  const createRenderer = processor.createRenderer.bind(processor);
  // Plain data in the processor's options is what Astro's content cache follows.
  Object.assign(processor.options, { retare: options });
  processor.createRenderer = async (shared) => {
    const renderer = await createRenderer(shared);
    return {
      render: async (content, given) =>
        renderer.render(await renderInPlace(content, given?.frontmatter, options), given),
    };
  };
}
