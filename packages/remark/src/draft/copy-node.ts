import type { Nodes } from 'mdast';

/** What takes a node's place in a copy: nothing leaves it out, undefined copies it as it is. */
export type Replacing = (node: Nodes) => Nodes[] | undefined;

/** A copy of a tree for another block: without places, which would be those of the native one. */
export function copyNode<Kind extends Nodes>(node: Kind, replacing: Replacing): Kind {
  const { position: _, ...own } = node;
  const copy = { ...own } as Kind;
  if ('children' in copy && 'children' in node) {
    copy.children = (node.children as Nodes[]).flatMap(
      (child) => replacing(child) ?? [copyNode(child, replacing)],
    ) as typeof copy.children;
  }
  return copy;
}
