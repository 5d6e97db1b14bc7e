import { statedIn } from '../../amount/stated.js';
import { partOfEgg } from '../../kitchen/egg.js';
import type { EggSize, Kitchen } from '../../kitchen/kitchen.js';
import { soldIn } from '../../kitchen/shop/buy.js';
import { looseEggs } from '../../version/egg/convert-eggs.js';
import { takesPartOfEgg } from '../../version/egg/part-of-egg.js';
import type { Demand, Offer } from '../search/demand.js';
import type { Weights } from '../weights.js';
import { countedOr, countsWithin, meanOf } from './counted.js';
import { leftoverOfPacks } from './leftover-cost.js';
import { measuredOffer } from './measured-offer.js';
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
  return takesPartOfEgg(demand.reading, demand.food) ? partOfEggOffer(demand, context) : wholeEggs(demand, context);
}

/** What is beaten and measured, and whole eggs where they come out; they set no batch. */
function partOfEggOffer(demand: Demand, context: OfferContext): Offer {
  const { food } = demand;
  const { eggs, kitchen } = context;
  const size = eggs.length === 1 ? eggs[0] : eggs.find(({ name }) => name === kitchen.eggs.usual);
  const each = size?.edibleGrams.times(partOfEgg(food) ?? 1).toNumber();
  const list = new OfferList();
  const whole = wholeEggs(demand, context);
  for (const { size, fixed, index } of whole.choices) list.add(demand, size, fixed, () => whole.state(index));
  const measured = measuredOffer(demand, food === null ? null : soldIn(food, kitchen.id), context);
  for (const { size, fixed, index } of measured.choices) {
    const left = leftoverOfPacks(each === undefined ? 1 : size / each, brokenEgg, context.weights);
    list.add(demand, size, fixed + left, () => measured.state(index));
  }
  return list.offer([], 0);
}

/** USDA FSIS: raw whites and yolks keep two to four days; from memory. */
const brokenEgg = { where: 'fridge', days: 2, freezes: false } as const;

/** Whole eggs: what an explicit anchor sets the batch by. */
export function wholeEggs(demand: Demand, context: OfferContext): Offer {
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
