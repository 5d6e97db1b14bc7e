import { gramsIn } from '../../amount/size.js';
import type { Pack, Sold } from '../../food/food.js';
import { soldIn } from '../../kitchen/shop/buy.js';
import { isHalved } from '../../version/convert/whole-packs.js';
import { takesPartOfEgg } from '../../version/egg/part-of-egg.js';
import type { Demand, Offer } from '../search/demand.js';
import { isCounted } from '../search/demands-of.js';
import { countedOr, countsWithin, meanOf, upperEnd } from './counted.js';
import { wholeEggs } from './egg-offer.js';
import { leftoverOfPacks } from './leftover-cost.js';
import { enough, type OfferContext } from './offer-context.js';
import { OfferList, reach } from './offer-list.js';
import { otherPackCost } from './other-pack-cost.js';

/**
 * What an author asks for who makes a food the anchor that is not used whole: its whole packs, or what the shop weighs off where it comes
 * in none.
 */
export function packOffer(demand: Demand, context: OfferContext): Offer | null {
  if (takesPartOfEgg(demand.reading, demand.food)) return wholeEggs(demand, context);
  const sold = demand.food === null || demand.base !== 'g' ? null : soldIn(demand.food, context.kitchen.id);
  if (sold === null || (sold.packs.length === 0 && !sold.loose)) return null;
  const offer = sold.packs.length > 0 ? wholePackOffer(demand, sold, context) : counterOffer(demand, context);
  return enough(offer, demand, context);
}

/** Whole steps of the counter's scale. */
function counterOffer(demand: Demand, context: OfferContext): Offer {
  const { unit, step } = context.kitchen.counter;
  const [inUnits, each] = [step.toNumber(), gramsIn(unit).toNumber()];
  const list = new OfferList();
  for (const count of countsWithin(inUnits * each, 1, reach(demand, context)))
    for (const { stated, fixed } of countedOr(demand, count * inUnits, unit, inUnits, context.weights))
      list.add(demand, meanOf(stated) * each, fixed, () => stated);
  return list.offer([], inUnits * each);
}

/** Whole packs of a food, and halves of those whose rest is kept. */
export function wholePackOffer(demand: Demand, sold: Sold, context: OfferContext): Offer {
  const list = new OfferList();
  // Largest first, and whole ones before halves: of the same contents the fewest packs are bought.
  const shelf = [...sold.packs].reverse();
  const within = withinReach(demand, shelf, context);
  const offered = [
    ...shelf.map((pack) => ({ pack, step: 1 })),
    ...shelf.filter((pack) => demand.food !== null && isHalved(demand.food, pack)).map((pack) => ({ pack, step: 0.5 })),
  ];
  for (const { pack, step } of offered) {
    const each = packSize(demand, pack);
    const label = { size: pack.size, unit: pack.unit, word: pack.word };
    const most = pack === shelf[0] ? Number.POSITIVE_INFINITY : mostSmall;
    for (const count of countsWithin(each, step, within)) {
      const extra = otherPackCost(pack, count, sold, context.weights);
      const left = leftoverOfPacks(count, demand.food?.keeps ?? null, context.weights);
      for (const { stated, fixed } of countedOr(demand, count, 'count', step, context.weights))
        if (upperEnd(stated) <= most)
          list.add(demand, meanOf(stated) * each, fixed + extra + left, () => ({ ...stated, pack: label }));
    }
  }
  return list.offer(
    offered.map(({ pack, step }) => packSize(demand, pack) * step),
    0,
  );
}

/** Of what is optional one of the smallest packs is in reach, however little is wanted: half a tin of it is a tin. */
function withinReach(demand: Demand, shelf: readonly Pack[], context: OfferContext): { least: number; most: number } {
  const { least, most } = reach(demand, context);
  const smallest = shelf.at(-1);
  if (smallest === undefined || Number.isFinite(demand.widest)) return { least, most };
  return { least, most: Math.max(most, packSize(demand, smallest)) };
}

/** Nobody opens more small cans than this where a larger one is sold. Common practice, no source. */
const mostSmall = 3;

/**
 * What a pack is worth to a demand: drained against drained where both are known, else net against net. What is measured out of no pack
 * (a cup of chickpeas) is drained already.
 */
function packSize(demand: Demand, pack: Sold['packs'][number]): number {
  const { weighed, quantity, spread, food, lines, reading } = demand;
  if (pack.drainedGrams === null || lines.some((line) => line.food !== food)) return pack.grams.toNumber();
  if (reading.pack === null && !isCounted(demand)) return pack.drainedGrams.toNumber();
  const native = weighed.drainedGrams;
  if (native === null) return pack.grams.toNumber();
  // What is drained is that of a range's lower end, and the quantity its middle.
  return (pack.drainedGrams.dividedBy(native).toNumber() * quantity) / Math.sqrt(spread);
}
