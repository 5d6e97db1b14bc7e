import type { Measure } from '../kitchen/measure.js';
import type { Demand } from './demand.js';

/** Measures in reach; of a range both ends, on one unit of one tool, as far apart as the author's. */
export function* pairs(
  measures: readonly Measure[],
  { spread }: Demand,
  { least, most }: { least: number; most: number },
  each: number,
): Generator<[Measure, Measure]> {
  const down = Math.sqrt(spread);
  for (let at = firstFrom(measures, least / each / down); at < measures.length; at++) {
    const low = measures[at];
    if (low === undefined || low.near * each * down > most) return;
    if (spread === 1) yield [low, low];
    else if (low.terms.length === 1) yield [low, upperEnd(measures, at, spread) ?? low];
  }
}

/** The measure of the same unit that is nearest to the upper end of a range; null where that is its lower end. */
function upperEnd(measures: readonly Measure[], from: number, spread: number): Measure | null {
  const low = measures[from];
  const unit = low?.terms[0]?.unit;
  if (low === undefined) return null;
  const wanted = low.near * spread;
  let below = low;
  for (let at = from + 1; at < measures.length; at++) {
    const measure = measures[at];
    if (measure === undefined || measure.terms.length > 1) continue;
    if (measure.terms[0]?.unit !== unit || measure.pack !== low.pack) continue;
    if (measure.near < wanted) below = measure;
    else return measure.near / wanted < wanted / below.near || below === low ? nearer(measure, low, wanted) : below;
  }
  return below === low ? null : below;
}

/** The upper end, unless the lower one is nearer to what is wanted: then the range is a single amount. */
function nearer(upper: Measure, low: Measure, wanted: number): Measure | null {
  return upper.near / wanted < wanted / low.near ? upper : null;
}

/** Index of the first measure of at least a size. */
function firstFrom(measures: readonly Measure[], size: number): number {
  let low = 0;
  let high = measures.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((measures[middle]?.near ?? 0) < size) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The step of a tool at a size: its smallest spoon, or the distance between the marks there. Shops and packs are no tools. */
export function stepAt(size: number, measures: readonly Measure[]): number {
  const way = measures[0]?.way;
  if (way === 'counter' || way === 'pack') return Number.POSITIVE_INFINITY;
  const smallest = measures[0]?.near ?? Number.POSITIVE_INFINITY;
  if (way === 'spoon') return smallest;
  const at = firstFrom(measures, size);
  const [below, above] = [measures[at - 1]?.near, measures[at]?.near];
  if (below === undefined) return smallest;
  if (above === undefined) return below - (measures[at - 2]?.near ?? 0);
  return above - below;
}
