import type { Text } from 'mdast';
import type { Directives } from 'mdast-util-directive';

/** A directive of another plugin's as it stood in the file, with what it held then. */
interface Written {
  source: string;
  held: string;
}

const written = new WeakMap<object, Written>();

/** Remembers how a directive was written, so that it can be printed with the author's own `{depth=2}`. */
export function rememberWritten(node: Directives, source: string): void {
  written.set(node, { source, held: heldBy(node) });
}

/** The author's own bytes of a directive; undefined if they are not known, or if another plugin has changed it since. */
export function sourceIfUnchanged(node: Directives): string | undefined {
  const known = written.get(node);
  return known !== undefined && known.held === heldBy(node) ? known.source : undefined;
}

const accidents = new WeakMap<Text, string>();
const plain = new WeakMap<Text, string>();

/** Words that a directives syntax had read something else into. */
export function accident(value: string, { position }: Directives): Text {
  const text: Text = { type: 'text', value, ...(position ? { position } : {}) };
  accidents.set(text, value);
  return text;
}

/** Whether a text is such words still, of which nothing needs an escape. */
export function isAccidental(text: Text): boolean {
  return accidents.get(text) === text.value;
}

/** Remembers that a text stood in the file without escapes, so that none is put before its colons. */
export function rememberPlain(text: Text): void {
  plain.set(text, text.value);
}

/** Whether a text stands as it stood in the file. */
export function isPlain(text: Text): boolean {
  return plain.get(text) === text.value;
}

function heldBy({ name, attributes, children }: Directives): string {
  return JSON.stringify([name, attributes, children]);
}

/**
 * Lets a directive read as it was written if no other plugin gives it an element. The element's name and words are inherited, so that
 * whatever another plugin sets on the node, before or after, takes their place.
 */
export function readsAsWritten(node: Directives, source: string): void {
  const tag = node.type === 'textDirective' ? 'span' : 'p';
  const fallback = Object.create(Object.prototype, {
    hName: untilSet('hName', tag),
    hChildren: untilSet('hChildren', [{ type: 'text', value: source }]),
  }) as object;
  node.data = Object.assign(Object.create(fallback) as object, node.data);
}

/** An inherited value that whatever is set on the node hides. */
function untilSet(key: string, value: unknown): PropertyDescriptor {
  return {
    get(this: object): unknown {
      return isHandled(this) ? undefined : value;
    },
    // An inherited getter alone would forbid the key.
    set(this: object, own: unknown): void {
      Object.defineProperty(this, key, { value: own, configurable: true, enumerable: true, writable: true });
    },
  };
}

/** Whether a node's data says what it becomes in HTML. */
export function isHandled(data: object | undefined): boolean {
  return data !== undefined && ['hName', 'hProperties', 'hChildren'].some((key) => Object.hasOwn(data, key));
}
