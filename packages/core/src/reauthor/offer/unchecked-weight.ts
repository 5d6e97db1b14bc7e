import { gramsIn } from '../../amount/size.js';
import { stateOne } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Demand } from '../search/demand.js';
import { otherTool, widthCost } from './measured-pairs.js';
import type { OfferContext } from './offer-context.js';
import { type OfferList, reach } from './offer-list.js';

/** Of what the larder does not know nobody can say that a shop does not weigh it: its weight is stated, and not judged. */
export function addUnchecked(list: OfferList, demand: Demand, context: OfferContext): void {
  const { kitchen, weights } = context;
  if (demand.food !== null || demand.base !== 'g' || kitchen.scale !== null) return;
  const { least, most } = reach(demand, context);
  const down = Math.sqrt(demand.spread);
  for (const { unit, step, from, awkwardness } of unchecked(demand.quantity, kitchen)) {
    const grams = step.times(gramsIn(unit)).toNumber();
    for (let count = Math.max(from, Math.ceil(least / down / grams)); count * down * grams <= most; count++) {
      const upper = Math.max(count, Math.round(count * demand.spread));
      const stated = stateOne({ low: step.times(count), high: upper > count ? step.times(upper) : null, unit });
      const width = widthCost(upper / count, demand, weights);
      list.add(demand, Math.sqrt(count * upper) * grams, weights.awkward * awkwardness + width, () => stated);
    }
  }
}

/** Steps of a shop's scales. */
interface Step {
  unit: 'g' | 'oz' | 'lb';
  step: Exact;
  /** The least number of them. */
  from: number;
  awkwardness: number;
}

/**
 * What a shop's scales may say, by the grams that are asked for: quarter pounds from half a pound on, and ounces where these are not near.
 * From two pounds on nobody counts ounces. Common practice, no source.
 */
function unchecked(quantity: number, { counter }: Kitchen): Step[] {
  if (counter.unit !== 'lb')
    return [
      { unit: 'g', step: new Exact(quantity < 20 ? 1 : quantity < 250 ? 5 : 25), from: 1, awkwardness: otherTool },
    ];
  const pounds: Step = { unit: 'lb', step: counter.step, from: 2, awkwardness: 0 };
  const ounces: Step = { unit: 'oz', step: new Exact(quantity < 227 ? '0.25' : 1), from: 1, awkwardness: otherTool };
  return quantity < 907 ? [pounds, ounces] : [pounds];
}
