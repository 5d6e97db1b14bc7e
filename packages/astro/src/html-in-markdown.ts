import type { Root, RootContent } from 'mdast';
import rehypeStringify from 'rehype-stringify';
import remarkRehype from 'remark-rehype';
import { unified } from 'unified';

const toHtml = unified().use(remarkRehype).use(rehypeStringify).freeze();

/** An element to open. */
export interface Opening {
  tag: string;
  /** In the names of hast: `className`, `dataRetare`. */
  properties: Record<string, unknown>;
}

/** `<p class="retare-part">` */
export function openingTag({ tag, properties }: Opening): string {
  const element = { type: 'element', tagName: tag, properties, children: [] };
  const html = toHtml.stringify({ type: 'root', children: [element] } as never);
  return html.slice(0, html.length - `</${tag}>`.length);
}

/**
 * A block of ours as HTML that a Markdown parser passes on. Its first tag stands alone on a line, which opens an HTML block whatever
 * the tag; a blank line would end the block, so there is none.
 */
export function pureHtml(node: RootContent): string {
  const html = toHtml.stringify(toHtml.runSync({ type: 'root', children: [structuredClone(node)] } as Root) as never);
  const flat = onOneLine(html).trim();
  const end = flat.indexOf('>') + 1;
  const close = flat.lastIndexOf('</');
  return close <= end ? flat : `${flat.slice(0, end)}\n${flat.slice(end, close)}\n${flat.slice(close)}`;
}

/** Words that no Markdown parser takes for markup. */
export function escaped(words: string): string {
  return onOneLine(words).replace(/[&<>\\`*_[\]{}~|:^=#$@]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

/** Line ends and the blanks around them as one space; blanks inside a line stay. */
function onOneLine(text: string): string {
  const [first = '', ...rest] = text.split('\n');
  const last = rest.pop();
  if (last === undefined) return first;
  const between = rest.map((line) => line.trim()).filter((line) => line !== '');
  return [first.trimEnd(), ...between, last.trimStart()].join(' ');
}
