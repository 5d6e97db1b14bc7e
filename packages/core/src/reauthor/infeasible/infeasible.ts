import type { Food } from '../../food/food.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import type { Line } from '../../recipe/recipe.js';
import { chosenRatios } from '../ratio/chosen-ratios.js';
import { isBent } from '../ratio/constraint.js';
import { anchorFactors, native } from '../search/batch-factors.js';
import type { Choice, Demand } from '../search/demand.js';
import type { PartPlan } from '../search/part-plan.js';
import { leastCost } from '../search/search.js';
import type { Searched } from '../search/search-recipe.js';
import { type Problem, type Solution, solve, solveAt } from '../search/solve.js';
import type { Change } from './change.js';
import { leastChange } from './least-change.js';
import type { InTheWay } from './possible-changes.js';

/** Something that stands in the way of any version. */
export type Obstacle =
  | { kind: 'not-sold'; line: Line; food: Food; isAnchor: boolean; because: 'no-stand-in' | 'no-weight' }
  /** A cook there uses whole packs of it, and how many of them a volume is is not known. */
  | { kind: 'no-weight'; line: Line; food: Food; isAnchor: boolean }
  | {
      kind: 'no-amount';
      line: Line;
      food: Food | null;
      isAnchor: boolean;
      /** The nearest amount that is to be had, in the unit of `need`; null where there is none at all. */
      pack: number | null;
      /** What is needed: grams, or millilitres or pieces where the weight is not known. */
      need: number;
      base: Demand['base'];
      /** The batch of it: 1, or the nearest that a named anchor allows. */
      batchFactor: number;
    }
  | {
      kind: 'ratio';
      part: string | null;
      name: string;
      drift: number;
      limit: number;
      /** Foods in it that are only to be had in whole packs or pieces. */
      whole: Food[];
    };

/** Why there is no version, and the least that would have to give. */
export interface Infeasible {
  because: Obstacle[];
  /** The least that an author could change, each tried by another search; empty where nothing of the kind helps. */
  leastChange: Change[];
  /** The nearest version, its limits left aside; null where a line has no amount at all. */
  nearest: Solution | null;
}

/** What stands in the way of a recipe that has no version, or none whose foods are all sold. */
export function explainInfeasible(searched: Searched): Infeasible {
  const { problem, solved, unsold } = searched;
  const { plans, anchor } = problem;
  const missing = solved.best === null ? missingIn(problem) : [];
  const free = { ...problem, plans: plans.map((plan) => ({ ...plan, constraintsAt: () => [] })) };
  const nearest = solved.best ?? (missing.length === 0 ? solve(free).best : null) ?? nearestBeyond(free, missing);
  const bent = nearest === null || solved.best !== null ? [] : bentIn(plans, nearest);
  const because: Obstacle[] = [
    ...unsold.map(({ because, line, food }): Obstacle => {
      const isAnchor = isOf(line, anchor);
      return because === 'whole-packs'
        ? { kind: 'no-weight', line, food, isAnchor }
        : { kind: 'not-sold', line, food, isAnchor, because };
    }),
    ...missing.flatMap((each): Obstacle[] => noAmount(each, anchor)),
    ...bent.map(({ ratio, part, demands, drift, limit }): Obstacle => {
      const whole = demands.flatMap(({ food }, at) =>
        (ratio.numerator[at] ?? 0) > 0 && food !== null && isUseWhole(soldIn(food, searched.input.kitchen.id))
          ? [food]
          : [],
      );
      return { kind: 'ratio', part, name: ratio.name, drift, limit, whole };
    }),
  ];
  const inTheWay: InTheWay = {
    lines: [...new Set([...unsold.map(({ line }) => line), ...missing.flatMap(({ demand }) => demand.lines[0] ?? [])])],
    ratios: bent,
  };
  return { because, leastChange: leastChange(searched, inTheWay), nearest };
}

function isOf(line: Line, demand: Demand | null): boolean {
  return demand?.lines.includes(line) ?? false;
}

/** A demand that nothing is near to, and what is nearest. */
interface Missing {
  demand: Demand;
  nearest: Choice | null;
  /** The nearest size that is to be had: of packs, where the anchor has to come in them. */
  pack: number | null;
  batchFactor: number;
}

function noAmount({ demand, pack, batchFactor }: Missing, anchor: Demand | null): Obstacle[] {
  const line = demand.lines[0];
  if (line === undefined) throw new RangeError('A demand without a line.');
  const { food, base, quantity } = demand;
  const need = quantity * batchFactor;
  return [
    {
      kind: 'no-amount',
      line,
      food,
      isAnchor: demand === anchor,
      pack,
      need,
      base,
      batchFactor,
    },
  ];
}

function missingIn({ plans, anchor, fixedBatch }: Problem): Missing[] {
  // Beside a cure the anchor sets no batch: its packs have to hold the native one.
  const setter = fixedBatch ? null : anchor;
  const factors = setter === null ? [] : anchorFactors(setter);
  // Without a batch that the anchor allows, the native size shows what is near.
  const batches = factors.length === 0 ? [1] : factors.map(({ factor }) => factor);
  return plans.flatMap((plan) =>
    plan.demands
      .filter((demand) =>
        demand === setter
          ? factors.length === 0
          : batches.every((batch) => leastCost([demand], batch) === Number.POSITIVE_INFINITY),
      )
      .map((demand) => {
        const packs = demand === anchor ? plan.packsBeyond(demand) : null;
        // Kept with the demand: the words of the choice are asked of it.
        Object.assign(demand, plan.beyond(demand));
        const batchFactor = demand === setter ? 1 : (batches[0] ?? 1);
        const nearest = nearestOf(demand, batchFactor);
        // The nearest version measures what the anchor should have come in packs of.
        const pack = packs === null ? nearest : nearestOf({ ...demand, choices: packs.choices }, batchFactor);
        return { demand, nearest, pack: pack?.size ?? null, batchFactor };
      }),
  );
}

function nearestOf({ choices, quantity }: Demand, batch: number): Choice | null {
  const far = ({ log }: Choice): number => Math.abs(log - Math.log(quantity * batch));
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

type Bent = InTheWay['ratios'][number] & { drift: number };

/** The guarded ratios that a solution breaks. */
function bentIn(plans: readonly PartPlan[], solution: Solution): Bent[] {
  return chosenRatios(plans, solution).flatMap(({ plan: { part, demands }, ratio, value, limit }): Bent[] => {
    const drift = value === null ? 0 : value / ratio.native - 1;
    return isBent({ drift, limit }) ? [{ ratio, part: part.native.label, demands, drift, limit }] : [];
  });
}
