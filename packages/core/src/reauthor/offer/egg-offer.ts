import { statedIn } from '../../amount/stated.js';
import { partOfEgg } from '../../kitchen/egg.js';
import type { EggSize, Kitchen } from '../../kitchen/kitchen.js';
import { looseEggs } from '../../version/egg/convert-eggs.js';
import type { Demand, Offer } from '../search/demand.js';
import type { Weights } from '../weights.js';
import { countedOr, countsWithin, meanOf } from './counted.js';
import type { OfferContext } from './offer-context.js';
import { OfferList, reach } from './offer-list.js';

/** What eggs of another size than the kitchen's usual one cost. */
export function eggSizeCost({ name, seldom }: EggSize, { eggs }: Kitchen, weights: Weights): number {
  if (name === eggs.usual) return 0;
  return seldom ? weights.seldomEgg : weights.otherEgg;
}

/** Whole eggs, whites or yolks of every size that is chosen among. */
export function eggOffer(demand: Demand, context: OfferContext): Offer {
  if (demand.loose) return looseOffer(demand, context);
  const { kitchen, weights, eggs: sizes } = context;
  const list = new OfferList();
  const within = reach(demand, context);
  const wholes: number[] = [];
  for (const size of sizes) {
    const grams = size.edibleGrams.times(partOfEgg(demand.food) ?? 1).toNumber();
    const usual = size.name === kitchen.eggs.usual;
    // Where all eggs of a recipe are of one size, that costs the recipe once.
    const extra = sizes.length === 1 ? 0 : eggSizeCost(size, kitchen, weights);
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

function looseOffer(demand: Demand, { kitchen, eggs: [size, ...others] }: OfferContext): Offer {
  const written = statedIn(demand.reading);
  if (written === null) throw new RangeError('A demand without an amount.');
  const stated = looseEggs(written, demand.reading, others.length === 0 ? (size ?? null) : null, kitchen);
  return new OfferList().add(demand, demand.quantity, 0, () => stated).offer([], 0);
}
