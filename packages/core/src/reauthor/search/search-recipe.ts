import type { Foods } from '../../food/find/find.js';
import type { Food } from '../../food/food.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import { standInOf } from '../../kitchen/shop/stand-in.js';
import { hasCure } from '../../recipe/has-cure.js';
import type { Line, Recipe } from '../../recipe/recipe.js';
import { withPlus } from '../../recipe/with-plus.js';
import { weightsStatedIn } from '../../version/weigh/stated-weights.js';
import { plansBySize } from '../offer/one-egg-size.js';
import { pansOf } from '../pans-of.js';
import type { Weights } from '../weights.js';
import type { Demand } from './demand.js';
import type { DemandContext } from './demands-of.js';
import { type PartPlan, planParts } from './part-plan.js';
import { type Problem, type Solved, solve, solveAny } from './solve.js';

/** What a search is over. */
export interface SearchInput {
  recipe: Recipe;
  native: Kitchen;
  kitchen: Kitchen;
  foods: Foods;
  weights: Weights;
  /** Food that sets the batch, as the recipe calls it; null where the batch is chosen freely. */
  anchor: string | null;
}

/** A line that cannot be had in the kitchen's shops: its food is not sold there, or in whole packs only. */
export interface Unsold {
  line: Line;
  food: Food;
  /**
   * The larder knows no stand-in, or knows one and not what the line weighs; or a cook there uses whole packs of it, and nobody knows how
   * many of them the line asks for.
   */
  because: 'no-stand-in' | 'no-weight' | 'whole-packs';
}

/** A recipe searched for a kitchen. */
export interface Searched {
  input: SearchInput;
  context: DemandContext;
  plans: readonly PartPlan[];
  problem: Problem;
  /** Without an anchor, and with the one that is asked for. */
  free: Solved;
  solved: Solved;
  unsold: Unsold[];
}

/** The cheapest version of a recipe in a kitchen; null where no line with an amount is what `anchor` names. */
export function searchRecipe(input: SearchInput): Searched | null {
  const { recipe, native, kitchen, foods, weights } = input;
  const nativeLines = recipe.parts.flatMap((part) => withPlus(part.native.lines));
  const ownWeights = weightsStatedIn(nativeLines, native);
  const context: DemandContext = {
    recipe,
    native,
    kitchen,
    foods,
    ownWeights,
    weights,
    besideCure: hasCure(recipe),
  };
  const planned = planParts(context, input.anchor);
  const { anchor } = planned;
  if (anchor === undefined) return null;
  const own = { pans: pansOf(recipe, native, kitchen), weights, fixedBatch: context.besideCure };
  const mixed: Problem = { ...own, plans: planned.plans, anchor, fixed: 0 };
  const bySize = plansBySize(planned, context).map((each): Problem => ({ ...own, ...each }));
  const { problem, ...solved } = solveSized(bySize, mixed);
  // Without an anchor its food need not come in packs, and is planned anew.
  const free = anchor === null ? solved : (searchRecipe({ ...input, anchor: null })?.solved ?? solved);
  const { plans } = problem;
  return { input, context, plans, problem, free, solved, unsold: unsoldIn(plans, nativeLines, context) };
}

/** With eggs of one size where several lines need them, and with each line's own only where no one size serves. */
function solveSized(bySize: readonly Problem[], mixed: Problem): Solved & { problem: Problem } {
  const { problem, ...sized } = solveAny(bySize);
  return problem === null ? { ...solve(mixed), problem: mixed } : { ...sized, problem };
}

/** Whether a version can be made of what was found. */
export function isFeasible({ solved, unsold }: Searched): boolean {
  return solved.best !== null && unsold.length === 0;
}

/** Asked for by volume, of a weight that is not known, where a cook uses whole packs. */
function isPouredOut({ food, base, weight }: Demand, kitchen: Kitchen): boolean {
  return food !== null && base === 'ml' && weight > 0 && isUseWhole(soldIn(food, kitchen.id));
}

function unsoldIn(plans: readonly PartPlan[], lines: readonly Line[], { kitchen, foods }: DemandContext): Unsold[] {
  const demands = plans.flatMap((plan) => plan.demands);
  return lines.flatMap((line): Unsold[] => {
    const { food } = line;
    if (food === null || food.role === 'cure' || line.name === null) return [];
    const sold = soldIn(food, kitchen.id);
    if (sold === null) return [];
    // A line without an amount only names what takes the place.
    const own = demands.filter((demand) => demand.lines.includes(line));
    if (sold.sold)
      return own.some((demand) => isPouredOut(demand, kitchen)) ? [{ line, food, because: 'whole-packs' }] : [];
    if (standInOf(food, kitchen, foods) === null) return [{ line, food, because: 'no-stand-in' }];
    const isUnknown = own.some((demand) => demand.food === food || isPouredOut(demand, kitchen));
    return isUnknown ? [{ line, food, because: 'no-weight' }] : [];
  });
}
