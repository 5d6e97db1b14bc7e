import type { Root } from 'mdast';
import rehypeStringify from 'rehype-stringify';
import remarkFrontmatter from 'remark-frontmatter';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import remarkRetare, { type RemarkRetareOptions } from 'remark-retare';
import remarkStringify from 'remark-stringify';
import { type PluggableList, type Processor, unified } from 'unified';
import { VFile } from 'vfile';

/** Plugins around ours. */
export interface Around {
  before?: PluggableList;
  after?: PluggableList;
  options?: RemarkRetareOptions;
  /** Leaves our plugin out. */
  without?: boolean;
}

function pipeline({ before = [], after = [], options = {}, without = false }: Around): Processor {
  const ours: PluggableList = without ? [] : [[remarkRetare, options]];
  return unified()
    .use(remarkParse)
    .use(remarkFrontmatter)
    .use(remarkGfm)
    .use([...before, ...ours, ...after]) as unknown as Processor;
}

/** A post as HTML, with what was reported on it. */
export function render(markdown: string, around: Around = {}): { html: string; messages: VFile['messages'] } {
  const file = new VFile(markdown);
  const processor = pipeline(around).use(remarkRehype).use(rehypeStringify);
  return { html: String(processor.processSync(file)), messages: file.messages };
}

/** A post as HTML. */
export function htmlOf(markdown: string, around: Around = {}): string {
  return render(markdown, around).html;
}

/** A post as Markdown again. */
export function markdownOf(markdown: string, around: Around = {}): string {
  return String(pipeline(around).use(remarkStringify).processSync(markdown));
}

/** A post as a tree, with our plugin run over it. */
export function treeOf(markdown: string, around: Around = {}): Root {
  const processor = pipeline(around);
  return processor.runSync(processor.parse(markdown), new VFile(markdown)) as Root;
}

/** Only the kitchens that a test is about. */
export function serving(...kitchens: string[]): RemarkRetareOptions {
  return { settings: { kitchens } };
}

/** The text that a page shows where a kitchen is chosen: elements for other kitchens only are left out. */
export function readIn(kitchen: string, html: string): string {
  const kept: boolean[] = [];
  let text = '';
  for (const [part] of html.matchAll(/<[^>]*>|[^<]+/g)) {
    if (part.startsWith('</')) kept.pop();
    else if (!part.startsWith('<')) text += kept.every(Boolean) ? part : '';
    else if (!/^<(?:br|hr|img|input)\b/.test(part)) {
      const kitchens = /data-retare="([^"]*)"/.exec(part)?.[1]?.split(' ');
      kept.push(!/^<(?:retare-kitchens|details)/.test(part) && (kitchens === undefined || kitchens.includes(kitchen)));
    }
  }
  return text.replace(/\s+/g, ' ').trim();
}
