import type { Measure } from '../../kitchen/measure/measure.js';
import { firstFrom } from '../first-from.js';
import type { Demand } from '../search/demand.js';
import type { Weights } from '../weights.js';

/**
 * Measures in reach; of a range both ends on one unit of one tool, as far apart as the author's or a step more or less, and single
 * measures, of which the caller says what they cost.
 */
export function* pairs(
  measures: readonly Measure[],
  { spread }: Demand,
  { least, most }: { least: number; most: number },
  each: number,
): Generator<[Measure, Measure]> {
  const down = Math.sqrt(spread);
  for (let at = firstFrom(measures, least / each / down, nearOf); at < measures.length; at++) {
    const low = measures[at];
    if (low === undefined || low.near * each * down > most) return;
    if (low.endOnly) continue;
    yield [low, low];
    if (spread === 1 || low.terms.length > 1) continue;
    for (const high of upperEnds(measures, at, spread)) yield [low, high];
  }
}

/** What another width than the author's costs. */
export function widthCost(
  width: number,
  { spread }: Pick<Demand, 'spread'>,
  weights: Pick<Weights, 'width' | 'narrowed'>,
): number {
  if (spread === 1) return 0;
  return weights.width * Math.log(width / spread) ** 2 + (width === 1 ? weights.narrowed : 0);
}

/** The measures of the same unit next to the upper end of a range: the last below it and two from it on. */
function upperEnds(measures: readonly Measure[], from: number, spread: number): Measure[] {
  const low = measures[from];
  const unit = low?.terms[0]?.unit;
  if (low === undefined) return [];
  const wanted = low.near * spread;
  let below: Measure[] = [];
  const above: Measure[] = [];
  for (let at = from + 1; at < measures.length && above.length < 2; at++) {
    const measure = measures[at];
    if (measure === undefined || measure.terms.length > 1) continue;
    if (measure.terms[0]?.unit !== unit || measure.pack !== low.pack) continue;
    if (measure.near < wanted) below = [measure];
    else above.push(measure);
  }
  return [...below, ...above];
}

const nearOf = ({ near }: Measure): number => near;

/** The step of a tool at a size: its smallest spoon, or the distance between the marks there. Shops and packs are no tools. */
export function stepAt(size: number, measures: readonly Measure[]): number {
  const way = measures[0]?.way;
  if (way === 'counter' || way === 'pack') return Number.POSITIVE_INFINITY;
  const smallest = measures[0]?.near ?? Number.POSITIVE_INFINITY;
  // What no spoon holds is not measured by the smallest of them.
  if (way === 'spoon') return size > (measures.at(-1)?.near ?? 0) ? Number.POSITIVE_INFINITY : smallest;
  const at = firstFrom(measures, size, nearOf);
  const [below, above] = [measures[at - 1]?.near, measures[at]?.near];
  if (below === undefined) return smallest;
  if (above === undefined) return below - (measures[at - 2]?.near ?? 0);
  return above - below;
}

/** Awkwardness of a tool that a cook there would not take first. */
export const otherTool = 3;

/** How much of the demand's base one unit of a table's base is. */
export function perBase(base: 'g' | 'ml', demand: Demand, density: number | null): number | null {
  if (base === demand.base) return 1;
  if (density === null) return null;
  return demand.base === 'g' ? density : 1 / density;
}
