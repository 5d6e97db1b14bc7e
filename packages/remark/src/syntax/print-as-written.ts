import type { Text } from 'mdast';
import { directiveToMarkdown } from 'mdast-util-directive';
import type { Processor } from 'unified';
import { isAccidental, isPlain, sourceIfUnchanged } from './as-written.js';
import { isOurName } from './names.js';

type Options = ReturnType<typeof directiveToMarkdown>;
type Handle = NonNullable<NonNullable<Options['handlers']>[keyof NonNullable<Options['handlers']>]>;

const done = new WeakSet<object>();

/** An escape that only a directives syntax asks for: before a letter, or behind another colon. */
const directiveEscape = /\\:(?=[^\s\p{P}\p{S}])|(?<=:)\\:/gu;

const directives = ['textDirective', 'leafDirective', 'containerDirective'] as const;

/**
 * Lets a processor print what is not ours as it was written. Runs with the transformer, when every plugin of the pipeline has brought
 * its own way of printing, and prints by that whatever has been changed.
 */
export function printAsWritten(processor: Processor): void {
  const data = processor.data() as { toMarkdownExtensions?: Options[] };
  const extensions = data.toMarkdownExtensions ?? [];
  if (done.has(extensions)) return;
  const handlers = Object.fromEntries(directives.map((type) => [type, unlessUnchanged(lastHandler(extensions, type))]));
  data.toMarkdownExtensions = [...extensions, { handlers: { ...handlers, text: printText(extensions) } }];
  done.add(data.toMarkdownExtensions);
}

function lastHandler(extensions: readonly Options[], type: string): Handle | undefined {
  return extensions.reduce<Handle | undefined>((found, extension) => {
    const handlers = extension.handlers as Record<string, Handle | null | undefined> | null | undefined;
    return handlers?.[type] ?? lastHandler(extension.extensions ?? [], type) ?? found;
  }, undefined);
}

function unlessUnchanged(printed: Handle | undefined): Handle {
  const usual = printed ?? directiveToMarkdown().handlers?.textDirective;
  const handle: Handle = (node, parent, state, info) => {
    const source = sourceIfUnchanged(node);
    // Inside a list or a quotation the lines of the file carry its marks.
    if (source !== undefined && (parent?.type === 'root' || !/[\r\n]/.test(source))) return source;
    return usual?.(node, parent, state, info) ?? '';
  };
  return Object.assign(handle, { peek: () => ':' });
}

/** Whether an accident would be read as a block of ours: `\\::kitchens` on a line of its own, which was escaped by its author. */
function opensBlock(node: Text, parent: Parameters<Handle>[1]): boolean {
  const name = /^:([\w-]+)/.exec(node.value)?.[1];
  if (name === undefined || !isOurName(name) || parent === undefined) return false;
  const before = parent.children.slice(0, parent.children.indexOf(node as never));
  const line = before.map((each) => (each.type === 'text' ? each.value : '\n')).join('');
  return /^[\t ]*:+$/.test(line.slice(line.lastIndexOf('\n') + 1));
}

/** An accident such as `10:30` was no directive, and nothing of it needs an escape. */
function printText(extensions: readonly Options[]): Handle {
  const usual = lastHandler(extensions, 'text');
  return (node: Text, parent, state, info) => {
    if (isAccidental(node)) return opensBlock(node, parent) ? `\\${node.value}` : node.value;
    const printed = usual?.(node, parent, state, info) ?? state.safe(node.value, info);
    // A pipeline with the whole directives syntax would escape every `:tada:`.
    // A backslash of the text's own, as an address between angle brackets may have, is no escape.
    return isPlain(node) && !node.value.includes('\\') ? printed.replace(directiveEscape, ':') : printed;
  };
}
