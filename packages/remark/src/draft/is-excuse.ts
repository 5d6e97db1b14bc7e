import type { Nodes } from 'mdast';

/** A comment that excuses a native line from a rule: it says nothing of what is bought and measured elsewhere. */
export function isExcuse(node: Nodes): boolean {
  return node.type === 'html' && /^<!--\s*retare\s/.test(node.value.trim());
}
