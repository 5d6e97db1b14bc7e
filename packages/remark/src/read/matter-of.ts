import type { Root } from 'mdast';
import type { VFile } from 'vfile';
import { parse } from 'yaml';

/**
 * A post's front matter, from wherever the pipeline keeps it: the tree's own `yaml` node, `file.data.matter`, or what Astro hands on.
 *
 * @returns Undefined where there is none, or where it is no YAML: then whoever reads front matter has said so already.
 */
export function matterOf(tree: Root, file: VFile): unknown {
  const node = tree.children.find((child) => child.type === 'yaml');
  if (node !== undefined) {
    try {
      return parse(node.value);
    } catch {
      return undefined;
    }
  }
  const data = file.data as { matter?: unknown; astro?: { frontmatter?: unknown } };
  return data.matter ?? data.astro?.frontmatter;
}
