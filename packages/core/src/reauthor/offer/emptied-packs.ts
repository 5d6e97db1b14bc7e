import type { Sold } from '../../food/food.js';
import type { Demand } from '../search/demand.js';
import { fewPacks } from './few-packs.js';
import type { OfferContext } from './offer-context.js';
import { type OfferList, reach } from './offer-list.js';
import { otherPackCost } from './other-pack-cost.js';

/** More cartons of one food than this are no measure of it. */
const mostEmptied = 3;

/** Sizes within this of each other, as a logarithm, are the same to a cook. */
const asMuch = 0.005;

/**
 * A carton of 237 ml needs no jug, and nothing is left in it. In a cupboard a rest does no harm: there the measure stays the author's kind.
 */
export function addUsedUp(list: OfferList, demand: Demand, sold: Sold | null, context: OfferContext): void {
  const { food, base, spread } = demand;
  if (food === null || sold === null || sold.loose || sold.tap || base !== 'g' || spread > 1) return;
  if (food.keeps.where !== 'fridge' || food.keeps.days === null) return;
  // Largest first: of the same contents the fewest packs.
  for (const { grams, state } of fewPacks([...sold.packs].reverse(), mostEmptied, reach(demand, context))) {
    // Where a tool measures as much, the author's kind of unit stays.
    if (!list.hasNear(grams, asMuch)) list.add(demand, grams, 0, state);
  }
}

/** A sachet of 7 g is emptied, not weighed: of packs that are used whole, beside others that are not, a few come before any measure of as much. */
export function addUsedWhole(list: OfferList, demand: Demand, sold: Sold | null, context: OfferContext): void {
  if (sold === null || demand.base !== 'g' || demand.spread > 1) return;
  const usedWhole = sold.packs.filter(({ whole }) => whole === 'yes');
  for (const { pack, count, grams, state } of fewPacks(usedWhole, mostEmptied, reach(demand, context)))
    list.add(demand, grams, otherPackCost(pack, count, sold, context.weights), state);
}
