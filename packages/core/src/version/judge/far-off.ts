import type { Stated } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import type { Line } from '../../recipe/recipe.js';
import type { PlacedProblem } from '../version.js';
import { amountSpan, amountWords } from './judge-line.js';

/** An amount that is this much more or less is no longer the author's: an eighth of a teaspoon is not a quarter. */
const tooFar = new Exact('0.2');

/**
 * A finding where the nearest amount that a kitchen can measure is far from what the author wrote.
 *
 * @param drift Signed, as a fraction; null where it is not known.
 * @param nearest What the reader is shown.
 */
export function farOff(line: Line, drift: Exact | null, nearest: Stated | null): PlacedProblem[] {
  const term = line.reading.amounts[0];
  if (drift === null || nearest === null || term === undefined || drift.abs().lessThanOrEqualTo(tooFar)) return [];
  const span = amountSpan(line);
  const text = amountWords(line);
  return [
    {
      span,
      problem: { rule: 'unmeasurable', reason: 'between-measures', text, term, food: line.food, nearest: [nearest] },
    },
  ];
}
