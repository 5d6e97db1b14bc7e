import type { Stated } from '../../amount/stated.js';
import { Exact, middleOf } from '../../exact.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import type { WeighedAmount } from '../../version/weigh/weighing.js';
import type { Demand } from './demand.js';
import { type DemandContext, isCounted } from './demands-of.js';

/** Grams that are left when the water is poured off, of ranges by their geometric mean. */
interface Drained {
  chosen: Exact;
  need: Exact;
}

/** The drained weights by which a chosen amount is compared with the native need; null where net weights are. */
export function drainedWeights(
  demand: Demand,
  stated: Stated,
  chosen: WeighedAmount,
  context: DemandContext,
): Drained | null {
  const native = demand.weighed;
  // Of what several lines ask for together no drained weight is known.
  if (chosen.drainedGrams !== null && native.drainedGrams !== null)
    return {
      chosen: chosen.drainedGrams.times(widening(chosen)),
      need: native.drainedGrams.times(widening(native)),
    };
  const drained = drainedOf(demand, stated, context);
  return drained === null || demand.need.grams === null ? null : { chosen: drained, need: demand.need.grams };
}

/** The middle of a range over its lower end: what is drained is told of that. */
function widening({ low, high }: WeighedAmount): Exact {
  if (high === null || low.grams === null || high.grams === null || low.grams.isZero()) return new Exact(1);
  return high.grams.dividedBy(low.grams).sqrt();
}

/** Drained weight of whole packs for a need that was measured out of none; null where net weights count. */
function drainedOf(demand: Demand, { pack, statements }: Stated, { kitchen }: DemandContext): Exact | null {
  const { food, lines, reading } = demand;
  const count = statements[0]?.[0];
  const own = food !== null && lines.every((line) => line.food === food) && reading.pack === null && !isCounted(demand);
  if (!own || pack === null || count === undefined) return null;
  const sold = soldIn(food, kitchen.id);
  const same = sold?.packs.find(({ size, unit }) => size.equals(pack.size) && unit === pack.unit);
  if (sold === null || !isUseWhole(sold) || same?.drainedGrams == null) return null;
  return same.drainedGrams.times(middleOf(count.low, count.high));
}
