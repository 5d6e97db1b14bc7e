import type { InlineCode, Text } from 'mdast';
import type { Directives } from 'mdast-util-directive';
import type { Point, Position } from 'unist';

/** The point that lies behind a stretch of the file. */
export function pointAfter({ line, column, offset }: Point, stretch: string): Point {
  const breaks = stretch.match(/\r\n|\r|\n/g)?.length ?? 0;
  const inLine = breaks === 0 ? column + stretch.length : stretch.length - lastBreak(stretch);
  return { line: line + breaks, column: inLine, offset: (offset ?? 0) + stretch.length };
}

function lastBreak(stretch: string): number {
  return Math.max(stretch.lastIndexOf('\n'), stretch.lastIndexOf('\r'));
}

/** The first line of a directive: what an author would edit of a block. */
export function firstLineOf(node: Directives, written: string | undefined): Position | undefined {
  if (node.position === undefined || written === undefined) return node.position;
  const line = written.split(/[\r\n]/, 1)[0]?.trimEnd() ?? '';
  return { start: node.position.start, end: pointAfter(node.position.start, line) };
}

/**
 * Where a character of a node's words was written in the file, escapes, references and the marks of a list or quotation passed over.
 *
 * @param index Place in `node.value`, from 0 to its length.
 * @returns Undefined for a tree without places, or if another plugin has changed the words past recognition.
 */
export function pointOf(node: Text | InlineCode, index: number, source: string): Point | undefined {
  const start = node.position?.start;
  const end = node.position?.end.offset;
  if (start?.offset === undefined || end === undefined) return undefined;
  let at = start.offset + (node.type === 'inlineCode' ? fenceLength(source, start.offset) : 0);
  for (let seen = 0; seen < index; seen++) {
    const next = passed(source, at, node.value, seen);
    if (next === undefined || next > end) return undefined;
    at = next;
  }
  return pointAfter(start, source.slice(start.offset, at));
}

function fenceLength(source: string, at: number): number {
  return /^`+/.exec(source.slice(at, at + 8))?.[0].length ?? 0;
}

/** What a smart-punctuation plugin makes of plain marks. */
const smart: Readonly<Record<string, RegExp>> = {
  '“': /"|``/y,
  '”': /"|''/y,
  '‘': /'|`/y,
  '’': /'/y,
  '–': /--/y,
  '—': /---|--/y,
  '…': /\.\.\./y,
};

/** Offset behind what the file has for one character of the words. */
function passed(source: string, at: number, value: string, index: number): number | undefined {
  const wanted = value[index] ?? '';
  const found = source[at];
  // A line of a list or quotation starts with its marks, which are no words.
  if (wanted === '\n' || wanted === '\r') return lineBreak(source, at, wanted, value[index + 1]);
  if (found === wanted) return at + 1;
  if (found === '\\' && source[at + 1] === wanted) return at + 2;
  if (found === '&') {
    const close = source.slice(at, at + 40).indexOf(';');
    return close < 0 ? undefined : at + close + 1;
  }
  const plain = smart[wanted];
  if (plain === undefined) return undefined;
  plain.lastIndex = at;
  return plain.test(source) ? plain.lastIndex : undefined;
}

function lineBreak(source: string, from: number, wanted: string, after: string | undefined): number | undefined {
  let at = from;
  while (source[at] === ' ' || source[at] === '\t') at++;
  if (source[at] !== wanted) return undefined;
  at++;
  if (after === '\n') return at;
  while (source[at] === ' ' || source[at] === '\t' || source[at] === '>') at++;
  return at;
}
