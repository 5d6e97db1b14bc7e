import type { RuleName } from '@retare/larder';
import type { Position } from 'unist';

/** What counts against publishing, and what is only told. */
export type FindingSeverity = 'error' | 'warning';

/** One finding of the check, as data. */
export interface Finding {
  rule: RuleName;
  severity: FindingSeverity;
  /** The kitchens whose cooks meet it, in the order of the chooser; none for a finding about the text itself. */
  kitchens: string[];
  text: string;
  actual: string;
  expected: string[];
  note: string | null;
  /** A second place, such as the native line that a version was drawn from. */
  cause?: { text: string; place: Position | undefined };
  place: Position | undefined;
}
