import { gramsIn } from '../../amount/size.js';
import { type Stated, stateOne, type Term } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import type { Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Measure } from '../../kitchen/measure/measure.js';
import { type Landed, landingCost, nearestOfEach, otherKindCost } from '../../kitchen/measure/nearest-of.js';
import { type Need, type Table, tablesFor } from './tables-for.js';

/** The measurable amount nearest to a need; null where no tool of the kitchen can measure it. */
export function land(need: Need, kitchen: Kitchen): Landed | null {
  let best: { landed: Landed; cost: number } | null = null;
  for (const table of tablesFor(need, kitchen)) {
    const size = table.base === 'g' ? need.weighed.grams : need.weighed.millilitres;
    if (size === null || !size.isPositive() || size.isZero()) continue;
    if (isOutOfReach(size, table)) continue;
    for (const landed of need.atLeast === true
      ? nextAbove(table.measures, size)
      : nearestOfEach(table.measures, size)) {
      if (isFarMoreThanNeeded(landed)) continue;
      const cost = costOf(landed, need);
      if (best === null || cost < best.cost) best = { landed, cost };
    }
  }
  return best?.landed ?? null;
}

/** A division's last digit takes nothing from what is wanted. */
const noLess = new Exact(1).minus('1e-20');

/** The least measure that is enough; none where the largest is not. */
export function nextAbove(measures: readonly Measure[], size: Exact): Landed[] {
  const least = size.times(noLess);
  const enough = measures.filter((measure) => measure.size.greaterThanOrEqualTo(least));
  const [first, ...others] = enough;
  if (first === undefined) return [];
  const measure = others.reduce((least, each) => (each.size.lessThan(least.size) ? each : least), first);
  return [{ measure, error: measure.size.dividedBy(size).minus(1) }];
}

/** What the largest tool falls more than a tenth short of is not that much: better the exact amount, and a finding. */
function isOutOfReach(size: Exact, { measures }: Table): boolean {
  const largest = measures.at(-1)?.size;
  return largest === undefined || size.greaterThan(largest.times('1.1'));
}

/** A pack of yeast, or the counter's step, is no measure of a fifth of it. */
function isFarMoreThanNeeded({ measure, error }: Landed): boolean {
  return (measure.way === 'pack' || measure.way === 'counter') && error.greaterThan(1);
}

/** What one landing costs: its error first, then how awkward it is to measure. */
export function costOf(landed: Landed, need: Need): number {
  const sameKind = (landed.measure.base === 'ml') === (need.dimension === 'volume');
  return landingCost(landed) + (sameKind ? 0 : otherKindCost);
}

/** A landed measure as an amount. */
export function stateMeasure(measure: Measure, approx: boolean): Stated {
  const { terms, pack = null } = measure;
  const label = pack === null ? null : { size: pack.size, unit: pack.unit, word: pack.word };
  return { statements: [[...terms]], pack: label, eggSize: null, approx };
}

/**
 * The weight or volume of a kitchen that no tool measures, written in its own units to the nearest whole or quarter: shown, and a finding.
 *
 * @param atLeast Whether it is rounded up: less will not do.
 */
export function unlanded(weighed: Weighed, kitchen: Kitchen, atLeast = false): Stated | null {
  const rounding = atLeast ? Exact.ROUND_UP : Exact.rounding;
  const partsOf = (size: Exact, parts: number): Exact =>
    size
      .times(parts)
      .times(atLeast ? noLess : 1)
      .toDecimalPlaces(0, rounding)
      .dividedBy(parts);
  if (weighed.grams !== null) {
    if (kitchen.writes.mass.includes('g')) return one(weighed.grams.toSignificantDigits(2, rounding), 'g');
    const ounces = weighed.grams.dividedBy(gramsIn('oz'));
    // A quarter of an ounce is too rough for a little yeast.
    const parts = ounces.lessThan(1) ? 8 : 4;
    return one(Exact.max(partsOf(ounces, parts), new Exact(1).dividedBy(parts)), 'oz');
  }
  if (weighed.millilitres !== null) {
    if (kitchen.jug?.unit === 'ml') return one(weighed.millilitres.toSignificantDigits(2, rounding), 'ml');
    const cup = kitchen.units.cup;
    if (cup !== undefined) return one(partsOf(weighed.millilitres.dividedBy(cup), 4), 'cup');
  }
  return null;
}

function one(low: Exact, unit: Term['unit']): Stated {
  return stateOne({ low, high: null, unit });
}
