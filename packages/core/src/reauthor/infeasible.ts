import type { Line } from '../recipe/recipe.js';
import { limitAt, ratioOf } from './constraint.js';
import type { PartPlan } from './part-plan.js';
import { type Problem, type Solution, solve } from './solve.js';

/** Something that stands in the way of any version. */
export type Obstacle =
  | { kind: 'no-amount'; line: Line /** Nearest whole pack, grams, and the need. */; pack: number | null; need: number }
  | { kind: 'ratio'; part: string | null; name: string; drift: number; limit: number };

/** Why there is no version, and the least that would have to give. */
export interface Infeasible {
  because: Obstacle[];
  /** The limit that one ratio would need, where that alone helps; null where no single ratio does. */
  leastChange: { name: string; part: string | null; limit: number } | null;
  /** The nearest version, its limits left aside; null where a line has no amount at all. */
  nearest: Solution | null;
}

/** What stands in the way of a problem that has no solution. */
export function explainInfeasible(problem: Problem): Infeasible {
  const { plans } = problem;
  const missing = plans.flatMap(({ demands }) => demands.filter(({ choices }) => choices.length === 0));
  const free = { ...problem, plans: plans.map((plan) => ({ ...plan, constraintsAt: () => [] })) };
  const nearest = solve(free).best;
  const because: Obstacle[] = [
    ...missing.flatMap((demand): Obstacle[] => {
      const line = demand.lines[0];
      return line === undefined
        ? []
        : [{ kind: 'no-amount', line, pack: demand.wholes[0] ?? null, need: demand.quantity }];
    }),
    ...(nearest === null ? [] : broken(plans, nearest)),
  ];
  return { because, leastChange: leastChange(problem, because), nearest };
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
function leastChange(problem: Problem, because: readonly Obstacle[]): Infeasible['leastChange'] {
  if (because.some(({ kind }) => kind === 'no-amount')) return null;
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
      const value =
        ratioOf(
          ratio,
          (solution.parts[at]?.choices ?? []).map((choice) => choice.grams),
        ) ?? ratio.native;
      const drift = Math.abs(value / ratio.native - 1);
      const excess = drift / limitAt(ratio, solution.batch.factor);
      if (least === null || excess < least.excess)
        least = { name: ratio.name, part: plan.part.native.label, limit: drift, excess };
    });
  });
  return least;
}
