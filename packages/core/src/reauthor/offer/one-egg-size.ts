import { partOfEgg } from '../../kitchen/egg.js';
import type { EggSize } from '../../kitchen/kitchen.js';
import { takesPartOfEgg } from '../../version/egg/part-of-egg.js';
import type { Demand, Offer } from '../search/demand.js';
import { type DemandContext, isCounted } from '../search/demands-of.js';
import type { PartPlan, Plans } from '../search/part-plan.js';
import { eggSizeCost, wholeEggs } from './egg-offer.js';
import { offerContext } from './offer-context.js';
import { offerFor } from './offer-for.js';

/** Plans of a recipe all of whose eggs are of one size. */
export interface SizedPlans {
  plans: PartPlan[];
  anchor: Demand | null;
  /** What another size than the usual one costs, once for the recipe. */
  fixed: number;
}

/**
 * The plans again for each size of eggs that the shops sell, the usual one first: nobody buys two sizes for one dish.
 *
 * @returns Nothing where at most one line needs or names a size.
 */
export function plansBySize(plans: Plans, context: DemandContext): SizedPlans[] {
  const eggs = plans.plans.flatMap(({ demands }) => demands.filter(isEggs));
  if (eggs.filter(({ loose, reading }) => !loose || reading.size !== null).length < 2) return [];
  const { sizes, usual } = context.kitchen.eggs;
  const isUsual = ({ name }: EggSize): boolean => name === usual;
  return [...sizes.filter(isUsual), ...sizes.filter((size) => !isUsual(size))].map((size) =>
    ofSize(size, plans, eggs, context),
  );
}

function isEggs(demand: Demand): boolean {
  return partOfEgg(demand.food) !== null && isCounted(demand);
}

function ofSize(
  size: EggSize,
  { plans, anchor, batches }: Plans,
  eggs: readonly Demand[],
  context: DemandContext,
): SizedPlans {
  const offers = offerContext(context, batches, [size]);
  // Of an anchor whole ones set the batch, even where its line takes half of one.
  const offered = (demand: Demand): Offer =>
    demand === anchor && takesPartOfEgg(demand.reading, demand.food)
      ? wholeEggs(demand, offers)
      : offerFor(demand, offers);
  const own = new Map(eggs.map((demand) => [demand, { ...demand, ...offered(demand) }]));
  const sized = (demand: Demand): Demand => own.get(demand) ?? demand;
  return {
    plans: plans.map((plan) => ({ ...plan, demands: plan.demands.map(sized) })),
    anchor: anchor == null ? null : sized(anchor),
    fixed: eggSizeCost(size, context.kitchen, context.weights),
  };
}
