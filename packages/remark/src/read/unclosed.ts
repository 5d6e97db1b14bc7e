import type { Paragraph, Root, RootContent } from 'mdast';
import type { ContainerDirective } from 'mdast-util-directive';
import { visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import { isAnnotation } from '../syntax/names.js';
import type { Fault } from './fault.js';

/**
 * Blocks of ours that are never closed, so that they would swallow the rest of the post. Each is taken apart: its first line comes out
 * as it was written, and what it swallowed stands on its own.
 */
export function dissolveUnclosed(tree: Root, file: VFile): Fault[] {
  const faults: Fault[] = [];
  const source = String(file);
  visit(tree, 'containerDirective', (node: ContainerDirective, index, parent) => {
    if (!isAnnotation(node.type, node.name) || parent === undefined || index === undefined) return;
    const start = node.position?.start.offset;
    const end = node.position?.end.offset;
    if (start === undefined || end === undefined) return;
    const lines = source.slice(start, end).trimEnd().split('\n');
    if (lines.length > 1 && /^[\s>]*:{3,}\s*$/.test(lines.at(-1) ?? '')) return;
    faults.push(faultOf(node, lines[0]?.trimEnd() ?? ''));
    const children = node.children.filter(
      (child) => !(child.type === 'paragraph' && child.data?.directiveLabel === true),
    );
    parent.children.splice(index, 1, ...([fence(lines[0] ?? ''), ...children] as RootContent[]));
    return index;
  });
  return faults;
}

function fence(line: string): Paragraph {
  return { type: 'paragraph', children: [{ type: 'text', value: line.trim() }] };
}

function faultOf(node: ContainerDirective, line: string): Fault {
  const start = node.position?.start;
  const place =
    start === undefined
      ? undefined
      : { start, end: { ...start, column: start.column + line.length, offset: (start.offset ?? 0) + line.length } };
  return {
    actual: line,
    expected: [':::'],
    message: `This \`${node.name}\` block is never closed, so nothing in it is re-authored. Put \`:::\` on a line of its own after its last line`,
    place,
  };
}
