import { dimensionOf, isMassUnit, isVolumeUnit } from '../../amount/size.js';
import { firstStatement, type Stated, statedIn } from '../../amount/stated.js';
import type { Food, Pack, Sold } from '../../food/food.js';
import type { Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Measure } from '../../kitchen/measure/measure.js';
import { measuresBy } from '../../kitchen/measure/measures-by.js';
import { marksOn } from '../../kitchen/measure/wrapper.js';
import { soldIn } from '../../kitchen/shop/buy.js';
import { counterStepGrams, isWeighedOffOnly } from '../../kitchen/shop/counter.js';
import { stateMeasure } from '../../version/convert/land.js';
import { stateRange } from '../../version/convert/land-range.js';
import { ownMeasure } from '../../version/convert/own-measure.js';
import { type Need, type Table, tablesFor } from '../../version/convert/tables-for.js';
import type { Demand, Offer } from '../search/demand.js';
import { isCounted } from '../search/demands-of.js';
import { type Weights, widestDrift } from '../weights.js';
import { addCountedPacks } from './counted-packs.js';
import { addUsedUp, addUsedWhole } from './emptied-packs.js';
import { isShort, leftoverCost, leftoverOfPacks } from './leftover-cost.js';
import { otherTool, pairs, perBase, stepAt, widthCost } from './measured-pairs.js';
import type { OfferContext } from './offer-context.js';
import { OfferList, reach } from './offer-list.js';
import { isStandIn } from './piece-offer.js';
import { addPinch } from './pinch-offer.js';
import { addUnchecked } from './unchecked-weight.js';

/** What a kitchen's tools, counter and wrappers measure of a demand. */
export function measuredOffer(demand: Demand, sold: Sold | null, context: OfferContext): Offer {
  const list = new OfferList();
  const density = densityOf(demand);
  const need = needOf(demand, context);
  const step = { base: Number.POSITIVE_INFINITY };
  const inPacks = addCountedPacks(list, demand, sold, context);
  const growing = { list, demand, sold, density, step, beside: inPacks ? notInPacks : 0 };
  addOwnMeasure(list, demand, sold, context);
  addUsedWhole(list, demand, sold, context);
  addTables(tablesFor(need, context.kitchen), 0, growing, context);
  addUsedUp(list, demand, sold, context);
  addPinch(list, demand, context, density);
  // Nothing else is near: then a little more than its packs hold.
  if (!list.hasNear(demand.quantity))
    addTables(tablesFor(need, context.kitchen), 0, { ...growing, evenShort: true }, context);
  // Fourteen cups of tomatoes are more than a cook counts out, and no scale weighs what has no known weight.
  if (!list.hasNear(demand.quantity) && need.dimension === 'volume')
    addTables(tablesFor({ ...need, dimension: 'mass' }, context.kitchen), otherTool, growing, context);
  if (!list.hasNear(demand.quantity)) addTables(volumes(context.kitchen), otherTool, growing, context);
  if (!list.hasNear(demand.quantity)) addUnchecked(list, demand, context);
  return list.offer([], demand.base === 'g' && Number.isFinite(step.base) ? step.base : 0);
}

function volumes(kitchen: Kitchen): Table[] {
  return (['jug', 'cup', 'spoon'] as const).map((way) => ({ base: 'ml', measures: measuresBy(kitchen, way) }));
}

interface Growing {
  list: OfferList;
  demand: Demand;
  sold: Sold | null;
  density: number | null;
  /** Smallest step of its tools so far, in the demand's base. */
  step: { base: number };
  /** Whether more than the packs hold that are bought for it is offered too. */
  evenShort?: boolean;
  /** Awkwardness that is added to every measure's own. */
  beside: number;
}

/** Labels in the unit that a tool measures by: a carton of 284 ml holds no 290 ml. A cup of sugar may well fill the shop's pack. */
function areMeasuredAs(base: 'g' | 'ml', packs: readonly Pack[]): boolean {
  return packs.every(({ unit }) => (base === 'g' ? isMassUnit(unit) : unit !== 'count' && isVolumeUnit(unit)));
}

