import type { Nodes, Parents, PhrasingContent, Root, RootContent } from 'mdast';
import { visit } from 'unist-util-visit';
import { escaped, openingTag, pureHtml } from './html-in-markdown.js';

/** From where to where the content of a parent stands in the source. */
type Bounds = ReadonlyMap<Nodes, { start: number; end: number }>;

/** Prints what takes the place of a node. */
type Print = (replaced: Nodes, replacement: readonly RootContent[]) => string;

/**
 * Prints nodes as Markdown with tags in it. What the author wrote is cut out of the source.
 *
 * @param tree Taken before anything in it is replaced.
 */
export function printer(source: string, tree: Root): Print {
  const bounds = boundsIn(tree);
  return (replaced, replacement) => {
    if (replaced.type === 'textDirective') return replacement.map((node) => inline(node as Nodes, source)).join('');
    const newline = `\n${prefixOf(replaced, source)}`;
    return replacement.map((node) => block(node, { source, bounds, newline })).join(newline + newline);
  };
}

interface Page {
  source: string;
  bounds: Bounds;
  /** A line break, and what every line of the surrounding quotation or list starts with. */
  newline: string;
}

function boundsIn(tree: Root): Bounds {
  const bounds = new Map<Nodes, { start: number; end: number }>();
  visit(tree, (node) => {
    if (!('children' in node)) return;
    const start = node.children[0]?.position?.start.offset;
    const end = node.children.at(-1)?.position?.end.offset;
    if (start !== undefined && end !== undefined) bounds.set(node, { start, end });
  });
  return bounds;
}

/** `> ` of a quotation as it is, the mark of a list item as the blanks that continue it. */
function prefixOf(node: Nodes, source: string): string {
  const offset = node.position?.start.offset ?? 0;
  return source.slice(source.lastIndexOf('\n', offset - 1) + 1, offset).replace(/[^>\s]/g, ' ');
}

function block(node: RootContent, page: Page): string {
  const { source, newline } = page;
  const element = elementOf(node);
  if (element !== null) {
    if (isGenerated(node)) return pureHtml(node).replaceAll('\n', newline);
    const children = (node as Parents).children.map((child) => block(child, page));
    return [openingTag(element), ...children, `</${element.tag}>`].join(newline + newline);
  }
  if (node.position === undefined) return pureHtml(node).replaceAll('\n', newline);
  if (isAsWritten(node, source) || !('children' in node)) return sliceOf(node, source);
  return isPhrasingParent(node) ? phrasingParent(node, page) : flowParent(node, page);
}

/** A list, an item, a quotation, a table: its own marks stand between its children. */
function flowParent(node: Parents, page: Page): string {
  const { source } = page;
  let at = offset(node, 'start');
  let out = '';
  for (const child of node.children) {
    if (child.position === undefined) continue;
    out += source.slice(at, offset(child, 'start')) + block(child, page);
    at = offset(child, 'end');
  }
  return out + source.slice(at, offset(node, 'end'));
}

function isPhrasingParent(node: Nodes): boolean {
  return node.type === 'paragraph' || node.type === 'heading' || node.type === 'tableCell';
}

function phrasingParent(node: Parents, { source, bounds }: Page): string {
  const inside = bounds.get(node) ?? { start: offset(node, 'start'), end: offset(node, 'end') };
  const words = node.children.map((child) => inline(child, source)).join('');
  return source.slice(offset(node, 'start'), inside.start) + words + source.slice(inside.end, offset(node, 'end'));
}

const tags = { strong: 'strong', emphasis: 'em', delete: 'del' } as const;

/** What stands in a line of words. */
function inline(node: Nodes, source: string): string {
  const element = elementOf(node);
  const inside = (): string => (node as Parents).children.map((child) => inline(child, source)).join('');
  if (element !== null) return `${openingTag(element)}${inside()}</${element.tag}>`;
  if (isAsWritten(node, source)) return sliceOf(node, source);
  switch (node.type) {
    case 'text':
      return escaped(node.value);
    case 'strong':
    case 'emphasis':
    case 'delete':
      return `<${tags[node.type]}>${inside()}</${tags[node.type]}>`;
    case 'link':
      return `${openingTag({ tag: 'a', properties: { href: node.url, ...(node.title == null ? {} : { title: node.title }) } })}${inside()}</a>`;
    case 'linkReference':
      return `[${inside()}][${node.label ?? node.identifier}]`;
    case 'break':
      return '<br>';
    default:
      return 'children' in node ? inside() : sliceOf(node, source);
  }
}

/** The element that a node of ours stands for; null for the author's own. */
function elementOf(node: Nodes): { tag: string; properties: Record<string, unknown> } | null {
  const data = node.data as { hName?: string; hProperties?: Record<string, unknown> } | undefined;
  return data?.hName === undefined || node.position !== undefined
    ? null
    : { tag: data.hName, properties: data.hProperties ?? {} };
}

/** Nothing in it is the author's. */
function isGenerated(node: Nodes): boolean {
  return node.position === undefined && (!('children' in node) || node.children.every(isGenerated));
}

/** Everything in it is the author's, unchanged. Only words are ever edited. */
function isAsWritten(node: Nodes, source: string): boolean {
  if (node.position === undefined || node.type === 'break') return false;
  // A continued line starts with the mark of what it stands in, which is none of its words.
  if (node.type === 'text') return sliceOf(node, source).replace(/\n[ \t>]+/g, '\n') === node.value;
  if (node.type === 'textDirective') return false;
  return !('children' in node) || (node.children as PhrasingContent[]).every((child) => isAsWritten(child, source));
}

function sliceOf(node: Nodes, source: string): string {
  return source.slice(offset(node, 'start'), offset(node, 'end'));
}

function offset(node: Nodes, side: 'start' | 'end'): number {
  return node.position?.[side].offset ?? 0;
}
