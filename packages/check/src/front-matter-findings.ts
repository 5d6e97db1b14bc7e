import type { Larder, Settings } from '@retare/larder';
import type { Root, Yaml } from 'mdast';
import { readFrontMatter } from 'remark-retare';
import type { Position } from 'unist';
import type { VFile } from 'vfile';
import { location } from 'vfile-location';
import { isMap, parseDocument } from 'yaml';
import type { Finding } from './finding.js';
import { told } from './rules-of-the-text.js';

/** What cannot be understood under `retare:` in a post's front matter, at its key. */
export function frontMatterFindings(tree: Root, file: VFile, larder: Larder, settings: Settings): Finding[] {
  const node = tree.children.find((child): child is Yaml => child.type === 'yaml');
  if (node === undefined) return [];
  const document = parseDocument(node.value);
  const broken = document.errors[0];
  const at = (from: number, to: number): Position | undefined => placeIn(node, file, from, to);
  if (broken !== undefined) {
    const text = `The front matter is no YAML: ${broken.message.split('\n')[0]}. Correct it there`;
    return told('annotation', 'error', settings, {
      text,
      actual: 'front matter',
      expected: [],
      place: at(broken.pos[0], broken.pos[1]),
    });
  }
  const { faults } = readFrontMatter(document.toJS(), [...larder.kitchens.keys()]);
  const retare = document.get('retare', true);
  return faults.flatMap(({ key, actual, expected, message }) => {
    const pair = isMap(retare) ? retare.items.find((item) => String(item.key) === key) : undefined;
    const range = (pair?.key as { range?: [number, number, number] } | undefined)?.range;
    const place = range === undefined ? node.position : at(range[0], range[1]);
    return told('annotation', 'error', settings, { text: message, actual, expected, place });
  });
}

/** The fence `---` and its line end come before the front matter's own text. */
function placeIn(node: Yaml, file: VFile, from: number, to: number): Position | undefined {
  const start = node.position?.start.offset;
  if (start === undefined) return node.position;
  const fence = String(file).indexOf('\n', start) + 1;
  const places = location(file);
  const first = places.toPoint(fence + from);
  const last = places.toPoint(fence + to);
  return first === undefined || last === undefined ? node.position : { start: first, end: last };
}
