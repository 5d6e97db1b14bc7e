import type { Exact } from '../exact.js';
import type { LineReading } from './reading.js';
import type { UnitId } from './unit.js';

/** One number or range of a unit. */
export interface Term {
  low: Exact;
  high: Exact | null;
  unit: UnitId;
}

/** An amount as it stands in a version. */
export interface Stated {
  /** The same quantity once or more, each a sum of terms (`1 cup` + `2 tbsp`). First statement first. */
  statements: Term[][];
  /** Size of each thing counted. */
  pack: { size: Exact; unit: UnitId; word: string } | null;
  /** Size class of counted eggs, where it has to be named. */
  eggSize: string | null;
  approx: boolean;
}

/** What a line says, without its places; null for a line with no amount. */
export function statedIn(reading: LineReading): Stated | null {
  const first = reading.amounts[0];
  if (first === undefined) return null;
  const { pack } = reading;
  return {
    statements: reading.amounts.map(({ low, high, unit }) => [{ low, high, unit }]),
    pack: pack === null ? null : { size: pack.size, unit: pack.unit, word: pack.word },
    eggSize: null,
    approx: first.approx,
  };
}

/** A plain statement of one term. */
export function stateOne(term: Term, approx = false): Stated {
  return { statements: [[term]], pack: null, eggSize: null, approx };
}
