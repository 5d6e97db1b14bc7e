import type { Line } from '../recipe/recipe.js';
import { anchorFactors, native } from './batch-factors.js';
import { limitAt, ratioOf } from './constraint.js';
import type { Choice, Demand } from './demand.js';
import type { PartPlan } from './part-plan.js';
import { leastCost } from './search.js';
import { type Problem, type Solution, solve, solveAt } from './solve.js';

/** Something that stands in the way of any version. */
export type Obstacle =
  | {
      kind: 'no-amount';
      line: Line;
      /** The nearest amount that is to be had, in the unit of `need`; null where there is none at all. */
      pack: number | null;
      /** What is needed: grams, or millilitres or pieces where the weight is not known. */
      need: number;
    }
  | { kind: 'ratio'; part: string | null; name: string; drift: number; limit: number };

/** Why there is no version, and the least that would have to give. */
export interface Infeasible {
  because: Obstacle[];
  /** The limit that one ratio, or the drift that one line, would need, where that alone helps; null where no single one does. */
  leastChange: { name: string; part: string | null; limit: number } | null;
  /** The nearest version, its limits left aside; null where a line has no amount at all. */
  nearest: Solution | null;
}

/** What stands in the way of a problem that has no solution. */
export function explainInfeasible(problem: Problem): Infeasible {
  const { plans } = problem;
  const missing = missingIn(problem);
  const free = { ...problem, plans: plans.map((plan) => ({ ...plan, constraintsAt: () => [] })) };
  const filled = (missing.length === 0 ? solve(free).best : null) ?? nearestBeyond(free, missing);
  const because: Obstacle[] = [
    ...missing.map(({ demand, nearest }): Obstacle => {
      const line = demand.lines[0];
      if (line === undefined) throw new RangeError('A demand without a line.');
      return { kind: 'no-amount', line, pack: nearest?.size ?? null, need: demand.quantity };
    }),
    ...(filled === null ? [] : broken(plans, filled)),
  ];
  return { because, leastChange: missing.length === 0 ? leastChange(problem) : widerDrift(missing), nearest: filled };
}

/** A demand that nothing is near to, and what is nearest. */
interface Missing {
  plan: PartPlan;
  demand: Demand;
  nearest: Choice | null;
}

function missingIn({ plans, anchor }: Problem): Missing[] {
  return plans.flatMap((plan) =>
    plan.demands
      .filter((demand) =>
        demand === anchor ? anchorFactors(demand).length === 0 : leastCost([demand], 1) === Number.POSITIVE_INFINITY,
      )
      .map((demand) => {
        // Kept with the demand: the words of the choice are asked of it.
        Object.assign(demand, plan.beyond(demand));
        return { plan, demand, nearest: nearestOf(demand) };
      }),
  );
}

function nearestOf({ choices, quantity }: Demand): Choice | null {
  const far = ({ log }: Choice): number => Math.abs(log - Math.log(quantity));
  return choices.reduce<Choice | null>((best, each) => (best === null || far(each) < far(best) ? each : best), null);
}

/** The native size with the nearest there is of what nothing is near to. */
function nearestBeyond(free: Problem, missing: readonly Missing[]): Solution | null {
  const plans = free.plans.map((plan) => ({
    ...plan,
    demands: plan.demands.map((demand) => {
      const own = missing.find((each) => each.demand === demand);
      if (own === undefined) return demand;
      // Its one choice counts as what is wanted: there is no better one.
      return { ...demand, choices: own.nearest === null ? [] : [{ ...own.nearest, log: Math.log(demand.quantity) }] };
    }),
  }));
  return solveAt(native, { ...free, plans }, Number.POSITIVE_INFINITY);
}

/** The drift that the one line without an amount would have to be allowed. */
function widerDrift(missing: readonly Missing[]): Infeasible['leastChange'] {
  const [only, ...others] = missing;
  if (only === undefined || others.length > 0 || only.nearest === null) return null;
  const { demand, plan, nearest } = only;
  const name = demand.lines[0]?.reading.food?.text ?? demand.food?.id ?? '';
  return { name, part: plan.part.native.label, limit: Math.abs(nearest.size / demand.quantity - 1) };
}

/** The guarded ratios that a solution breaks. */
function broken(plans: readonly PartPlan[], solution: Solution): Obstacle[] {
  return plans.flatMap(({ ratios, part }, index) =>
    ratios.flatMap((ratio): Obstacle[] => {
      const grams = (solution.parts[index]?.choices ?? []).map((choice) => choice.grams);
      const value = ratioOf(ratio, grams);
      const limit = limitAt(ratio, solution.batch.factor);
      const drift = value === null ? 0 : value / ratio.native - 1;
      return Math.abs(drift) <= limit + 1e-9
        ? []
        : [{ kind: 'ratio', part: part.native.label, name: ratio.name, drift, limit }];
    }),
  );
}

/** Each ratio in turn is let go; of those that help, the one that has to give least. */
function leastChange(problem: Problem): Infeasible['leastChange'] {
  let least: (NonNullable<Infeasible['leastChange']> & { excess: number }) | null = null;
  problem.plans.forEach((plan, at) => {
    plan.ratios.forEach((ratio, index) => {
      const without = {
        ...plan,
        constraintsAt: (batch: number) => plan.constraintsAt(batch).filter((each) => each.ratio !== index),
      };
      const plans = problem.plans.map((each, other) => (other === at ? without : each));
      const solution = solve({ ...problem, plans }).best;
      if (solution === null) return;
      const grams = (solution.parts[at]?.choices ?? []).map((choice) => choice.grams);
      const drift = Math.abs((ratioOf(ratio, grams) ?? ratio.native) / ratio.native - 1);
      const excess = drift / limitAt(ratio, solution.batch.factor);
      if (least === null || excess < least.excess)
        least = { name: ratio.name, part: plan.part.native.label, limit: drift, excess };
    });
  });
  return withoutExcess(least);
}

function withoutExcess(
  change: (NonNullable<Infeasible['leastChange']> & { excess: number }) | null,
): Infeasible['leastChange'] {
  return change === null ? null : { name: change.name, part: change.part, limit: change.limit };
}
