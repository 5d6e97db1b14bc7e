import { ruleNames } from '@retare/larder';
import type { Html, Root } from 'mdast';
import { type Marker, messageControl } from 'unified-message-control';
import type { VFile } from 'vfile';

/**
 * Takes away what an author excuses in a comment, `<!-- retare ignore unbuyable: the fishmonger cuts it -->` before a line or block.
 * A reason has to follow the rule's name.
 */
export function excuse(tree: Root, file: VFile): void {
  messageControl(tree, {
    file,
    name: 'retare',
    source: 'retare',
    known: [...ruleNames],
    test: 'html',
    marker: (node) => markerOf(node as Html),
  });
}

function markerOf(node: Html): Marker | null {
  const text = node.value.trim();
  if (!text.startsWith('<!--') || !text.endsWith('-->')) return null;
  const inside = text.slice(4, -3).trim();
  const [name = '', ...rest] = inside.split(/\s+/);
  if (name !== 'retare') return null;
  const colon = rest.findIndex((word) => word.endsWith(':'));
  // Without a reason nothing is excused.
  if (rest[0] !== 'enable' && (colon < 0 || colon === rest.length - 1)) return null;
  const rules = (colon < 0 ? rest : rest.slice(0, colon + 1)).map((word) => word.replace(/:$/, ''));
  return { name, attributes: rules.join(' ') };
}
