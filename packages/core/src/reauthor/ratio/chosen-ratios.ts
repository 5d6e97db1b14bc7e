import type { PartPlan } from '../search/part-plan.js';
import type { Solution } from '../search/solve.js';
import { type GuardedRatio, type RatioIn, ratioIn } from './constraint.js';

/** A guarded ratio in what was chosen. */
export interface ChosenRatio extends RatioIn {
  plan: PartPlan;
  ratio: GuardedRatio;
}

/** The guarded ratios of every part, as a solution has them. */
export function chosenRatios(plans: readonly PartPlan[], solution: Solution): ChosenRatio[] {
  return plans.flatMap((plan, index) => {
    const grams = (solution.parts[index]?.choices ?? []).map((choice) => choice.grams);
    return plan.ratios.map((ratio) => ({ plan, ratio, ...ratioIn(ratio, grams) }));
  });
}
