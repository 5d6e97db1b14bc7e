import type { Stated } from '../amount/stated.js';
import type { Part } from '../recipe/recipe.js';
import { weighingOf, weighReading } from '../version/weigh-line.js';
import { offerFor } from './choices-of.js';
import { type Constraint, constraintsOf, type GuardedRatio } from './constraint.js';
import type { Demand } from './demand.js';
import { type DemandContext, demandsOf } from './demands-of.js';
import { guardedRatios } from './guarded-ratios.js';
import type { Weights } from './weights.js';

/** A part of a recipe made ready for the search. */
export interface PartPlan {
  part: Part;
  demands: Demand[];
  /** Per demand, the amounts that its choices stand for. */
  stated: Stated[][];
  ratios: GuardedRatio[];
  constraintsAt(batch: number): Constraint[];
}

/** Demands, offers and guarded ratios of a part in another kitchen. */
export function planPart(part: Part, context: DemandContext): PartPlan {
  const demands = demandsOf(part, context);
  const stated = demands.map((demand) => {
    const offer = offerFor(demand, context.kitchen, context.weights);
    demand.choices = offer.choices;
    demand.wholes = offer.wholes;
    return offer.stated;
  });
  const grams = new Map(
    part.native.lines.map((line) => {
      const weighing = weighingOf(line.reading, line.food, context.native, context.densities);
      return [line, weighReading(line.reading, weighing)?.low.grams?.toNumber() ?? 0] as const;
    }),
  );
  const { recipe, kitchen, foods, weights } = context;
  const ratios = guardedRatios(part.native.lines, demands, { recipe, kitchen, foods, weights, grams });
  weighGuarded(demands, ratios, weights);
  return { part, demands, stated, ratios, constraintsAt: (batch) => constraintsOf(ratios, batch) };
}

/** A line in a guarded ratio weighs more; salt, a seasoning and an optional line have their own weight. */
function weighGuarded(demands: readonly Demand[], ratios: readonly GuardedRatio[], weights: Weights): void {
  demands.forEach((demand, at) => {
    if (demand.weight === 0 || demand.food?.role === 'seasoning') return;
    if (demand.food?.role === 'salt') {
      demand.weight = weights.salt;
      return;
    }
    const guarded = ratios.some(({ numerator, denominator, name }) => {
      return (numerator[at] ?? 0) > 0 || ((denominator[at] ?? 0) > 0 && !name.endsWith(': whole'));
    });
    if (guarded) demand.weight = weights.guarded;
  });
}
