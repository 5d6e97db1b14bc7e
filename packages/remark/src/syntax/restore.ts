import type { Root } from 'mdast';
import type { Directives } from 'mdast-util-directive';
import { visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import { isAnnotation } from './names.js';

/**
 * Puts accidents back. A pipeline with the whole directives syntax reads `10:30`, `Serves:four` and `2:1` as directives and drops them
 * from the page; so does ours with `note:pan`. A directive with neither label nor attributes that hangs on a word, or whose name is
 * no word, is text. Every other foreign directive is left for the plugin that it belongs to, and reads as written if there is none.
 */
export function restoreForeign(tree: Root, file: VFile): void {
  const source = String(file);
  visit(tree, (node, index, parent) => {
    if (node.type !== 'textDirective' && node.type !== 'leafDirective') return;
    const written = writtenAs(node, source);
    if (written === null || parent === undefined || index === undefined) return;
    if (node.type === 'textDirective' && isAccident(node, source)) {
      parent.children.splice(index, 1, {
        type: 'text',
        value: written,
        ...(node.position ? { position: node.position } : {}),
      });
      return;
    }
    if (isAnnotation(node.type, node.name) || isHandled(node)) return;
    // remark-rehype prints the `value` of a node that nobody has given an element; a plugin that handles the node sets one.
    Object.assign(node, { value: written });
  });
}

/** The author's own bytes. */
function writtenAs(node: Directives, source: string): string | null {
  const start = node.position?.start.offset;
  const end = node.position?.end.offset;
  return start === undefined || end === undefined ? null : source.slice(start, end);
}

function isAccident(node: Directives, source: string): boolean {
  if (node.children.length > 0 || Object.keys(node.attributes ?? {}).length > 0) return false;
  const before = source[(node.position?.start.offset ?? 0) - 1] ?? ' ';
  return isAnnotation(node.type, node.name) || /[\p{L}\p{N}]/u.test(before) || !/^\p{L}/u.test(node.name);
}

function isHandled(node: Directives): boolean {
  return node.data !== undefined && ('hName' in node.data || 'hChildren' in node.data);
}
