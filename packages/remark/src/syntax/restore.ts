import type { Nodes, Paragraph, Parents, Root, RootContent } from 'mdast';
import type { Directives } from 'mdast-util-directive';
import { toString as wordsIn } from 'mdast-util-to-string';
import { visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import type { Fault } from '../read/fault.js';
import { firstLineOf } from '../read/source-place.js';
import { textOf } from '../read/text-of.js';
import { accident, isHandled, readsAsWritten, rememberPlain, rememberWritten } from './as-written.js';
import { annotations, isAnnotation, isOurName, openingOf } from './names.js';

/**
 * Puts accidents back. A pipeline with the whole directives syntax reads `10:30`, `Serves:four` and `2:1` as directives and drops them
 * from the page; so does ours with `note:pan`. A directive with neither label nor attributes that hangs on a word, or whose name is
 * no word, is text. Every other foreign directive is left for the plugin that it belongs to, and reads as written if there is none.
 *
 * @returns A fault for each name of ours in a form that it does not have, such as `::oven`.
 */
export function restoreForeign(tree: Root, file: VFile): Fault[] {
  const source = textOf(file);
  const faults: Fault[] = [];
  visit(tree, (node, index, parent) => {
    if (node.type === 'text' && node.value.includes(':') && node.value === writtenAs(node, source)) rememberPlain(node);
    if (!isDirective(node) || parent === undefined || index === undefined) return;
    const written = writtenAs(node, source);
    if (isAccident(node, parent, index)) {
      parent.children[index] = accident(written ?? `:${node.name}`, node);
    } else if (isOurName(node.name) && !isAnnotation(node.type, node.name)) {
      faults.push(wrongForm(node, written));
      const instead = inWords(node, written);
      parent.children.splice(index, 1, ...(instead as RootContent[]));
      return index + (node.type === 'containerDirective' ? 1 : instead.length);
    } else if (written !== undefined && !isOurName(node.name) && !isHandled(node.data)) {
      rememberWritten(node, written);
      if (node.type !== 'containerDirective') readsAsWritten(node, written);
    }
    return;
  });
  return faults;
}

function isDirective(node: { type: string }): node is Directives {
  return node.type === 'textDirective' || node.type === 'leafDirective' || node.type === 'containerDirective';
}

/** The author's own bytes; undefined in a tree without places. */
function writtenAs(node: Nodes, source: string): string | undefined {
  const start = node.position?.start.offset;
  const end = node.position?.end.offset;
  return start === undefined || end === undefined ? undefined : source.slice(start, end);
}

function isAccident(node: Directives, parent: Parents, index: number): boolean {
  if (node.type !== 'textDirective') return false;
  if (node.children.length > 0 || Object.keys(node.attributes ?? {}).length > 0 || isHandled(node.data)) return false;
  const before = parent.children[index - 1];
  const hangsOn = before === undefined ? '' : (wordsIn(before).at(-1) ?? '');
  return isOurName(node.name) || /[\p{L}\p{N}]/u.test(hangsOn) || !/^\p{L}/u.test(node.name);
}

/** A directive of ours in a form that it does not have, as the words that it was written in. */
function inWords(node: Directives, written: string | undefined): RootContent[] {
  if (node.type === 'textDirective') return written === undefined ? node.children : [accident(written, node)];
  const lines = written?.split(/\r?\n/) ?? [];
  const first = paragraph(lines[0] ?? `::${node.name}`, node);
  if (node.type === 'leafDirective') return [first];
  const content = node.children.filter((child) => !(child.type === 'paragraph' && child.data?.directiveLabel === true));
  const last = lines.length > 1 && /^[\s>]*:{3,}\s*$/.test(lines.at(-1) ?? '') ? [paragraph(':::', node)] : [];
  return [first, ...content, ...last];
}

function paragraph(line: string, node: Directives): Paragraph {
  const text = accident(line.trim(), node);
  return { type: 'paragraph', children: [text] };
}

function wrongForm(node: Directives, written: string | undefined): Fault {
  if (!isOurName(node.name)) throw new RangeError(`\`${node.name}\` is no annotation of ours.`);
  const opening = openingOf(node.name);
  const where = {
    textDirective: 'in a line of words',
    leafDirective: 'on a line of its own',
    containerDirective: 'on a line of its own, and `:::` after its last line',
  };
  return {
    actual: written?.split(/\r?\n/)[0]?.trimEnd() ?? node.name,
    expected: [opening],
    message: `\`${node.name}\` cannot be read in this form. Write \`${opening}\` ${where[annotations[node.name].type]}`,
    place: firstLineOf(node, written),
  };
}
