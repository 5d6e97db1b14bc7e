import { chosenRatios } from '../ratio/chosen-ratios.js';
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
  return chosenRatios(plans, solution).map(({ plan, ratio: { name, native }, value, limit }) => {
    return { name, part: plan.part.native.label, native, version: value ?? native, limit };
  });
}
