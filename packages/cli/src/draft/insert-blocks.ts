/** A block to be put into a file. */
export interface Insertion {
  /** Where the block that it follows ends. */
  after: number;
  /** Markdown, its lines ended by `\n`. */
  text: string;
}

/** A stretch of the file that came about. */
export interface Inserted {
  start: number;
  end: number;
}

/**
 * Puts blocks into a file, each after the line that another block ends on, with an empty line between. Every other byte stays, and line
 * ends are those of the file.
 *
 * @returns The text, and where in it the blocks stand, the lines before them included.
 */
export function insertBlocks(source: string, insertions: readonly Insertion[]): { text: string; inserted: Inserted[] } {
  const end = source.includes('\r\n') ? '\r\n' : '\n';
  const placed = insertions
    .map(({ after, text }) => ({ at: lineEnd(source, after), text: `${end}${end}${text.replaceAll('\n', end)}` }))
    .sort((a, b) => a.at - b.at);
  let text = '';
  let from = 0;
  const inserted: Inserted[] = [];
  for (const { at, text: block } of placed) {
    text += source.slice(from, at);
    inserted.push({ start: text.length, end: text.length + block.length });
    text += block;
    from = at;
  }
  return { text: text + source.slice(from), inserted };
}

/** Offset of the end of the line that an offset lies in. */
function lineEnd(source: string, offset: number): number {
  const rest = /\r?\n/g;
  rest.lastIndex = offset;
  return rest.exec(source)?.index ?? source.length;
}
