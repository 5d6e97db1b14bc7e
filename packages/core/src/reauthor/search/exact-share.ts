import type { Stated } from '../../amount/stated.js';
import { type Exact, middleOf, ratioOf } from '../../exact.js';
import { partOfEgg } from '../../kitchen/egg.js';
import { weighStated } from '../../version/weigh/weigh-line.js';
import { middle } from '../../version/weigh/weighed-ends.js';
import { type WeighedAmount, weighingOf } from '../../version/weigh/weighing.js';
import type { Demand } from './demand.js';
import type { DemandContext } from './demands-of.js';
import { drainedWeights } from './drained-weights.js';

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
  const drained = drainedWeights(demand, stated, chosen, context);
  return (
    ratioOf(drained?.chosen ?? null, drained?.need ?? null) ??
    ratioOf(grams, demand.need.grams) ??
    ratioOf(millilitres, demand.need.millilitres) ??
    (chosen.dimension === demand.weighed.dimension && demand.base === 'count' ? countsOf(stated, demand) : null)
  );
}

function countsOf(stated: Stated, { reading }: Demand): Exact | null {
  const [own, native] = [stated.statements[0]?.[0], reading.amounts[0]];
  if (own === undefined || native === undefined || own.unit !== native.unit) return null;
  return ratioOf(middleOf(own.low, own.high), middleOf(native.low, native.high));
}
