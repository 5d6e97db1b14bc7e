import { dimensionOf } from '../../amount/size.js';
import { statedIn } from '../../amount/stated.js';
import { isGesture } from '../../amount/unit-kind.js';
import { Exact } from '../../exact.js';
import type { Foods } from '../../food/find/find.js';
import type { Food } from '../../food/food.js';
import { addWeighed, type StatedWeights, shareByWeight, type Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { standInOf } from '../../kitchen/shop/stand-in.js';
import { isOptional } from '../../recipe/is-optional.js';
import type { Line, Part, Recipe } from '../../recipe/recipe.js';
import { withPlus } from '../../recipe/with-plus.js';
import { eggLines } from '../../version/egg/egg-lines.js';
import { weighNeed } from '../../version/weigh/weigh-line.js';
import { middle } from '../../version/weigh/weighed-ends.js';
import { type WeighedAmount, weighingOf } from '../../version/weigh/weighing.js';
import { contentsOf } from '../ratio/contents.js';
import { type Weights, widestDrift } from '../weights.js';
import type { Demand } from './demand.js';

/** What demands are made from. */
export interface DemandContext {
  recipe: Recipe;
  native: Kitchen;
  kitchen: Kitchen;
  foods: Foods;
  ownWeights: StatedWeights;
  weights: Weights;
  /** A curing salt is among the lines: of what it is measured for there must be no less. */
  besideCure: boolean;
}

const offersNothing = {
  choices: [],
  state: () => {
    throw new RangeError('No choice was offered.');
  },
  wholes: [],
  stepGrams: 0,
};

/**
 * Every line of a part that states an amount, as what has to be had in the other kitchen; stand-ins merged with lines of the same food.
 * Nothing is offered for them yet.
 */
export function demandsOf(part: Part, context: DemandContext): Demand[] {
  const demands: Demand[] = [];
  for (const line of withPlus(part.native.lines)) {
    if (statedIn(line.reading) === null) continue;
    for (const demand of ofLine(line, context)) {
      const same = demand.food === null ? undefined : demands.find((other) => mergeable(other, demand));
      if (same === undefined) demands.push(demand);
      else merge(same, demand);
    }
  }
  return demands;
}

/** Only what a stand-in brings is merged: two lines of one food that the author kept apart stay apart. */
function mergeable(one: Demand, other: Demand): boolean {
  const standsIn = [one, other].some(({ lines, food }) => lines.some((line) => line.food !== food));
  const keptApart = one.lines.some((line) => other.lines.some((each) => each.food === line.food));
  return standsIn && !keptApart && one.food === other.food && one.base === other.base;
}

function merge(into: Demand, from: Demand): void {
  // The line of the food itself says how it is measured.
  if (from.lines.some((line) => line.food === from.food)) into.reading = from.reading;
  into.lines.push(...from.lines);
  into.portions.push(...from.portions);
  into.quantity += from.quantity;
  into.spread = Math.max(into.spread, from.spread);
  into.weight = Math.max(into.weight, from.weight);
  into.widest = Math.min(into.widest, from.widest);
  into.need = addWeighed(into.need, from.need);
  into.low = addWeighed(into.low, from.low);
  into.weighed = { ...into.weighed, drainedGrams: null };
}

function ofLine(line: Line, context: DemandContext): Demand[] {
  const { native, kitchen, foods, ownWeights } = context;
  const weighed = weighNeed(line.reading, weighingOf(line.reading, line.food, native, ownWeights), kitchen);
  if (weighed === null) return [];
  const need = middle(weighed);
  const standIn = line.food === null || line.food.role === 'cure' ? null : standInOf(line.food, kitchen, foods);
  const [only, ...others] = standIn ?? [];
  if (standIn === null || only === undefined || (need.grams === null && others.length > 0))
    return [demandFor(line, line.food, { need, low: weighed.low }, weighed, context)];
  // A pinch of one salt is a pinch of another.
  if (need.grams === null) return [demandFor(line, only.food, { need, low: weighed.low }, weighed, context)];
  return standIn.map(({ food, share }) => {
    const scales = { units: kitchen.units, prep: '', stated: ownWeights };
    const shareOf = (whole: Weighed): Weighed => shareByWeight(whole, share, food, scales);
    return demandFor(line, food, { need: shareOf(need), low: shareOf(weighed.low) }, weighed, context);
  });
}

function demandFor(
  line: Line,
  food: Food | null,
  { need, low }: { need: Weighed; low: Weighed },
  weighed: WeighedAmount,
  context: DemandContext,
): Demand {
  const term = statedIn(line.reading)?.statements[0]?.[0];
  const spread = term == null || term.high === null || term.low.isZero() ? 1 : term.high.dividedBy(term.low).toNumber();
  const base = need.grams !== null ? 'g' : need.millilitres !== null ? 'ml' : 'count';
  const counted = (weighed.count ?? new Exact(1)).times(Math.sqrt(spread));
  const loose = eggLines(context.recipe).loose.has(line.reading);
  return {
    ...offersNothing,
    lines: [line],
    portions: [low],
    food,
    reading: line.reading,
    need,
    low,
    weighed,
    base,
    quantity: (need.grams ?? need.millilitres ?? counted).toNumber(),
    spread,
    weight: loose ? 0 : weightOf(line, food, context),
    // What a dish does without stands in no version's way: the nearest that is to be had will do.
    widest: isOptional(line) ? Number.POSITIVE_INFINITY : widestDrift,
    loose,
    contents: food === null || loose ? [] : contentsOf(food, context.foods),
  };
}

/** Gestures have no size to drift from; seasonings matter less, and what is served beside the dish not at all. */
function weightOf(line: Line, food: Food | null, { weights }: DemandContext): number {
  const unit = line.reading.amounts[0]?.unit;
  if (isOptional(line) || (unit !== undefined && isGesture(unit))) return 0;
  if (food?.role === 'seasoning') return weights.seasoning;
  return weights.plain;
}

/** Whether the author counts pieces of it. */
export function isCounted({ reading }: Demand): boolean {
  const unit = reading.amounts[0]?.unit;
  return reading.pack === null && unit !== undefined && dimensionOf(unit) === 'count';
}
