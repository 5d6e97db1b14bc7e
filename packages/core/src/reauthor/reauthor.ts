import { Exact } from '../exact.js';
import type { Recipe } from '../recipe/recipe.js';
import { kitchenOf, type Setting } from '../version/setting.js';
import type { Version } from '../version/version.js';
import { explainInfeasible, type Infeasible } from './infeasible/infeasible.js';
import { makesAt } from './outcome/makes.js';
import { type PanReport, panReports, timeCaution } from './outcome/pan-report.js';
import { type RatioReport, ratioReports } from './outcome/ratio-report.js';
import { reauthoredVersion } from './outcome/reauthored-version.js';
import { type BatchFactor, isSameFactor } from './search/batch-factors.js';
import type { DemandContext } from './search/demands-of.js';
import { exactShare, weighChosen } from './search/exact-share.js';
import { isFeasible, type Searched, searchRecipe } from './search/search-recipe.js';
import type { Solution } from './search/solve.js';
import { defaultWeights, type Weights } from './weights.js';

/** A whole recipe re-authored for another kitchen, with its reasons. */
export interface Reauthored {
  version: Version;
  /** The use-whole food that set the batch, as the author calls it; null at batch factor 1, and where nothing is used whole. */
  anchor: string | null;
  /** What it makes, in the words of the recipe; null where that says nothing. */
  makes: string | null;
  /** Every guarded ratio of every part; empty where no amounts could be chosen. */
  ratios: RatioReport[];
  /** The pan that the batch is baked in, where one is. */
  pans: PanReport[];
  /** What was minimised, without a unit; infinite where no amounts could be chosen. */
  cost: number;
  /** The best at another batch; without an anchor, where the one that is named costs over twice as much. Null where none would do. */
  runnerUp: { batchFactor: number; anchor: string | null; cost: number } | null;
  /** Null for a version that can be bought and measured and keeps its ratios; else why there is none, `version` being the nearest. */
  infeasible: Infeasible | null;
}

/** Why a recipe is not re-authored at all. */
export type Refusal =
  | { kind: 'preserve' }
  | { kind: 'native-kitchen' }
  | { kind: 'no-ingredients' }
  | { kind: 'unknown-anchor'; anchor: string };

/** How a recipe is re-authored. */
export interface ReauthorOptions {
  /** Food that sets the batch, as the recipe calls it; the recipe's own `anchor` where it is undefined. */
  anchor?: string;
  /** Those of the setting where they are left out. */
  weights?: Weights;
}

/**
 * The recipe for another kitchen, all lines together: batch factor, whole packs and measurable amounts that keep the dish's ratios at the
 * least cost. The search runs on floats; what it chooses is computed exactly.
 *
 * @param kitchenId Where the version is to be cooked.
 * @returns Why there can be none at all: a preserve, no ingredients, the native kitchen, an anchor that no line with an amount is called.
 *   Any other obstacle is `infeasible`.
 * @throws {RangeError} If a kitchen is not in the setting.
 */
export function reauthor(
  recipe: Recipe,
  kitchenId: string,
  setting: Setting,
  options: ReauthorOptions = {},
): Reauthored | Refusal {
  const kitchen = kitchenOf(kitchenId, setting);
  const native = kitchenOf(recipe.kitchen, setting);
  if (recipe.preserve === true) return { kind: 'preserve' };
  if (kitchen.id === native.id) return { kind: 'native-kitchen' };
  if (recipe.parts.length === 0) return { kind: 'no-ingredients' };
  const weights = options.weights ?? setting.weights ?? defaultWeights;
  const anchor = options.anchor ?? recipe.anchor;
  const searched = searchRecipe({ recipe, native, kitchen, foods: setting.foods, weights, anchor });
  return searched === null ? { kind: 'unknown-anchor', anchor: anchor ?? '' } : reauthored(searched, setting);
}

/** Whether a re-authoring was refused. */
export function isRefusal(result: Reauthored | Refusal): result is Refusal {
  return 'kind' in result;
}

function reauthored(searched: Searched, setting: Setting): Reauthored {
  const { plans, context, problem, free } = searched;
  const { anchor } = problem;
  const { recipe } = context;
  const { best, runnerUp } = searched.solved;
  const infeasible = isFeasible(searched) ? null : explainInfeasible(searched);
  const chosen = best ?? infeasible?.nearest ?? null;
  const batch = chosen === null ? new Exact(1) : exactBatch(chosen, context);
  // An anchor that costs over twice as much as none is worth a second thought.
  const second =
    anchor !== null && best !== null && free.best !== null && best.cost > 2 * free.best.cost ? free.best : runnerUp;
  const pans = chosen === null ? [] : panReports(chosen);
  const outcome = { plans, solution: chosen, batch, cautions: timeCaution(pans, batch) };
  return {
    version: reauthoredVersion(outcome, context, setting),
    anchor: chosen === null || batch.equals(1) ? null : anchorWords(chosen.batch),
    makes: makesAt(recipe.makes, {
      batch,
      native: context.native,
      kitchen: context.kitchen,
      pans: (chosen?.pans ?? []).map(({ demand, offer }) => ({ written: demand.mention.reading, size: offer.size })),
    }),
    ratios: chosen === null ? [] : ratioReports(plans, chosen),
    pans,
    cost: chosen?.cost ?? Number.POSITIVE_INFINITY,
    runnerUp:
      second === null
        ? null
        : { batchFactor: second.batch.factor, anchor: anchorWords(second.batch), cost: second.cost },
    infeasible,
  };
}

/** A batch that a measure sets has no anchor: nothing of it is used whole. */
function anchorWords({ anchor, choice }: BatchFactor): string | null {
  return choice === null ? null : (anchor?.lines[0]?.reading.food?.text ?? null);
}

/** The anchor's amount over its native need, exactly. */
function exactBatch({ batch }: Solution, context: DemandContext): Exact {
  const { anchor, factor } = batch;
  if (anchor === null) return new Exact(1);
  const choice = batch.choice ?? anchor.choices.find(({ size }) => isSameFactor(size / anchor.quantity, factor));
  if (choice === undefined) return new Exact(factor);
  const stated = anchor.state(choice.index);
  return exactShare(anchor, stated, weighChosen(anchor, stated, context), context) ?? new Exact(factor);
}
