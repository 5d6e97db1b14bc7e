import type { Exact } from '../exact.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { type PanOffer, pansLike } from '../kitchen/pan.js';
import type { Mention, Recipe } from '../recipe/recipe.js';

type PanMention = Extract<Mention, { kind: 'pan' }>;

/** The pans that a kitchen offers for one that is written. */
export interface PanDemand {
  mention: PanMention;
  /** How many of it the author uses. */
  count: number;
  offers: PanOffer[];
}

/** A pan and its number, chosen for a batch. */
export interface PanChosen {
  demand: PanDemand;
  offer: PanOffer;
  count: number;
  cost: number;
}

/** The pans of a recipe whose base a kitchen can match; others keep the author's size. */
export function pansOf(recipe: Recipe, native: Kitchen, kitchen: Kitchen): PanDemand[] {
  const mentions = recipe.steps
    .flatMap((steps) => steps.native.mentions)
    .filter((mention): mention is PanMention => mention.kind === 'pan');
  return mentions.flatMap((mention) => {
    const offers = pansLike(mention.reading, native, kitchen);
    const count = countOf(mention.count ?? mention.reading.count);
    return offers.length === 0 ? [] : [{ mention, count, offers }];
  });
}

function countOf(count: Exact | null): number {
  return count === null ? 1 : count.toNumber();
}

/** The pan and number whose base is nearest to the batch's: the author's number, one more or one less. */
export function bestPan(demand: PanDemand, batch: number, weight: number): PanChosen {
  let best: PanChosen | null = null;
  for (const offer of demand.offers) {
    for (const count of [demand.count, demand.count + 1, demand.count - 1]) {
      if (count < 1) continue;
      const drift = Math.log((offer.areaRatio * count) / (demand.count * batch));
      const cost = weight * drift * drift;
      if (best === null || cost < best.cost - 1e-12) best = { demand, offer, count, cost };
    }
  }
  if (best === null) throw new RangeError('A pan without offers.');
  return best;
}
