import type { Stated } from '../../amount/stated.js';
import type { EggSize, Kitchen } from '../../kitchen/kitchen.js';
import { mayBeCured } from '../../recipe/has-cure.js';
import type { Choice, Demand, Offer } from '../search/demand.js';
import type { DemandContext } from '../search/demands-of.js';
import type { BatchSpan, Weights } from '../weights.js';

/** What choices are offered for. */
export interface OfferContext {
  kitchen: Kitchen;
  native: Kitchen;
  weights: Weights;
  batches: BatchSpan;
  /** The sizes of eggs to choose among. */
  eggs: readonly EggSize[];
  /** Whether a cure stands among the recipe's lines. */
  besideCure: boolean;
}

/**
 * What choices are offered for in a recipe's search.
 *
 * @param eggs All that the kitchen's shops sell, unless one size is tried.
 */
export function offerContext(
  { kitchen, native, weights, besideCure }: DemandContext,
  batches: BatchSpan,
  eggs: readonly EggSize[] = kitchen.eggs.sizes,
): OfferContext {
  return { kitchen, native, weights, batches, eggs, besideCure };
}

/** Beside a cure nothing that it acts on is rounded down: less meat for as much of it is more of it in the meat. */
export function enough(offer: Offer, { quantity, spread, food }: Demand, { besideCure }: OfferContext): Offer {
  if (!besideCure || !mayBeCured(food)) return offer;
  const least = quantity * (1 - 1e-9);
  const isEnough = ({ size, index }: Choice): boolean =>
    size >= least && (spread === 1 || lowerEnd(size, offer.state(index)) >= least / Math.sqrt(spread));
  return { ...offer, choices: offer.choices.filter(isEnough) };
}

/** The least of a range, by its middle. */
function lowerEnd(size: number, { statements }: Stated): number {
  const term = statements[0]?.[0];
  return term?.high == null ? size : size / Math.sqrt(term.high.dividedBy(term.low).toNumber());
}
