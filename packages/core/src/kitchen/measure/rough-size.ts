import { gramsIn, isMassUnit, millilitresIn } from '../../amount/size.js';
import type { Term } from '../../amount/stated.js';
import type { MassUnit, VolumeUnit } from '../../amount/unit.js';
import { Exact, toStep } from '../../exact.js';
import type { Kitchen, Way } from '../kitchen.js';
import { measuresBy } from './measures-by.js';
import { mostSpooned } from './most-spooned.js';
import { landingCost, nearestOfEach, otherKindCost } from './nearest-of.js';

/** An amount of no food in particular, of the size of what a dish comes to; `high` is null where it is no range. */
interface RoughAmount {
  low: Exact;
  high: Exact | null;
  unit: MassUnit | VolumeUnit;
}

/**
 * What a finished dish comes to, as a cook of a kitchen reads it: on one mark of a jug or cups and no spoons, or a round weight. Nobody
 * measures it out, so a weight is told without a scale too.
 *
 * @returns Null where the native kitchen does not say how large the unit is, or the other has nothing to say it in.
 */
export function roughSize({ low, high, unit }: RoughAmount, native: Kitchen, kitchen: Kitchen): Term | null {
  const each = isMassUnit(unit) ? gramsIn(unit) : millilitresIn(unit, native.units);
  if (each === null) return null;
  const ends = [low, ...(high === null ? [] : [high])].map((end) => end.times(each));
  return isMassUnit(unit) ? roughMass(ends, unit, kitchen) : roughVolume(ends, unit, kitchen);
}

/** Both ends of a range on one tool. */
function roughVolume(ends: readonly Exact[], written: VolumeUnit, kitchen: Kitchen): Term | null {
  const isMetric = written === 'ml' || written === 'cl' || written === 'dl' || written === 'l';
  const spooned = mostSpooned(kitchen);
  const ways = kitchen.measures.pours.filter((way) => way !== 'spoon' || ends.every((end) => end.lessThan(spooned)));
  let best: { term: Term; cost: number } | null = null;
  for (const way of ways) {
    const kind = (way === 'jug') === isMetric ? 0 : otherKindCost;
    const landed = ends.map((end) => nearestAlone(end, way, kitchen));
    const term = between(landed.map((each) => each?.term ?? null));
    const cost = landed.reduce((sum, each) => sum + (each?.cost ?? 0), kind);
    if (term !== null && (best === null || cost < best.cost)) best = { term, cost };
  }
  return best?.term ?? null;
}

function nearestAlone(millilitres: Exact, way: Way, kitchen: Kitchen): { term: Term; cost: number } | null {
  const alone = measuresBy(kitchen, way).filter(({ terms, base }) => base === 'ml' && terms.length === 1);
  const costs = nearestOfEach(alone, millilitres).flatMap((landed) =>
    landed.measure.terms.map((term) => ({ term, cost: landingCost(landed) })),
  );
  return costs.sort((a, b) => a.cost - b.cost)[0] ?? null;
}

/** One term from the ends of a range; null where they are in different units, or one is missing. */
function between([low, high]: readonly (Term | null)[]): Term | null {
  if (low == null || high === null) return null;
  if (high === undefined) return low;
  return high.unit !== low.unit ? null : { ...low, high: high.low.greaterThan(low.low) ? high.low : null };
}

function roughMass(ends: readonly Exact[], written: MassUnit, kitchen: Kitchen): Term | null {
  const terms = ends.map((end) => massOf(end, written, kitchen));
  // `12 oz to 1 lb`: the ends of a range in one unit.
  const ounces = ends.map((end) => inOunces(end));
  return between(terms) ?? between(ounces);
}

function massOf(grams: Exact, written: MassUnit, kitchen: Kitchen): Term {
  const { mass } = kitchen.writes;
  const isImperial = written === 'lb' || written === 'oz';
  if (mass.includes('g') && !(isImperial && mass.includes('lb'))) {
    const step = grams.lessThan(100) ? 5 : grams.lessThan(1000) ? 25 : 50;
    return { low: nearest(grams, new Exact(step)), high: null, unit: 'g' };
  }
  const pounds = grams.dividedBy(gramsIn('lb'));
  const quarters = nearest(pounds, new Exact('0.25'));
  // Quarters of a pound are too rough for some: 500 g is 18 oz.
  const isNear = quarters.dividedBy(pounds).minus(1).abs().lessThanOrEqualTo('0.03');
  return pounds.greaterThanOrEqualTo('0.9') && isNear ? { low: quarters, high: null, unit: 'lb' } : inOunces(grams);
}

function inOunces(grams: Exact): Term {
  const ounces = grams.dividedBy(gramsIn('oz'));
  return { low: nearest(ounces, new Exact(ounces.lessThan(8) ? '0.5' : 1)), high: null, unit: 'oz' };
}

function nearest(value: Exact, step: Exact): Exact {
  return Exact.max(toStep(value, step), step);
}
