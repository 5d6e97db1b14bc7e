import type { Kitchen, Way } from '../kitchen.js';
import type { Measure } from './measure.js';
import { ofTools } from './of-tools.js';

const tables = new WeakMap<Kitchen, Map<Way, readonly Measure[]>>();

/**
 * All that one way of measuring lands on exactly, ascending.
 *
 * @returns Empty where the kitchen has no such tool.
 */
export function measuresBy(kitchen: Kitchen, way: Way): readonly Measure[] {
  let byWay = tables.get(kitchen);
  if (byWay === undefined) {
    byWay = new Map();
    tables.set(kitchen, byWay);
  }
  let measures = byWay.get(way);
  if (measures === undefined) {
    measures = withoutTwins(ofTools(kitchen, way).sort((a, b) => a.size.comparedTo(b.size)));
    byWay.set(way, measures);
  }
  return measures;
}

/** Of two ways to the same amount the larger tool that is filled at least once: 1 tbsp, not 3 tsp, but 1½ tsp, not ½ tbsp. */
function withoutTwins(ascending: readonly Measure[]): Measure[] {
  const kept: Measure[] = [];
  for (const measure of ascending) {
    const twin = kept.at(-1);
    if (twin === undefined || !twin.size.equals(measure.size)) kept.push(measure);
    else if (isBetterThan(measure, twin)) kept[kept.length - 1] = measure;
  }
  return kept;
}

function isBetterThan(one: Measure, other: Measure): boolean {
  const [filled, otherFilled] = [one, other].map(({ terms }) => (terms[0]?.low.toNumber() ?? 0) >= 1);
  return filled === otherFilled ? scoops(one) < scoops(other) : filled === true;
}

function scoops({ terms }: Measure): number {
  return terms.reduce((sum, { low }) => sum + low.toNumber(), 0);
}
