import { firstStatement, statedIn } from '../../amount/stated.js';
import type { Sold } from '../../food/food.js';
import { halvedUpTo, pieceOf } from '../../version/convert/in-pieces.js';
import { isSizedPieces, pieceSizeIn } from '../../version/convert/sized-pieces.js';
import type { Demand, Offer } from '../search/demand.js';
import { countedOr, countsWithin, meanOf } from './counted.js';
import { leftoverOfPieces } from './leftover-cost.js';
import { measuredOffer } from './measured-offer.js';
import type { OfferContext } from './offer-context.js';
import { OfferList, reach } from './offer-list.js';

/** Another food than the author's: its pieces weigh otherwise, and three large crackers stand for eight small ones. */
export function isStandIn({ lines, food }: Demand): boolean {
  return lines.every((line) => line.food !== food);
}

/** Pieces of a food that takes the place of what was counted, by their weight. */
export function standInOffer(demand: Demand, sold: Sold | null, context: OfferContext): Offer {
  const { food } = demand;
  const each = food === null || demand.base !== 'g' ? null : pieceOf(food)?.toNumber();
  if (each == null || each <= 0) return measuredOffer(demand, sold, context);
  const step = demand.quantity <= halvedUpTo * each ? 0.5 : 1;
  const list = new OfferList();
  for (const count of countsWithin(each, step, reach(demand, context))) {
    for (const { stated, fixed } of countedOr(demand, count, 'count', step, context.weights))
      list.add(demand, meanOf(stated) * each, fixed, () => stated);
  }
  const pieces = list.offer([], step * each);
  if (list.hasNear(demand.quantity)) return pieces;
  const measured = measuredOffer(demand, sold, context);
  return farOff(measured, demand) < farOff(pieces, demand) ? measured : pieces;
}

/** How far the nearest choice is from the need, as a logarithm. */
function farOff({ choices }: Offer, { quantity }: Demand): number {
  return Math.min(...choices.map(({ log }) => Math.abs(log - Math.log(quantity))));
}

/** Units of which a cook takes a half. */
const halved: ReadonlySet<string> = new Set(['count', 'bunch', 'head']);

/** Grams of a piece that is cut in two; nobody halves a bay leaf or a star anise. Common practice, no source. */
const leastHalved = 5;

/** Whether shops sell several in a box: a stock cube, a roll, a tortilla is used whole. A leaf of gelatine is cut with scissors. */
function isBoxed({ food }: Demand, sold: Sold | null): boolean {
  return (
    food?.role !== 'gelling' && (sold?.packs.some(({ unit, size }) => unit === 'count' && size.greaterThan(1)) ?? false)
  );
}

/** Whole pieces, and halves of what an author halves, or has two of at most where it is bought by itself. */
export function pieceOffer(demand: Demand, sold: Sold | null, context: OfferContext): Offer {
  const written = statedIn(demand.reading);
  const term = written?.statements[0]?.[0];
  const list = new OfferList();
  if (written === null || term === undefined || term.low.isZero()) return list.offer([], 0);
  const native = meanOf(written);
  const { kitchen } = context;
  const pack = isSizedPieces(written, demand.food, kitchen) ? pieceSizeIn(written, kitchen) : written.pack;
  const each = demand.quantity / native;
  const isTiny = demand.base === 'g' && each < leastHalved;
  const halves = !term.low.isInteger() || (native <= 2 && !isBoxed(demand, sold) && !isTiny);
  const step = halved.has(term.unit) && halves ? 0.5 : 1;
  // The author's own count comes first: it keeps its words, and its quarters.
  const leftOf = (count: number, size: number): number =>
    leftoverOfPieces(count, term.unit, size, demand, sold, context.weights);
  const own = leftOf(native, demand.quantity);
  list.add(demand, demand.quantity, own, () => ({ ...firstStatement(written), pack }));
  for (const count of countsWithin(each, step, reach(demand, context))) {
    for (const { stated, fixed } of countedOr(demand, count, term.unit, step, context.weights)) {
      const left = leftOf(meanOf(stated), meanOf(stated) * each);
      list.add(demand, meanOf(stated) * each, fixed + left, () => ({ ...stated, pack }));
    }
  }
  return list.offer([], demand.base === 'g' ? step * each : 0);
}
