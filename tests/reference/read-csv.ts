import { readFileSync } from 'node:fs';

/** A row of a table by its column names; an absent cell is empty. */
export type Row = Readonly<Record<string, string>>;

/** Reads a comma-separated text with one header row; cells in double quotes may hold commas, breaks and doubled quotes. */
export function parseCsv(text: string): Row[] {
  const [head = [], ...rows] = cellsOf(text);
  return rows.map((cells) => Object.fromEntries(head.map((name, column) => [name, cells[column] ?? ''])));
}

/** A table that lies beside these tests. */
export function readCsv(name: string): Row[] {
  return parseCsv(readFileSync(new URL(name, import.meta.url), 'utf8'));
}

function cellsOf(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const char = text[at];
    if (quoted && char === '"' && text[at + 1] === '"') {
      cell += '"';
      at += 1;
    } else if (char === '"') quoted = !quoted;
    else if (!quoted && (char === ',' || char === '\n')) {
      row.push(cell);
      cell = '';
      if (char === '\n') {
        rows.push(row);
        row = [];
      }
    } else cell += char;
  }
  return rows;
}
