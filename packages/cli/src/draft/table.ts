/** A terminal is taken to be so wide, and so is the column in which a table is pasted. */
const mostWide = 80;

const gap = '  ';

/**
 * Rows as columns of text, each as wide as its widest cell. What would not fit into 80 characters is broken between its words, the widest
 * columns first, and goes on in the next line, a little in.
 *
 * @param head Names of the columns.
 */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [head, ...rows].map((cells) => head.map((_, at) => cells[at] ?? ''));
  const widths = fitted(all);
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, at) => cell.padEnd(widths[at] ?? 0))
      .join(gap)
      .trimEnd();
  const printed = all.map((cells) => broken(cells, widths).map(line).join('\n'));
  return [printed[0], line(widths.map((width) => '-'.repeat(width))), ...printed.slice(1)].join('\n');
}

/** The width of each column: its widest cell, or less where all of them are too wide together. */
function fitted(rows: readonly (readonly string[])[]): number[] {
  const widest = (of: (cell: string) => number): number[] =>
    (rows[0] ?? []).map((_, at) => Math.max(...rows.map((cells) => of(cells[at] ?? ''))));
  const least = widest((cell) => Math.max(...wordsOf(cell).map((word, at) => word.length + (at === 0 ? 0 : inset))));
  const widths = widest((cell) => cell.length);
  const total = (): number => widths.reduce((sum, width) => sum + width + gap.length, -gap.length);
  while (total() > mostWide) {
    const spare = widths.map((width, at) => (width > (least[at] ?? 0) ? width : 0));
    const most = Math.max(...spare);
    if (most === 0) break;
    widths[spare.lastIndexOf(most)] = most - 1;
  }
  return widths;
}

/** How far in what goes on stands, so that it is not taken for another row. */
const inset = 1;

/** The lines that a row takes. */
function broken(cells: readonly string[], widths: readonly number[]): string[][] {
  const columns = cells.map((cell, at) => linesOf(cell, widths[at] ?? 0));
  const count = Math.max(...columns.map((lines) => lines.length));
  return Array.from({ length: count }, (_, at) => columns.map((lines) => lines[at] ?? ''));
}

function linesOf(cell: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of wordsOf(cell)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(last === undefined ? word : `${' '.repeat(inset)}${word}`);
  }
  return lines;
}

/** What is not to be torn apart: a number stays with its unit, a sign with what it belongs to. */
function wordsOf(cell: string): string[] {
  const words: string[] = [];
  let joins = false;
  for (const word of cell.split(' ')) {
    if (words.length > 0 && (joins || belongs.has(word))) words[words.length - 1] += ` ${word}`;
    else words.push(word);
    joins = word === '→' || word === '×' || word === '+';
  }
  return words;
}

const belongs: ReadonlySet<string> = new Set('× + % g kg oz lb ml l cl tsp tbsp cup cups day days drained'.split(' '));
