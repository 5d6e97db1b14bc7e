import { firstStatement, statedIn } from '../../amount/stated.js';
import { partOfEgg } from '../../kitchen/egg.js';
import type { Demand, Offer } from '../search/demand.js';
import { countedOr, countsWithin, meanOf } from './counted.js';
import type { OfferContext } from './offer-context.js';
import { OfferList, reach } from './offer-list.js';

/** Whole eggs, whites or yolks of every size that is chosen among. */
export function eggOffer(demand: Demand, context: OfferContext): Offer {
  if (demand.loose) return looseEggs(demand, context);
  const { kitchen, weights, eggs: sizes } = context;
  const list = new OfferList();
  const within = reach(demand, context);
  const wholes: number[] = [];
  for (const size of sizes) {
    const grams = size.edibleGrams.times(partOfEgg(demand.food) ?? 1).toNumber();
    const usual = size.name === kitchen.eggs.usual;
    // Where all eggs of a recipe are of one size, that costs the recipe once.
    const extra = usual || sizes.length === 1 ? 0 : size.seldom ? weights.seldomEgg : weights.otherEgg;
    wholes.push(grams);
    for (const count of countsWithin(grams, 1, within)) {
      for (const { stated, fixed } of countedOr(demand, count, 'count', 1, weights)) {
        const named = { ...stated, eggSize: usual ? null : size.name };
        list.add(demand, meanOf(named) * grams, fixed + extra, () => named);
      }
    }
  }
  return list.offer(wholes, 0);
}

/** As many as the author counts, of the size that the others are, where one is named at all. */
function looseEggs(demand: Demand, { kitchen, eggs: [size, ...others] }: OfferContext): Offer {
  const written = statedIn(demand.reading);
  if (written === null) throw new RangeError('A demand without an amount.');
  const named = demand.reading.size !== null && others.length === 0 && size?.name !== kitchen.eggs.usual;
  const eggSize = named ? (size?.name ?? null) : null;
  const stated = { ...firstStatement(written), eggSize };
  return new OfferList().add(demand, demand.quantity, 0, () => stated).offer([], 0);
}
