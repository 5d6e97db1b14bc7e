import type { Paragraph, Parents, Root, RootContent } from 'mdast';
import type { ContainerDirective } from 'mdast-util-directive';
import { EXIT, visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import { isAnnotation } from '../syntax/names.js';
import type { Fault } from './fault.js';
import { firstLineOf } from './source-place.js';
import { textOf } from './text-of.js';

/**
 * Blocks of ours that are never closed, so that they would swallow the rest of the post or the next block. Each is taken apart: its
 * first line comes out as it was written, and what it swallowed stands on its own.
 */
export function dissolveUnclosed(tree: Root, file: VFile): Fault[] {
  const faults: Fault[] = [];
  const source = textOf(file);
  const closed = new WeakSet<ContainerDirective>();
  visit(tree, 'containerDirective', (node: ContainerDirective, index, parent) => {
    if (!isAnnotation(node.type, node.name) || parent === undefined || index === undefined) return;
    const written = writtenAs(node, source);
    const isClosed = closed.has(node) || written === undefined || endsInFence(written);
    const inner = blockIn(node);
    if (isClosed && inner === undefined) return;
    // What closes the outer block was meant for the inner one.
    if (isClosed && inner !== undefined) closed.add(inner);
    faults.push(faultOf(node, written, inner));
    dissolve(node, index, parent, written);
    return index;
  });
  return faults;
}

function writtenAs(node: ContainerDirective, source: string): string | undefined {
  const start = node.position?.start.offset;
  const end = node.position?.end.offset;
  return start === undefined || end === undefined ? undefined : source.slice(start, end);
}

function endsInFence(written: string): boolean {
  const lines = written.trimEnd().split(/\r?\n/);
  const opening = /^:+/.exec(lines[0] ?? '')?.[0].length ?? 0;
  const last = /^[\s>]*(:+)[ \t]*$/.exec(lines.at(-1) ?? '')?.[1]?.length ?? 0;
  return lines.length > 1 && last >= opening;
}

/** The first block of ours inside another. */
function blockIn(node: ContainerDirective): ContainerDirective | undefined {
  let found: ContainerDirective | undefined;
  visit(node, 'containerDirective', (inner: ContainerDirective) => {
    if (inner === node || !isAnnotation(inner.type, inner.name)) return;
    found = inner;
    return EXIT;
  });
  return found;
}

function dissolve(node: ContainerDirective, index: number, parent: Parents, written: string | undefined): void {
  const line = written?.split(/\r?\n/, 1)[0]?.trim() ?? `:::${node.name}`;
  const fence: Paragraph = { type: 'paragraph', children: [{ type: 'text', value: line }] };
  const content = node.children.filter((child) => !(child.type === 'paragraph' && child.data?.directiveLabel === true));
  parent.children.splice(index, 1, ...([fence, ...content] as RootContent[]));
}

function faultOf(node: ContainerDirective, written: string | undefined, inner: ContainerDirective | undefined): Fault {
  const line = written?.split(/\r?\n/, 1)[0]?.trimEnd() ?? node.name;
  const found =
    inner === undefined
      ? 'is never closed'
      : `is not closed before the next one begins${inner.position === undefined ? '' : ` on line ${inner.position.start.line}`}`;
  return {
    actual: line,
    expected: [':::'],
    message: `This \`${node.name}\` block ${found}, so it is shown as plain text. Put \`:::\` on a line of its own after its last line`,
    place: firstLineOf(node, written),
  };
}
