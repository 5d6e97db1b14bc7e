import { bestPan, type PanChosen, type PanDemand } from '../pans-of.js';
import { farBatch, type Weights } from '../weights.js';
import { anchorFactors, type BatchFactor, isNear, measuredFactors, native, wholeFactors } from './batch-factors.js';
import type { Demand } from './demand.js';
import type { PartPlan } from './part-plan.js';
import { cheapest, type Found, leastCost } from './search.js';
import { sameCost } from './window.js';

/** A whole recipe, chosen for one batch factor. */
export interface Solution {
  batch: BatchFactor;
  parts: Found[];
  pans: PanChosen[];
  cost: number;
}

/** The cheapest solution and the next best at another batch factor. */
export interface Solved {
  best: Solution | null;
  runnerUp: Solution | null;
}

/** What is solved. */
export interface Problem {
  plans: readonly PartPlan[];
  pans: readonly PanDemand[];
  weights: Weights;
  /** Null: chosen freely. */
  anchor: Demand | null;
  /** A cure in the recipe forbids any other batch. */
  fixedBatch: boolean;
  /** What every solution costs beside its batch and lines. */
  fixed: number;
}

/** The true optimum over every batch factor that is considered and every choice at it. */
export function solve(problem: Problem): Solved {
  const { plans, anchor, fixedBatch } = problem;
  const demands = plans.flatMap((plan) => plan.demands);
  if (fixedBatch) return overFactors([native], problem);
  if (anchor !== null) {
    const factors = anchorFactors(anchor);
    // Three tins for three are the dish; five are another day's cooking, whatever else they would use up.
    const near = overFactors(factors.filter(isNear), problem);
    if (near.best !== null && near.runnerUp !== null) return near;
    const far = overFactors(
      factors.filter((factor) => !isNear(factor)),
      problem,
    );
    return near.best === null ? far : { best: near.best, runnerUp: far.best };
  }
  const first = overFactors(wholeFactors(demands), problem);
  const anyWhole = demands.some(({ wholes, weight }) => wholes.length > 0 && weight > 0);
  // With no use-whole food the batch leaves 1 only where 1 breaks a limit.
  return first.best !== null || anyWhole ? first : overFactors(measuredFactors(demands), problem);
}

function overFactors(factors: readonly BatchFactor[], problem: Problem): Solved {
  const bounded = factors
    .map((batch) => ({ batch, least: leastAt(batch, problem) }))
    .filter(({ least }) => least < Number.POSITIVE_INFINITY)
    .sort((a, b) => (Math.abs(a.least - b.least) <= sameCost ? 0 : a.least - b.least));
  let best: Solution | null = null;
  let runnerUp: Solution | null = null;
  for (const { batch, least } of bounded) {
    const most: number = runnerUp?.cost ?? Number.POSITIVE_INFINITY;
    if (least >= most) break;
    const solution = solveAt(batch, problem, most);
    if (solution === null) continue;
    const isSame = best !== null && readsTheSame(best.batch, batch);
    if (best === null || isBetter(solution, best)) {
      if (!isSame) runnerUp = best;
      best = solution;
    } else if (!isSame) runnerUp = solution;
  }
  return { best, runnerUp };
}

/**
 * The best of several problems, each with its own plans, and the next best at another batch factor.
 *
 * @param problems Of two solutions that cost the same at one batch the earlier problem's is taken.
 */
export function solveAny(problems: readonly Problem[]): Solved & { problem: Problem | null } {
  const found = problems.flatMap((problem) => {
    const { best, runnerUp } = solve(problem);
    return [best, runnerUp].flatMap((solution) => (solution === null ? [] : [{ solution, problem }]));
  });
  const better = (one: (typeof found)[number] | null, other: (typeof found)[number]): (typeof found)[number] =>
    one === null || isBetter(other.solution, one.solution) ? other : one;
  const best = found.reduce<(typeof found)[number] | null>(better, null);
  const others = found.filter(({ solution }) => best !== null && !readsTheSame(solution.batch, best.solution.batch));
  const runnerUp = others.reduce<(typeof found)[number] | null>(better, null);
  return { best: best?.solution ?? null, runnerUp: runnerUp?.solution ?? null, problem: best?.problem ?? null };
}

/** Batches that are a two-thousandth apart are one to a cook: a runner-up is at another. */
function readsTheSame(one: BatchFactor, other: BatchFactor): boolean {
  return Math.abs(one.factor - other.factor) < 0.0005;
}

/** Of two that cost the same the batch nearer to 1. */
function isBetter(one: Solution, other: Solution): boolean {
  if (Math.abs(one.cost - other.cost) > sameCost) return one.cost < other.cost;
  const far = ({ batch }: Solution): number => Math.abs(Math.log(batch.factor));
  return far(one) < far(other) - sameCost;
}

function leastAt(batch: BatchFactor, problem: Problem): number {
  const { plans } = problem;
  const lines = plans.reduce((sum, { demands }) => sum + leastCost(withAnchor(demands, batch), batch.factor), 0);
  return lines + ownCost(batch.factor, problem);
}

/** Three eggs that set the batch are what is written: not the four smaller ones that would come near it. */
function withAnchor(demands: readonly Demand[], { anchor, choice }: BatchFactor): readonly Demand[] {
  if (choice === null) return demands;
  return demands.map((demand) => (demand === anchor ? { ...demand, choices: [choice] } : demand));
}

/** What a batch factor costs by itself: its distance from the native size and from the pans. */
function ownCost(factor: number, { pans, weights, fixed }: Problem): number {
  const size = Math.log(factor);
  const far = Math.abs(factor - 1) > farBatch + 1e-9 ? weights.farBatch : 0;
  return (
    fixed + far + weights.batch * size * size + pans.reduce((sum, pan) => sum + bestPan(pan, factor, weights).cost, 0)
  );
}

/** The cheapest choices at one batch factor; parts are coupled by nothing else. */
export function solveAt(batch: BatchFactor, problem: Problem, most: number): Solution | null {
  const { plans, pans, weights } = problem;
  let cost = ownCost(batch.factor, problem);
  const parts: Found[] = [];
  for (const { demands, constraintsAt } of plans) {
    const found = cheapest(withAnchor(demands, batch), constraintsAt(batch.factor), batch.factor, most - cost);
    if (found === null) return null;
    parts.push(found);
    cost += found.cost;
  }
  return { batch, parts, pans: pans.map((pan) => bestPan(pan, batch.factor, weights)), cost };
}
