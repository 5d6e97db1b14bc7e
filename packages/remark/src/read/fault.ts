import type { Position } from 'unist';

/** Something about an annotation that cannot be understood: data, with the words that a report shows. */
export interface Fault {
  /** What was read. */
  actual: string;
  /** What may stand there. */
  expected: string[];
  /** Two sentences: what was read, and what to write. */
  message: string;
  place: Position | undefined;
}

/** `` `a`, `b` or `c` `` */
export function oneOf(words: readonly string[]): string {
  const quoted = words.map((word) => `\`${word}\``);
  return quoted.length < 2 ? quoted.join('') : `${quoted.slice(0, -1).join(', ')} or ${quoted.at(-1)}`;
}
