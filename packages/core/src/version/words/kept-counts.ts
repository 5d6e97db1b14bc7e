import type { Span } from '../../amount/reading.js';
import { dimensionOf } from '../../amount/size.js';
import type { UnitId } from '../../amount/unit.js';
import { isContainer } from '../../amount/unit-kind.js';
import type { Exact } from '../../exact.js';
import type { Line } from '../../recipe/recipe.js';

/** Pieces differ by as much: within it `about 2` is as true. Common practice, no source. */
const sameCount = 0.15;

/**
 * Second statements that count pieces, `1 cup diced onion (about 1 small)`: where the measured amount is another there, as many pieces are
 * still what a cook buys.
 *
 * @param share The amount there over the native one; null where that is not known.
 */
export function keptCounts({ reading }: Line, share: Exact | null): Span[] {
  if (share === null || share.minus(1).abs().greaterThan(sameCount)) return [];
  const [first, ...others] = reading.amounts;
  if (first === undefined || dimensionOf(first.unit) === 'count') return [];
  return reading.amountSpans.slice(1).filter(({ start, end }) => {
    const stated = others.filter(({ span }) => span.start >= start && span.end <= end);
    const isBracket = reading.text.slice(start, end).trimStart().startsWith('(');
    return isBracket && stated.length === 1 && stated.every(({ unit }) => isPieces(unit));
  });
}

function isPieces(unit: UnitId): boolean {
  return dimensionOf(unit) === 'count' && !isContainer(unit);
}
