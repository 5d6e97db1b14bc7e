import { gramsIn } from '../../amount/size.js';
import type { Term } from '../../amount/stated.js';
import type { MassUnit } from '../../amount/unit.js';
import { Exact } from '../../exact.js';
import type { Kitchen } from '../kitchen.js';

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
 *
 * @param high Upper end of a range, told in the unit of the lower one.
 */
export function weightSaid(low: Exact, high: Exact | null, unit: MassUnit, { writes }: Kitchen): Term {
  if (writes.mass.includes(unit)) return { low, high, unit };
  const [from, to] = [low, high].map((value) => value?.times(gramsIn(unit)) ?? null);
  if (from == null) throw new RangeError('A weight without a number.');
  if (writes.mass.includes('g')) {
    const isKilos = from.greaterThanOrEqualTo(1000) && writes.mass.includes('kg');
    return told(from, to ?? null, gramSteps, isKilos ? { unit: 'kg', each: 1000 } : { unit: 'g', each: 1 });
  }
  const ounce = gramsIn('oz');
  const isPounds = rounded(from.dividedBy(ounce), ounceSteps).greaterThanOrEqualTo(16) && writes.mass.includes('lb');
  const shown = isPounds ? ({ unit: 'lb', each: 16 } as const) : ({ unit: 'oz', each: 1 } as const);
  return told(from.dividedBy(ounce), to?.dividedBy(ounce) ?? null, ounceSteps, shown);
}

type Steps = readonly { under: number; step: number | string }[];

function told(low: Exact, high: Exact | null, steps: Steps, { unit, each }: { unit: MassUnit; each: number }): Term {
  const [from, to] = [rounded(low, steps), high === null ? null : rounded(high, steps)];
  const isRange = to?.greaterThan(from) ?? false;
  return { low: from.dividedBy(each), high: isRange && to !== null ? to.dividedBy(each) : null, unit };
}

function rounded(size: Exact, steps: Steps): Exact {
  const step = new Exact(steps.find(({ under }) => size.lessThan(under))?.step ?? 1);
  return Exact.max(size.dividedBy(step).round(), 1).times(step);
}
