import type { Nodes, PhrasingContent, Text } from 'mdast';
import type { Position } from 'unist';

/** A stretch of a line's words and the text node that holds it. */
export interface Piece {
  node: Text;
  start: number;
  end: number;
}

/** Phrasing content as plain words, and which node each stretch comes from. */
export interface Words {
  text: string;
  pieces: Piece[];
}

/** The words of phrasing content, markup taken off. A line break is a blank, so that a line reads as one. */
export function wordsOf(nodes: readonly PhrasingContent[]): Words {
  const words: Words = { text: '', pieces: [] };
  for (const node of nodes) collect(node, words);
  return words;
}

function collect(node: Nodes, words: Words): void {
  if (node.type === 'text') {
    words.pieces.push({ node, start: words.text.length, end: words.text.length + node.value.length });
    words.text += node.value.replace(/\s/g, ' ');
  } else if (node.type === 'break') words.text += ' ';
  else if (node.type === 'inlineCode') words.text += node.value;
  else if ('children' in node) for (const child of node.children) collect(child, words);
}

/**
 * Where a stretch of words stands in the file.
 *
 * @param fallback The place of the whole, for trees without positions and for words with escapes, whose offsets cannot be known.
 */
export function placeOf(
  words: Words,
  start: number,
  end: number,
  fallback: Position | undefined,
): Position | undefined {
  const first = words.pieces.find((piece) => piece.start <= start && start < piece.end);
  const last = words.pieces.find((piece) => piece.start < end && end <= piece.end);
  const from = first === undefined ? undefined : pointIn(first, start);
  const to = last === undefined ? undefined : pointIn(last, end);
  return from === undefined || to === undefined ? fallback : { start: from, end: to };
}

function pointIn({ node, start }: Piece, at: number): Position['start'] | undefined {
  const { position } = node;
  if (position?.start.offset === undefined || position.end.offset === undefined) return undefined;
  // Escapes and references make the source longer than its words.
  if (position.end.offset - position.start.offset !== node.value.length) return undefined;
  const before = node.value.slice(0, at - start);
  const breaks = before.split('\n').length - 1;
  const offset = position.start.offset + before.length;
  const line = position.start.line + breaks;
  const column = breaks === 0 ? position.start.column + before.length : before.length - before.lastIndexOf('\n');
  return { line, column, offset };
}
