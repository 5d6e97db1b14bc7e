import type { Stated } from '../../amount/stated.js';
import { type Exact, ratioOf } from '../../exact.js';
import type { Weighed } from '../../food/weigh.js';
import { middle } from '../../version/weigh/weighed-ends.js';
import type { WeighedAmount } from '../../version/weigh/weighing.js';
import type { Demand } from '../search/demand.js';
import type { DemandContext } from '../search/demands-of.js';
import { drainedWeights } from '../search/drained-weights.js';

/** What a chosen amount was compared with, a range by its lower end. */
export interface Compared {
  /** The native need; where drained weights are compared what packs there weigh net that drain to as much. */
  need: Weighed;
  /** How much of that net weight is left when drained, as a fraction; null where net weights are compared. */
  drains: Exact | null;
}

/** The need behind an amount, in the weights that it was chosen by. */
export function comparedWith(
  demand: Demand,
  stated: Stated,
  chosen: WeighedAmount | null,
  context: DemandContext,
): Compared {
  const net: Compared = { need: demand.low, drains: null };
  const drained = chosen === null ? null : drainedWeights(demand, stated, chosen, context);
  if (chosen === null || drained === null) return net;
  const there = ratioOf(drained.chosen, middle(chosen).grams);
  const native = ratioOf(drained.need, demand.need.grams);
  if (there === null || there.isZero() || native === null || demand.low.grams === null) return net;
  // A tin's net weight says nothing of how much room its beans take.
  return { need: { grams: demand.low.grams.times(native).dividedBy(there), millilitres: null }, drains: there };
}
