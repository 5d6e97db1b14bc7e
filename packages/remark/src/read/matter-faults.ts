import type { Root, Yaml } from 'mdast';
import type { Position } from 'unist';
import type { VFile } from 'vfile';
import { isMap, isNode, type Pair, parseDocument } from 'yaml';
import type { Fault } from './fault.js';
import type { FrontMatterFault } from './front-matter.js';
import { pointAfter } from './source-place.js';
import { textOf } from './text-of.js';

/** Faults under `retare` with their places in the file; without a place where the pipeline took the front matter out of the tree. */
export function placedMatterFaults(faults: readonly FrontMatterFault[], tree: Root, file: VFile): Fault[] {
  if (faults.length === 0) return [];
  const node = yamlOf(tree);
  const retare = node === undefined ? undefined : parseDocument(node.value).get('retare', true);
  return faults.map(({ key, on, actual, expected, message }) => {
    const pair = isMap(retare) ? retare.items.find((item) => String(item.key) === key) : undefined;
    const range = rangeOf(pair, on) ?? (isNode(retare) ? retare.range : undefined);
    const place = node === undefined ? undefined : placeIn(node, file, range);
    return { actual, expected, message, place };
  });
}

/** Front matter that is no YAML, if it would have said something to us. */
export function brokenMatter(tree: Root, file: VFile): Fault[] {
  const node = yamlOf(tree);
  if (node === undefined || !node.value.includes('retare')) return [];
  const [broken] = parseDocument(node.value).errors;
  if (broken === undefined) return [];
  const because = broken.message.split('\n')[0]?.replace(/( at line \d+, column \d+)?:$/, '') ?? '';
  return [
    {
      actual: 'front matter',
      expected: ['YAML'],
      message: `This front matter cannot be read as YAML (${because}), so nothing under \`retare\` counts. Correct it there`,
      place: placeIn(node, file, broken.pos),
    },
  ];
}

function yamlOf(tree: Root): Yaml | undefined {
  return tree.children.find((child): child is Yaml => child.type === 'yaml');
}

function rangeOf(pair: Pair<unknown, unknown> | undefined, on: 'key' | 'value'): Range | undefined {
  const wanted = on === 'value' && isNode(pair?.value) ? pair.value : pair?.key;
  return isNode(wanted) ? (wanted.range ?? undefined) : undefined;
}

type Range = readonly [number, number, ...number[]];

/** The fence `---` and its line end come before the front matter's own text. */
function placeIn(node: Yaml, file: VFile, range: Range | null | undefined): Position | undefined {
  const start = node.position?.start;
  if (start?.offset === undefined || range == null) return node.position;
  const source = textOf(file);
  const own = source.indexOf('\n', start.offset) + 1;
  const at = (offset: number): Position['start'] => pointAfter(start, source.slice(start.offset, own + offset));
  return { start: at(range[0]), end: at(range[1]) };
}
