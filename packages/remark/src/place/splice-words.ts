import { type Edit, overlap, sorted } from '@retare/core';
import type { PhrasingContent } from 'mdast';
import { wordsOf } from '../read/words-of.js';

/**
 * A copy of phrasing content with stretches of its words replaced. Markup around the words stays; what replaces a stretch stands where
 * the stretch began.
 *
 * @param edits Offsets in the words of the content.
 */
export function spliceWords(nodes: readonly PhrasingContent[], edits: readonly Edit[]): PhrasingContent[] {
  const copy = copyOf(nodes);
  const { pieces } = wordsOf(copy);
  for (const edit of sorted(edits).reverse()) {
    // Words that are only added go behind what stands before them.
    const touched =
      edit.start === edit.end
        ? pieces.filter(({ start, end }) => start <= edit.start && edit.start <= end).slice(0, 1)
        : pieces.filter((piece) => overlap(piece, edit));
    touched.forEach(({ node, start, end }, index) => {
      const from = Math.max(edit.start - start, 0);
      const to = Math.min(edit.end, end) - start;
      node.value = node.value.slice(0, from) + (index === 0 ? edit.text : '') + node.value.slice(to);
    });
  }
  return withoutEmpty(copy);
}

/** A copy as deep as the words go. What other plugins hang on a node is shared: it may hold what cannot be cloned. */
export function copyOf(nodes: readonly PhrasingContent[]): PhrasingContent[] {
  return nodes.map((node) =>
    'children' in node ? ({ ...node, children: copyOf(node.children) } as PhrasingContent) : { ...node },
  );
}

/** Words and markup that an edit has left empty fall away. */
function withoutEmpty(nodes: readonly PhrasingContent[]): PhrasingContent[] {
  return nodes.flatMap((node): PhrasingContent[] => {
    if (node.type === 'text' || node.type === 'inlineCode') return node.value === '' ? [] : [node];
    if (!('children' in node) || node.children.length === 0) return [node];
    node.children = withoutEmpty(node.children as PhrasingContent[]) as typeof node.children;
    return node.children.length === 0 ? [] : [node];
  });
}
