import type { Term } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import type { Kitchen } from '../kitchen.js';
import { type Measure, sized } from './measure.js';
import { measuresBy } from './measures-by.js';

const rangeSpoons = new WeakMap<Kitchen, readonly Measure[]>();
/** `3–4 tbsp`, and at most twice the spoons that are counted. */
const mostOfRange = 2;

/**
 * The spoons of a kitchen, and counts of them at which a range may end, since they are the same as a cup amount or a larger spoon:
 * `3–4 tbsp`, `1–3 tsp`.
 */
export function spoonsOfRange(kitchen: Kitchen): readonly Measure[] {
  const known = rangeSpoons.get(kitchen);
  if (known !== undefined) return known;
  const spoons = measuresBy(kitchen, 'spoon');
  const { tsp, tbsp } = kitchen.spoons;
  const ends = [
    ...endsOf(
      kitchen,
      'tsp',
      Array.from({ length: tsp.wholes }, (_, at) => at + 1),
      spoons,
    ),
    ...endsOf(
      kitchen,
      'tbsp',
      Array.from({ length: tbsp.wholes * (mostOfRange - 1) }, (_, at) => tbsp.wholes + 1 + at),
      measuresBy(kitchen, 'cup'),
    ),
  ];
  const all = [...spoons, ...ends].sort((a, b) => a.near - b.near);
  rangeSpoons.set(kitchen, all);
  return all;
}

/** Counts of a spoon that are the same as a measure of another tool. */
function endsOf(
  kitchen: Kitchen,
  unit: 'tsp' | 'tbsp',
  counts: readonly number[],
  others: readonly Measure[],
): Measure[] {
  const each = kitchen.units[unit];
  return counts.flatMap((count): Measure[] => {
    const low = new Exact(count);
    const size = each?.times(low);
    const same = size === undefined ? undefined : others.find((other) => other.size.equals(size));
    if (size === undefined || same === undefined || same.terms[0]?.unit === unit) return [];
    const terms: Term[] = [{ low, high: null, unit }];
    return [{ way: 'spoon', terms, base: 'ml', ...sized(size), awkwardness: 0, endOnly: true }];
  });
}
