import type { Stated } from '../../amount/stated.js';
import { Exact, middleOf, ratioOf } from '../../exact.js';
import type { Weighed } from '../../food/weigh.js';
import { partOfEgg } from '../../kitchen/egg.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import { weighStated } from '../../version/weigh/weigh-line.js';
import { middle } from '../../version/weigh/weighed-ends.js';
import { type WeighedAmount, weighingOf } from '../../version/weigh/weighing.js';
import type { Demand } from './demand.js';
import { type DemandContext, isCounted } from './demands-of.js';

/** What a chosen amount weighs in the kitchen that it is chosen for; null where nothing is known of it. */
export function weighChosen(
  { reading, food, lines }: Demand,
  stated: Stated,
  { kitchen, ownWeights }: DemandContext,
): WeighedAmount | null {
  const weighing = { ...weighingOf(reading, food, kitchen, ownWeights), sizeWord: '' };
  const own = lines.some((line) => line.food === food);
  // A stand-in is not grated because the food was; pieces keep their size, but a large egg is another one there.
  return weighStated(stated, {
    ...weighing,
    prep: own ? weighing.prep : '',
    sizeWord: own && stated.pack === null && partOfEgg(food) === null ? (reading.size?.text ?? '') : '',
  });
}

/**
 * A chosen amount over the native need, exactly: drained against drained where both are known, weight against weight, else volume or
 * count; a range by its geometric mean.
 *
 * @param chosen What the chosen amount weighs.
 * @returns Null where they cannot be compared (a pinch).
 */
export function exactShare(
  demand: Demand,
  stated: Stated,
  chosen: WeighedAmount | null,
  context: DemandContext,
): Exact | null {
  if (chosen === null) return null;
  const { grams, millilitres } = middle(chosen);
  return (
    drainedShare(demand, stated, chosen, context) ??
    ratioOf(grams, demand.need.grams) ??
    ratioOf(millilitres, demand.need.millilitres) ??
    (chosen.dimension === demand.weighed.dimension && demand.base === 'count' ? countsOf(stated, demand) : null)
  );
}

/** Drained weight over drained weight; null where net weights are compared. */
function drainedShare(demand: Demand, stated: Stated, chosen: WeighedAmount, context: DemandContext): Exact | null {
  const native = demand.weighed;
  // Of what several lines ask for together no drained weight is known.
  if (chosen.drainedGrams !== null && native.drainedGrams !== null)
    return chosen.drainedGrams.times(widening(chosen)).dividedBy(native.drainedGrams.times(widening(native)));
  const drained = drainedOf(demand, stated, context);
  return drained === null ? null : ratioOf(drained, demand.need.grams);
}

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
  const share = chosen === null ? null : drainedShare(demand, stated, chosen, context);
  if (chosen === null || share === null || share.isZero()) return net;
  const drained = demand.weighed.drainedGrams?.times(widening(demand.weighed)) ?? demand.need.grams;
  const over = ratioOf(middle(chosen).grams, demand.need.grams)?.dividedBy(share);
  if (over == null || demand.low.grams === null || demand.need.grams === null || drained === null) return net;
  // A tin's net weight says nothing of how much room its beans take.
  const need = { grams: demand.low.grams.times(over), millilitres: null };
  return { need, drains: drained.dividedBy(demand.need.grams.times(over)) };
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

function countsOf(stated: Stated, { reading }: Demand): Exact | null {
  const [own, native] = [stated.statements[0]?.[0], reading.amounts[0]];
  if (own === undefined || native === undefined || own.unit !== native.unit) return null;
  return ratioOf(middleOf(own.low, own.high), middleOf(native.low, native.high));
}
