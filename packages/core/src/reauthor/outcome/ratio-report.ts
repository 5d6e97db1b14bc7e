import { ratioIn } from '../ratio/constraint.js';
import type { PartPlan } from '../search/part-plan.js';
import type { Solution } from '../search/solve.js';

/** A guarded ratio before and after. */
export interface RatioReport {
  name: string;
  part: string | null;
  native: number;
  version: number;
  /** Largest drift, as a fraction of the native ratio. */
  limit: number;
}

/** The guarded ratios of every part in what was chosen. */
export function ratioReports(plans: readonly PartPlan[], solution: Solution): RatioReport[] {
  return plans.flatMap(({ ratios, part }, index) => {
    const grams = (solution.parts[index]?.choices ?? []).map((choice) => choice.grams);
    return ratios.map((ratio) => {
      const { value, limit } = ratioIn(ratio, grams);
      const { name, native } = ratio;
      return { name, part: part.native.label, native, version: value ?? native, limit };
    });
  });
}
