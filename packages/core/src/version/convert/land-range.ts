import type { Stated } from '../../amount/stated.js';
import type { Exact } from '../../exact.js';
import type { Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Measure } from '../../kitchen/measure/measure.js';
import { type Landed, nearestOf } from '../../kitchen/measure/nearest-of.js';
import { costOf, stateMeasure } from './land.js';
import { type Need, tablesFor } from './tables-for.js';

/** Both ends of a range as the kitchen measures them. */
export interface LandedRange {
  low: Measure;
  high: Measure;
}

/** Measures of one unit of one tool, or of one pack: what both ends of a range are read on. */
interface Ruler {
  key: string;
  base: 'g' | 'ml';
  measures: readonly Measure[];
}

/**
 * Both ends of a range on the same unit of the same tool: `40–60 ml`, never `2 tbsp to ¼ cup`.
 *
 * @param need The amount between them, which says how the food is measured.
 * @returns Null where no one tool measures both.
 */
export function landRange(low: Weighed, high: Weighed, need: Need, kitchen: Kitchen): LandedRange | null {
  const forLow = rulersFor({ ...need, weighed: low }, kitchen);
  const forHigh = rulersFor({ ...need, weighed: high }, kitchen);
  let best: { range: LandedRange; cost: number } | null = null;
  for (const key of new Set([...forLow.keys(), ...forHigh.keys()])) {
    // What the counter weighs off is listed around one amount only; a tool's own table serves both ends.
    const [lower, upper] = [forLow.get(key) ?? forHigh.get(key), forHigh.get(key) ?? forLow.get(key)];
    const from = lower === undefined ? null : onRuler(lower, low);
    const to = upper === undefined ? null : onRuler(upper, high);
    if (from === null || to === null || from.measure.endOnly) continue;
    const cost = costOf(from, need) + costOf(to, need);
    if (best === null || cost < best.cost) best = { range: { low: from.measure, high: to.measure }, cost };
  }
  return best?.range ?? null;
}

function rulersFor(need: Need, kitchen: Kitchen): Map<string, Ruler> {
  const rulers = new Map<string, Ruler & { measures: Measure[] }>();
  for (const { base, measures } of tablesFor(need, kitchen)) {
    for (const measure of measures) {
      const [term, ...others] = measure.terms;
      if (term === undefined || others.length > 0) continue;
      const key = [measure.way, term.unit, measure.pack?.size ?? '', measure.pack?.unit ?? ''].join(' ');
      const ruler = rulers.get(key) ?? { key, base, measures: [] };
      ruler.measures.push(measure);
      rulers.set(key, ruler);
    }
  }
  return rulers;
}

function onRuler({ base, measures }: Ruler, { grams, millilitres }: Weighed): Landed | null {
  const size: Exact | null = base === 'g' ? grams : millilitres;
  return size === null || !size.isPositive() || size.isZero() ? null : nearestOf(measures, size);
}

/** A range as an amount; one measure where both ends land on the same. */
export function stateRange(low: Measure, high: Measure, approx: boolean): Stated {
  const stated = stateMeasure(low, approx);
  const [from, to] = [low.terms[0], high.terms[0]];
  if (from === undefined || to === undefined || !to.low.greaterThan(from.low)) return stated;
  return { ...stated, statements: [[{ ...from, high: to.low }]] };
}
