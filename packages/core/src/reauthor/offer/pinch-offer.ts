import { stateOne } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import { measuresBy } from '../../kitchen/measure/measures-by.js';
import type { Demand } from '../search/demand.js';
import { perBase } from './measured-pairs.js';
import type { OfferContext } from './offer-context.js';
import type { OfferList } from './offer-list.js';

/** Under three quarters of the smallest spoon a cook takes a pinch, half of it. Common practice, no source. */
const pinch = { under: 0.75, ofSpoon: 0.5, awkwardness: 3 } as const;

/** Offers a pinch of a salt or seasoning of which less than a spoon is wanted. */
export function addPinch(
  list: OfferList,
  demand: Demand,
  { kitchen, weights }: OfferContext,
  density: number | null,
): void {
  const spoon = measuresBy(kitchen, 'spoon')[0]?.near;
  const each = perBase('ml', demand, density);
  const role = demand.food?.role;
  if (spoon === undefined || each === null || (role !== 'seasoning' && role !== 'salt')) return;
  if (demand.quantity / each >= spoon * pinch.under) return;
  const stated = stateOne({ low: new Exact(1), high: null, unit: 'pinch' });
  list.add(demand, spoon * pinch.ofSpoon * each, weights.awkward * pinch.awkwardness, () => stated);
}
