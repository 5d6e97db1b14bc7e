import { defaultSettings, type Settings } from '@retare/larder';
import type { Nodes, Root, RootContent } from 'mdast';
import rehypeStringify from 'rehype-stringify';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import { attachSyntax, larderOf, placementsOf, type RemarkRetareOptions, readPost, versionsOf } from 'remark-retare';
import { type Processor, unified } from 'unified';
import { VFile } from 'vfile';

const parser = unified()
  .use(remarkParse)
  .use(remarkGfm)
  .use(function (this: Processor) {
    attachSyntax(this);
  })
  .freeze();

const toHtml = unified().use(remarkRehype).use(rehypeStringify).freeze();

/**
 * A post's text with our annotations replaced by HTML.
 *
 * @param content Markdown without its front matter.
 */
export async function renderInPlace(
  content: string,
  frontMatter: unknown,
  options: RemarkRetareOptions,
): Promise<string> {
  const settings: Settings = { ...defaultSettings, ...options.settings };
  const larder = larderOf(options.larder);
  const file = new VFile(content);
  const tree: Root = parser.parse(file);
  const reading = readPost(tree, file, frontMatter, larder, settings);
  if (reading === null) return content;
  const placements = placementsOf(tree, reading, versionsOf(reading, larder, settings));
  let out = '';
  let at = 0;
  for (const [node, replacement] of inReadingOrder(placements)) {
    const { start, end } = node.position as { start: { offset: number }; end: { offset: number } };
    out += content.slice(at, start.offset) + (await htmlOf(node, replacement));
    at = end.offset;
  }
  return out + content.slice(at);
}

function inReadingOrder(placements: ReadonlyMap<Nodes, RootContent[]>): [Nodes, RootContent[]][] {
  return [...placements].filter(([node]) => node.position !== undefined).sort(([a], [b]) => offsetOf(a) - offsetOf(b));
}

function offsetOf(node: Nodes): number {
  return node.position?.start.offset ?? 0;
}

/** HTML without blank lines, which would end an HTML block. */
async function htmlOf(node: Nodes, replacement: readonly RootContent[]): Promise<string> {
  const inline = node.type === 'textDirective';
  const children = inline ? [{ type: 'paragraph', children: replacement } as RootContent] : [...replacement];
  const html = toHtml
    .stringify((await toHtml.run({ type: 'root', children } as Root)) as never)
    .replace(/\n\s*\n/g, '\n');
  return inline ? html.replace(/^<p>/, '').replace(/<\/p>$/, '') : html;
}
