import { type Edit, sorted } from '@retare/core';
import type { PhrasingContent, Text } from 'mdast';
import { wordsOf } from '../read/words-of.js';
import { isAnnotation } from '../syntax/names.js';

/**
 * A copy of phrasing content with stretches of its words replaced and annotations taken off. Markup around the words stays; what
 * replaces a stretch stands where the stretch began.
 *
 * @param edits Offsets in the words of the content.
 */
export function spliceWords(nodes: readonly PhrasingContent[], edits: readonly Edit[]): PhrasingContent[] {
  const copy = structuredClone(nodes) as PhrasingContent[];
  const { pieces } = wordsOf(copy);
  for (const edit of sorted(edits).reverse()) {
    const touched = pieces.filter(({ start, end }) => start < edit.end && edit.start < end);
    touched.forEach(({ node, start, end }, index) => {
      const from = Math.max(edit.start - start, 0);
      const to = Math.min(edit.end, end) - start;
      node.value = node.value.slice(0, from) + (index === 0 ? edit.text : '') + node.value.slice(to);
    });
  }
  return withoutAnnotations(copy);
}

/** Annotations of ours give way to their words. */
export function withoutAnnotations(nodes: readonly PhrasingContent[]): PhrasingContent[] {
  return nodes.flatMap((node): PhrasingContent[] => {
    if (node.type === 'textDirective' && isAnnotation(node.type, node.name)) return withoutAnnotations(node.children);
    if ('children' in node)
      node.children = withoutAnnotations(node.children as PhrasingContent[]) as typeof node.children;
    return isEmpty(node) ? [] : [node];
  });
}

/** Emphasis that lost all its words to an edit. */
function isEmpty(node: PhrasingContent): boolean {
  if (node.type === 'text') return (node as Text).value === '';
  return (node.type === 'emphasis' || node.type === 'strong' || node.type === 'delete') && node.children.length === 0;
}
