import { gramsIn } from '../amount/size.js';
import type { Term } from '../amount/stated.js';
import type { MassUnit } from '../amount/unit.js';
import { Exact } from '../exact.js';
import type { Kitchen } from './kitchen.js';

/** Steps of a weight that is told and not measured: up to a size, by so much. Common practice, no source. */
const gramSteps = [
  { under: 20, step: 1 },
  { under: 250, step: 5 },
  { under: 500, step: 10 },
  { under: 1000, step: 25 },
  { under: Number.POSITIVE_INFINITY, step: 100 },
] as const;
/** Ounces up to a pound, then quarter and half pounds. */
const ounceSteps = [
  { under: 2, step: '0.25' },
  { under: 8, step: '0.5' },
  { under: 15.5, step: '1' },
  { under: 64, step: '4' },
  { under: Number.POSITIVE_INFINITY, step: '8' },
] as const;

/**
 * A weight that a line tells beside what is counted, in a unit that is read there: `4 fillets (about 140 g each)` are of 5 oz. It says how
 * large a piece is, or what pieces come to; nobody measures it, so it lands on no tool.
 */
export function weightSaid(value: Exact, unit: MassUnit, { writes }: Kitchen): Term {
  if (writes.mass.includes(unit)) return { low: value, high: null, unit };
  const grams = value.times(gramsIn(unit));
  if (writes.mass.includes('g')) return { low: rounded(grams, gramSteps), high: null, unit: 'g' };
  const ounces = rounded(grams.dividedBy(gramsIn('oz')), ounceSteps);
  const isPounds = ounces.greaterThanOrEqualTo(16) && writes.mass.includes('lb');
  return isPounds ? { low: ounces.dividedBy(16), high: null, unit: 'lb' } : { low: ounces, high: null, unit: 'oz' };
}

function rounded(size: Exact, steps: readonly { under: number; step: number | string }[]): Exact {
  const step = new Exact(steps.find(({ under }) => size.lessThan(under))?.step ?? 1);
  return Exact.max(size.dividedBy(step).round(), 1).times(step);
}
