import type { List, Nodes, RootContent } from 'mdast';
import type { ContainerDirective } from 'mdast-util-directive';
import { isExcuse } from './is-excuse.js';

/** A native block without the excuses between its lines, which break one list into two: for a version it is one again. */
export function withoutExcuses(block: ContainerDirective): ContainerDirective {
  const children: ContainerDirective['children'] = [];
  let isExcused = false;
  for (const child of block.children) {
    if (isExcuse(child)) {
      isExcused = true;
      continue;
    }
    const last = children.at(-1);
    if (isExcused && last?.type === 'list' && isMoreOf(last, child))
      children[children.length - 1] = { ...last, children: [...last.children, ...child.children] };
    else children.push(child);
    isExcused = false;
  }
  return { ...block, children };
}

function isMoreOf(list: List, node: RootContent | Nodes): node is List {
  return node.type === 'list' && (node.ordered ?? false) === (list.ordered ?? false);
}
