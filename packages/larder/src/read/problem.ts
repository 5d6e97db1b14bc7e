/** What is wrong in a settings or data file, and where: data for a report, never thrown. */
export interface Problem {
  /** The file, as the caller named it. */
  path: string;
  /** 1-based. */
  line: number;
  /** 1-based, in UTF-16 units. */
  column: number;
  /** The key with all that it stands in, `foods.samphire.keeps.days`; empty for the file itself. */
  key: string;
  /** One or two sentences: what was read, and what to write. */
  message: string;
  /** The values or keys allowed there, where they can be listed. */
  allowed?: readonly string[];
}

/** Keys and list positions from the top of a file to a value. */
export type KeyPath = readonly (string | number)[];

/** Something wrong at a key, before its place in a file is known. */
export interface Fault {
  path: KeyPath;
  message: string;
  allowed?: readonly string[];
  /** Whether its place is the key or, by default, the value. */
  on?: 'key' | 'value';
}

/** A problem on one line, as a compiler would print it. */
export function problemLine({ path, line, column, message }: Problem): string {
  return `${path}:${line}:${column} ${message}`;
}

/** In the order of their places. */
export function inOrder(problems: readonly Problem[]): Problem[] {
  return problems.toSorted((one, other) => one.line - other.line || one.column - other.column);
}
