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
