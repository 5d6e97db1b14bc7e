import type { InlineCode, Nodes, PhrasingContent, Text } from 'mdast';
import type { TextDirective } from 'mdast-util-directive';
import type { Position } from 'unist';
import { pointOf } from './source-place.js';

/** A stretch of a line's words and the node that holds it. */
export interface Piece {
  node: Text | InlineCode;
  start: number;
  end: number;
}

/** Phrasing content as plain words, and which node each stretch comes from. */
export interface Words {
  text: string;
  pieces: Piece[];
  /** Directives among the words, with the stretch of their labels. */
  directives: { node: TextDirective; start: number; end: number }[];
}

/** The words of phrasing content, markup taken off. A line break is a blank, so that a line reads as one. */
export function wordsOf(nodes: readonly PhrasingContent[]): Words {
  const words: Words = { text: '', pieces: [], directives: [] };
  for (const node of nodes) collect(node, words);
  return words;
}

function collect(node: Nodes, words: Words): void {
  const start = words.text.length;
  if (node.type === 'text' || node.type === 'inlineCode') {
    words.pieces.push({ node, start, end: start + node.value.length });
    words.text += node.value.replace(/\s/g, ' ');
  } else if (node.type === 'break') words.text += ' ';
  else if ('children' in node) for (const child of node.children) collect(child, words);
  if (node.type === 'textDirective') words.directives.push({ node, start, end: words.text.length });
}

/**
 * Where a stretch of words stands in the file.
 *
 * @param source The file.
 * @param fallback The place of the whole, for trees without places and for words that another plugin has changed.
 */
export function placeOf(
  words: Words,
  start: number,
  end: number,
  source: string,
  fallback: Position | undefined,
): Position | undefined {
  const first = words.pieces.find((piece) => piece.start <= start && start < piece.end);
  const last = words.pieces.find((piece) => piece.start < end && end <= piece.end);
  const from = first === undefined ? undefined : pointOf(first.node, start - first.start, source);
  const to = last === undefined ? undefined : pointOf(last.node, end - last.start, source);
  return from === undefined || to === undefined ? fallback : { start: from, end: to };
}
