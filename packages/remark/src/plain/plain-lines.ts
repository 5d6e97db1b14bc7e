import type { ListItem, Nodes, Root } from 'mdast';
import { toString as wordsIn } from 'mdast-util-to-string';
import { type Section, sectionOf } from './section.js';
import { looksLikeIngredients, shapeOf } from './shape.js';

/** A line of a plain post that may be an ingredient line. */
export interface PlainLine {
  /** 1-based line in the file. */
  line: number;
  /** The line as it stands, its list marker taken off. */
  text: string;
  /** Heading of the part that it stands under; null where there is none. */
  part: string | null;
}

/** A stretch of lines under one heading. */
interface Block {
  lines: PlainLine[];
  section: Section | null;
  isList: boolean;
}

/**
 * The ingredient lines of a post without annotations, found by their heading, their place and their shape.
 *
 * @param tree Parsed Markdown with positions.
 * @param source The file's text.
 */
export function plainLines(tree: Root, source: string): PlainLine[] {
  const blocks = blocksOf(tree, source.split(/\r?\n/));
  const named = blocks.filter((block) => block.section === 'ingredients' && isBelieved(block));
  const chosen = named.length > 0 ? [...named, ...besideNamed(blocks, named)] : blocks.filter(isLikely);
  return chosen.flatMap(({ lines }) => lines).sort((a, b) => a.line - b.line);
}

/** Steps that follow the list without a heading of their own are none of it, and neither is prose. */
function isBelieved(block: Block): boolean {
  const shape = shapeOf(textsOf(block));
  return block.isList ? shape.steps <= 0.6 || shape.amounts >= 0.3 : shape.steps === 0 && isShort(block);
}

function isShort(block: Block): boolean {
  return textsOf(block).every((text) => text.split(/\s+/).length <= mostWords);
}

/** Where one list is named, others between it and the method are believed by their shape, and later ones only if most state amounts. */
function besideNamed(blocks: readonly Block[], named: readonly Block[]): Block[] {
  const method = blocks.findIndex(({ section }) => section === 'method');
  const first = blocks.findIndex((block) => named.includes(block));
  return blocks.filter((block, index) => {
    if (named.includes(block) || block.section !== null || !block.isList) return false;
    const shape = shapeOf(textsOf(block));
    return shape.amounts >= 0.5 || (index > first && (method < 0 || index < method) && looksLikeIngredients(shape));
  });
}

function isLikely(block: Block): boolean {
  const shape = shapeOf(textsOf(block));
  if (block.section !== null) return block.isList && shape.amounts >= 0.6 && shape.steps === 0;
  if (block.isList) return looksLikeIngredients(shape);
  // Prose has amounts too: only lines that are as short as a list's are believed.
  return (
    shape.amounts >= 0.5 && shape.steps === 0 && textsOf(block).every((text) => text.split(/\s+/).length <= mostWords)
  );
}

/** A line of ingredients is no longer, a remark in brackets included. */
const mostWords = 20;

function textsOf({ lines }: Block): string[] {
  return lines.map(({ text }) => text);
}

function blocksOf(tree: Root, source: readonly string[]): Block[] {
  const blocks: Block[] = [];
  let section: Section | null = null;
  let depth = 7;
  let part: string | null = null;
  const first = tree.children.find(({ type }) => type === 'heading');
  const title = first?.type === 'heading' && first.depth === 1 ? first : null;
  for (const node of tree.children) {
    const heading = headingOf(node);
    if (heading !== null) {
      const opened = sectionOf(heading.text);
      // A part's own heading stays in its section; one as high as the section's closes it.
      if (opened !== null || heading.depth <= depth) {
        section = opened;
        depth = heading.depth;
      }
      // The post's title names no part.
      part = opened === null && node !== title ? heading.text : null;
      continue;
    }
    const lines = linesOf(node, part, source);
    if (lines.length > 0) blocks.push({ lines, section, isList: node.type === 'list' });
  }
  return blocks;
}

/** A heading, or a paragraph that stands like one: bold alone, a section's word alone, or a few words with a colon behind. */
function headingOf(node: Nodes): { text: string; depth: number } | null {
  if (node.type === 'heading') return { text: wordsIn(node), depth: node.depth };
  if (node.type !== 'paragraph') return null;
  const text = wordsIn(node).trim();
  if (text.includes('\n') || text.split(/\s+/).length > 6) return null;
  const bold = node.children.every(
    (child) => child.type === 'strong' || child.type === 'emphasis' || wordsIn(child).trim() === '',
  );
  return bold || text.endsWith(':') || isLoneSection(text) ? { text: text.replace(/:$/, ''), depth: 6 } : null;
}

/** `Ingredients` alone in a paragraph. */
function isLoneSection(text: string): boolean {
  return /^\p{L}+$/u.test(text) && sectionOf(text) !== null;
}

function linesOf(node: Nodes, part: string | null, source: readonly string[]): PlainLine[] {
  if (node.type === 'list') return node.children.flatMap((item) => itemLines(item, part, source));
  if (node.type === 'paragraph') return paragraphLines(node, part, source);
  if (node.type === 'blockquote') return node.children.flatMap((child) => linesOf(child, part, source));
  return [];
}

function itemLines(item: ListItem, part: string | null, source: readonly string[]): PlainLine[] {
  const start = item.position?.start.line;
  if (start === undefined) return [];
  const nested = item.children.flatMap((child) => (child.type === 'list' ? linesOf(child, part, source) : []));
  const text = withoutMarker(source[start - 1] ?? '');
  return text === '' ? nested : [{ line: start, text, part }, ...nested];
}

/** Every line of a paragraph that stands among ingredients. */
function paragraphLines(node: Nodes, part: string | null, source: readonly string[]): PlainLine[] {
  const { start, end } = node.position ?? {};
  if (start === undefined || end === undefined) return [];
  const lines: PlainLine[] = [];
  for (let line = start.line; line <= end.line; line++) {
    const text = (source[line - 1] ?? '').trim();
    if (text !== '') lines.push({ line, text, part });
  }
  return lines;
}

/** Takes a bullet or a number, and a task box, off a line. */
function withoutMarker(line: string): string {
  return line
    .trim()
    .replace(/^(?:[-*+]|\d{1,9}[.)])(?:\s+|$)/, '')
    .trim();
}
