import { defaultSettings, type Settings } from '@retare/larder';
import type { Nodes, Root } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import {
  attachSyntax,
  larderOf,
  placementsOf,
  type RemarkRetareOptions,
  readPost,
  restoreForeign,
  versionsOf,
} from 'remark-retare';
import { type Processor, unified } from 'unified';
import { VFile } from 'vfile';
import { printer } from './print-in-place.js';

const parser = unified()
  .use(remarkParse)
  .use(remarkGfm)
  .use(function (this: Processor) {
    attachSyntax(this);
  })
  .freeze();

/**
 * A post's text with our annotations replaced: an element becomes a tag, and what stands in it stays Markdown, so that the site's own
 * processor still sees the author's headings, pictures and links. All else stays as it is, byte for byte.
 *
 * @param content Markdown without its front matter.
 * @param frontMatter Already parsed.
 */
export function renderInPlace(content: string, frontMatter: unknown, options: RemarkRetareOptions): string {
  const settings: Settings = { ...defaultSettings, ...options.settings };
  const larder = larderOf(options.larder);
  const file = new VFile(content);
  const tree: Root = parser.parse(file);
  restoreForeign(tree, file);
  const reading = readPost(tree, file, frontMatter, larder, settings);
  if (reading === null) return content;
  const print = printer(content, tree);
  const placements = placementsOf(tree, reading, versionsOf(reading, larder, settings));
  let out = '';
  let at = 0;
  for (const [node, replacement] of inReadingOrder(placements)) {
    const { start, end } = node.position as { start: { offset: number }; end: { offset: number } };
    out += content.slice(at, start.offset) + print(node, replacement);
    at = end.offset;
  }
  return out + content.slice(at);
}

function inReadingOrder<Content>(placements: ReadonlyMap<Nodes, Content>): [Nodes, Content][] {
  return [...placements].filter(([node]) => node.position !== undefined).sort(([a], [b]) => offsetOf(a) - offsetOf(b));
}

function offsetOf(node: Nodes): number {
  return node.position?.start.offset ?? 0;
}
