import type { Directives } from 'mdast-util-directive';
import type { Position } from 'unist';
import { pointAfter } from './source-place.js';

/** Where an attribute stands in the file. */
export interface AttributePlace {
  /** The attribute with its value. */
  whole: Position;
  key: Position;
  value: Position | undefined;
}

/** One attribute: `#id`, `.class`, `key`, `key=value`, `key="value"`. */
const attribute = /\s*([#.]?)([^\s=}"'#.<>`]+)(\s*=\s*("[^"]*"|'[^']*'|[^\s}"'<>=`]+))?/y;

/**
 * Finds a directive's attribute in the file.
 *
 * @returns Undefined in a tree without places.
 */
export function attributePlace(node: Directives, key: string, source: string): AttributePlace | undefined {
  const start = node.position?.start;
  const end = node.position?.end.offset;
  const open = attributesFrom(node, source);
  if (start?.offset === undefined || end === undefined || open === undefined) return undefined;
  const at = (offset: number): Position['start'] => pointAfter(start, source.slice(start.offset, offset));
  attribute.lastIndex = open + 1;
  for (let found = attribute.exec(source); found !== null; found = attribute.exec(source)) {
    if (attribute.lastIndex > end) return undefined;
    const [all, mark = '', name = '', , value] = found;
    if ((mark === '#' ? 'id' : mark === '.' ? 'class' : name) !== key) continue;
    const from = found.index + all.length - all.trimStart().length;
    const to = found.index + all.length;
    return {
      whole: { start: at(from), end: at(to) },
      key: { start: at(from), end: at(from + mark.length + name.length) },
      value: value === undefined ? undefined : { start: at(to - value.length), end: at(to) },
    };
  }
  return undefined;
}

/** Offset of the brace that opens the attributes. */
function attributesFrom(node: Directives, source: string): number | undefined {
  const start = node.position?.start.offset;
  if (start === undefined) return undefined;
  const label = node.type === 'containerDirective' ? node.children[0] : node.children.at(-1);
  const isLabel =
    node.type !== 'containerDirective' || (label?.type === 'paragraph' && label.data?.directiveLabel === true);
  const labelled = isLabel ? label?.position?.end.offset : undefined;
  const from = labelled ?? start;
  const end = node.position?.end.offset ?? from;
  const brace = (source.slice(from, end).split(/[\r\n]/, 1)[0] ?? '').indexOf('{');
  return brace < 0 ? undefined : from + brace;
}
