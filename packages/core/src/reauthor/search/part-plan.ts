import type { Part } from '../../recipe/recipe.js';
import { anchorLine, foodIdOf } from '../anchor-line.js';
import { offerContext } from '../offer/offer-context.js';
import { offerFor } from '../offer/offer-for.js';
import { packOffer } from '../offer/pack-offer.js';
import { type Constraint, constraintsOf, type GuardedRatio, guards } from '../ratio/constraint.js';
import { guardedRatios } from '../ratio/guarded-ratios.js';
import { anchorSpan, type BatchSpan, packSpan, type Weights, widestDrift } from '../weights.js';
import type { Demand, Offer } from './demand.js';
import { type DemandContext, demandsOf } from './demands-of.js';

/** A part of a recipe made ready for the search. */
export interface PartPlan {
  part: Part;
  demands: Demand[];
  ratios: GuardedRatio[];
  constraintsAt(batch: number): Constraint[];
  /** What is offered to a demand however far from its need, for where nothing is near. */
  beyond(demand: Demand): Offer;
  /** The same of its packs alone, which an anchor has to come in; null where it comes in none. */
  packsBeyond(demand: Demand): Offer | null;
}

/** All parts of a recipe, with the demand that an explicit anchor names. */
export interface Plans {
  plans: PartPlan[];
  /** Null where no anchor is asked for, undefined where none is found by that name. */
  anchor: Demand | null | undefined;
  /** Batches that choices are offered for. */
  batches: BatchSpan;
}

/** Demands, offers and guarded ratios of a recipe in another kitchen. */
export function planParts(context: DemandContext, anchorName: string | null): Plans {
  const parts = context.recipe.parts.map((part) => ({ part, demands: demandsOf(part, context) }));
  const all = parts.flatMap(({ demands }) => demands);
  const anchor = anchorName === null ? null : anchorNamed(anchorName, all);
  const batches = anchor == null ? packSpan : anchorSpan;
  const offers = offerContext(context, batches);
  for (const demand of all) Object.assign(demand, offerFor(demand, offers));
  // A food that is not used whole may still be asked to come out in whole packs.
  if (anchor != null && anchor.wholes.length === 0) Object.assign(anchor, packOffer(anchor, offers) ?? {});
  return { plans: parts.map(({ part, demands }) => planDemands(part, demands, context)), anchor, batches };
}

/** Demands, offers and guarded ratios of one part by itself. */
export function planPart(part: Part, context: DemandContext): PartPlan {
  const demands = demandsOf(part, context);
  const offers = offerContext(context, packSpan);
  for (const demand of demands) Object.assign(demand, offerFor(demand, offers));
  return planDemands(part, demands, context);
}

const anyBatch: BatchSpan = { least: 1 / 20, most: 20 };

function planDemands(part: Part, demands: Demand[], context: DemandContext): PartPlan {
  const ratios = guardedRatios(demands, context);
  weighGuarded(demands, ratios, context.weights);
  return {
    part,
    demands,
    ratios,
    constraintsAt: (batch) => constraintsOf(ratios, batch),
    beyond: (demand) => offerFor(demand, offerContext(context, anyBatch)),
    packsBeyond: (demand) => packOffer(demand, offerContext(context, anyBatch)),
  };
}

/** The demand of the line that an anchor names, or of a stand-in by its own name. */
function anchorNamed(name: string, demands: readonly Demand[]): Demand | undefined {
  const line = anchorLine(
    name,
    demands.flatMap(({ lines }) => lines),
  );
  return demands.find(({ lines, food }) => (line === null ? food?.id === foodIdOf(name) : lines.includes(line)));
}

/**
 * A line in a guarded ratio weighs more; salt, eggs, a seasoning and an optional line have their own weight. What no tool comes near to
 * weighs less: a third of a teaspoon of salt sets no batch.
 */
function weighGuarded(demands: readonly Demand[], ratios: readonly GuardedRatio[], weights: Weights): void {
  demands.forEach((demand, at) => {
    if (demand.weight === 0) return;
    demand.weight = weightIn(ratios, { demand, at }, weights) * shareTold(ratios, { demand, at });
  });
}

function weightIn(
  ratios: readonly GuardedRatio[],
  { demand: { weight, food }, at }: { demand: Demand; at: number },
  weights: Weights,
): number {
  if (food?.role === 'seasoning') return weight;
  if (food?.role === 'salt') return weights.salt;
  const isGuarded = ratios.some((ratio) => guards(ratio, at));
  if (!isGuarded) return weight;
  return food?.role === 'egg' ? weights.egg : weights.guarded;
}

/**
 * Of a line's own weight what is left where no tool comes as near as the limit: what lands nearest costs no more than a drift of the limit
 * does. Squared, as drift is.
 */
function shareTold(ratios: readonly GuardedRatio[], { demand, at }: { demand: Demand; at: number }): number {
  const limits = ratios.flatMap(({ numerator, halfStep, limit }) =>
    (numerator[at] ?? 0) > 0 && halfStep > 0 ? [limit] : [],
  );
  if (limits.length === 0) return 1;
  const wanted = Math.log(demand.quantity);
  const nearest = demand.choices.reduce((least, { log }) => Math.min(least, Math.abs(log - wanted)), widestDrift);
  return Math.min(1, ...limits.map((limit) => (limit / Math.max(nearest, limit)) ** 2));
}
