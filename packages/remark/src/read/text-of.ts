import type { VFile } from 'vfile';

/** The sign that some editors put before a file's text; a Markdown parser passes it over, and counts its places without it. */
const mark = '\uFEFF';

/** A text in which the places of a tree are right: without a byte order mark. */
export function withoutMark(text: string): string {
  return text.startsWith(mark) ? text.slice(mark.length) : text;
}

/** A file's text in which the places of its tree are right. */
export function textOf(file: VFile): string {
  return withoutMark(String(file));
}
