import { unsizedContainer } from '../../amount/container.js';
import type { LineReading } from '../../amount/reading.js';
import type { Pack, Sold } from '../../food/food.js';
import { sameContainer } from '../../kitchen/shop/unsized-pack.js';
import type { Demand } from '../search/demand.js';
import { fewPacks } from './few-packs.js';
import type { OfferContext } from './offer-context.js';
import { type OfferList, reach } from './offer-list.js';
import { otherPackCost } from './other-pack-cost.js';

/** Nobody carries more for a dish. */
const mostCounted = 12;

/** The container that a line counts, in the author's word; null where it counts none. */
function containerIn(reading: LineReading): string | null {
  return reading.pack === null ? (unsizedContainer(reading)?.word ?? null) : reading.pack.word || null;
}

/** Whether the author counts the shop's packs of it: a bottle of beer, a box of spaghetti, two bags of lentils. */
export function countsPacks({ reading, spread, base, lines, food }: Demand): boolean {
  if (spread > 1 || base !== 'g' || lines.length > 1 || lines[0]?.food !== food) return false;
  return containerIn(reading) !== null && reading.amounts[0]?.low.isInteger() === true;
}

/**
 * Whole packs of what the author counts in packs, though other cooks may use a part of one: a box of spaghetti is a packet, a little larger or
 * smaller as the shops have it.
 *
 * @returns Whether any comes near.
 */
export function addCountedPacks(list: OfferList, demand: Demand, sold: Sold | null, context: OfferContext): boolean {
  if (sold === null || sold.loose || sold.tap || !countsPacks(demand)) return false;
  // The author's container first, then the largest: of the same contents a bottle for a bottle, and the fewest packs.
  const word = containerIn(demand.reading) ?? '';
  const isOther = (pack: Pack): number => (sameContainer(pack.word, word) ? 0 : 1);
  const shelf = [...sold.packs].reverse().sort((one, other) => isOther(one) - isOther(other));
  for (const { pack, count, grams, state } of fewPacks(shelf, mostCounted, reach(demand, context)))
    list.add(demand, grams, otherPackCost(pack, count, sold, context.weights), state);
  return list.hasNear(demand.quantity);
}