function addTables(tables: readonly Table[], least: number, growing: Growing, context: OfferContext): void {
  const { list, demand, sold, density, step } = growing;
  const { weights } = context;
  const within = reach(demand, context);
  const approx = statedIn(demand.reading)?.approx ?? false;
  for (const { base, measures } of tables) {
    const each = perBase(base, demand, density);
    if (each === null) continue;
    const other = isSpooned(demand, context) ? Math.max(least, notSpooned(measures[0]?.way, demand)) : least;
    const isLabelled = growing.evenShort !== true && sold !== null && areMeasuredAs(base, sold.packs);
    step.base = Math.min(step.base, stepAt(demand.quantity / each, measures) * each);
    for (const [low, high] of pairs(measures, demand, within, each)) {
      const size = Math.sqrt(low.near * high.near) * each;
      if (isLabelled && demand.base === 'g' && isShort(size, sold)) continue;
      const awkward = weights.awkward * (growing.beside + Math.max(other, low.awkwardness, high.awkwardness));
      const state = (): Stated => (low === high ? stateMeasure(low, approx) : stateRange(low, high, approx));
      const width = widthCost(low === high ? 1 : high.near / low.near, demand, weights);
      list.add(demand, size, awkward + width + leftOf(high, size, demand, sold, weights), state);
    }
  }
}

/** Awkwardness beside its own of any measure for what the author counts in packs: a pack that is a tenth larger is used all the same. */
const notInPacks = 10;

/**
 * Awkwardness of any other tool for what the author spoons: a jug holds a few spoons of oil, but nobody weighs a tablespoon of ginger. Both
 * ends of a range are not always spooned: `25–30 g` for 3 to 4 tablespoons of flour.
 */
function notSpooned(way: Measure['way'] | undefined, { spread }: Demand): number {
  if (way === 'spoon') return 0;
  return way === 'scale' && spread === 1 ? 4 : 1;
}

/** Whether the author measures it by the spoon, and not because a wrapper says what a spoon of it is. */
function isSpooned({ reading, food }: Demand, { native }: OfferContext): boolean {
  const unit = reading.amounts[0]?.unit;
  return reading.pack === null && (unit === 'tsp' || unit === 'tbsp') && marksOn(food, native) === null;
}

/** A part of a pack leaves the rest of that one. */
function leftOf({ pack, near }: Measure, size: number, demand: Demand, sold: Sold | null, weights: Weights): number {
  if (pack === undefined) return leftoverCost(size, demand, sold, weights);
  return leftoverOfPacks(near / pack.grams.toNumber(), demand.food?.keeps ?? null, weights);
}

/** A range of spoons that the kitchen measures as it is written, and heaped spoons, are offered so. */
function addOwnMeasure(list: OfferList, demand: Demand, sold: Sold | null, context: OfferContext): void {
  const stated = statedIn(demand.reading);
  if (stated === null || demand.lines.length > 1 || demand.lines[0]?.food !== demand.food) return;
  const ratio = ownMeasure(stated, demand.food, context);
  if (ratio === null) return;
  const size = demand.quantity * ratio.toNumber();
  const fixed = leftoverCost(size, demand, sold, context.weights);
  list.add(demand, size, fixed, () => firstStatement(stated));
}

function needOf(demand: Demand, { native, kitchen }: OfferContext): Need {
  const { food, reading, need } = demand;
  const unit = reading.amounts[0]?.unit ?? 'g';
  // Pounds of a fruit may be pounds of another, its juice is measured out.
  const plain = reading.pack === null && !isCounted(demand) && !(food?.pours === true && isStandIn(demand));
  const dimension = plain ? (dimensionOf(unit) === 'mass' ? 'mass' : 'volume') : food?.pours ? 'volume' : 'mass';
  const marked = marksOn(food, native) !== null;
  const isWeighed = dimension === 'mass' || (kitchen.scale !== null && food?.pours === false);
  const weighed = isWeighed ? atLeastOneStep(need, food, kitchen) : need;
  return { spread: demand.spread, weighed, dimension, food, byWrapper: kitchen.scale !== null && marked };
}

/** Where nothing at home weighs it, a little less than the counter weighs off is its first step. */
function atLeastOneStep(need: Weighed, food: Food | null, kitchen: Kitchen): Weighed {
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (kitchen.scale !== null || need.grams === null || !isWeighedOffOnly(sold)) return need;
  const step = counterStepGrams(kitchen);
  const isNear = need.grams.lessThan(step) && Math.log(step.dividedBy(need.grams).toNumber()) <= widestDrift;
  return isNear ? { ...need, grams: step } : need;
}

/** Grams per millilitre; null where one of them is not known. */
function densityOf({ need: { grams, millilitres } }: Demand): number | null {
  return grams === null || millilitres === null || millilitres.isZero()
    ? null
    : grams.toNumber() / millilitres.toNumber();
}
