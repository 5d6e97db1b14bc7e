import { dimensionOf } from '../amount/size.js';
import { type Stated, statedIn } from '../amount/stated.js';
import { Exact } from '../exact.js';
import type { Food, Pack, Sold } from '../food/food.js';
import type { Weighed } from '../food/weigh.js';
import { counterStepGrams, leastLeftGrams, soldIn } from '../kitchen/buy.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { type Measure, measuresBy } from '../kitchen/measure.js';
import { type Need, stateMeasure, tablesFor } from '../version/land.js';
import { stateRange } from '../version/land-range.js';
import type { Demand, Offer } from './demand.js';
import { isCounted } from './demands-of.js';
import { type OfferContext, OfferList, reach } from './offer-list.js';
import { type Weights, widestDrift } from './weights.js';

/** What a kitchen's tools, counter and wrappers measure of a demand. */
export function measuredOffer(demand: Demand, sold: Sold | null, context: OfferContext): Offer {
  const list = new OfferList();
  const density = densityOf(demand);
  const need = needOf(demand, context);
  const step = { base: Number.POSITIVE_INFINITY };
  addTables(tablesFor(need, context.kitchen), 0, { list, demand, sold, density, step }, context);
  addPinch(list, demand, context, density);
  // Fourteen cups of tomatoes are more than a cook counts out, and no scale weighs what has no known weight.
  if (!list.hasNear(demand.quantity) && need.dimension === 'volume')
    addTables(
      tablesFor({ ...need, dimension: 'mass' }, context.kitchen),
      other,
      { list, demand, sold, density, step },
      context,
    );
  if (!list.hasNear(demand.quantity))
    addTables(volumes(context.kitchen), other, { list, demand, sold, density, step }, context);
  return list.offer([], demand.base === 'g' && Number.isFinite(step.base) ? step.base : 0);
}

/** Awkwardness of a tool that a cook there would not take first. */
const other = 3;

interface Table {
  base: 'g' | 'ml';
  measures: readonly Measure[];
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
}

function addTables(tables: readonly Table[], least: number, growing: Growing, context: OfferContext): void {
  const { list, demand, sold, density, step } = growing;
  const { weights } = context;
  const within = reach(demand, context);
  const approx = statedIn(demand.reading)?.approx ?? false;
  for (const { base, measures } of tables) {
    const each = perBase(base, demand, density);
    if (each === null) continue;
    step.base = Math.min(step.base, stepAt(demand.quantity / each, measures) * each);
    for (const [low, high] of pairs(measures, demand, within, each)) {
      const size = Math.sqrt(low.near * high.near) * each;
      const awkward = weights.awkward * Math.max(least, low.awkwardness, high.awkwardness);
      const state = (): Stated => (low === high ? stateMeasure(low, approx) : stateRange(low, high, approx));
      list.add(demand, size, awkward + leftoverCost(size, demand, sold, weights), state);
    }
  }
}

function needOf(demand: Demand, { native, kitchen }: OfferContext): Need {
  const { food, reading, need } = demand;
  const unit = reading.amounts[0]?.unit ?? 'g';
  const plain = reading.pack === null && !isCounted(demand);
  const dimension = plain ? (dimensionOf(unit) === 'mass' ? 'mass' : 'volume') : food?.pours ? 'volume' : 'mass';
  const marked = food !== null && (soldIn(food, native.id)?.packs.some(({ marks }) => marks !== null) ?? false);
  const weighed = dimension === 'mass' ? atLeastOneStep(need, food, kitchen) : need;
  return { weighed, dimension, food, byWrapper: kitchen.scale !== null && marked };
}

/** A little less than the counter weighs off is bought as its first step. */
function atLeastOneStep(need: Weighed, food: Food | null, kitchen: Kitchen): Weighed {
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (sold === null || !sold.loose || sold.singly || sold.packs.length > 0 || need.grams === null) return need;
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

/** How much of the demand's base one unit of a table's base is. */
function perBase(base: 'g' | 'ml', demand: Demand, density: number | null): number | null {
  if (base === demand.base) return 1;
  if (density === null) return null;
  return demand.base === 'g' ? density : 1 / density;
}

/** Measures in reach; of a range both ends, on one unit of one tool, as far apart as the author's. */
function* pairs(
  measures: readonly Measure[],
  { spread }: Demand,
  { least, most }: { least: number; most: number },
  each: number,
): Generator<[Measure, Measure]> {
  const down = Math.sqrt(spread);
  for (let at = firstFrom(measures, least / each / down); at < measures.length; at++) {
    const low = measures[at];
    if (low === undefined || low.near * each * down > most) return;
    if (spread === 1) yield [low, low];
    else if (low.terms.length === 1) yield [low, upperEnd(measures, at, spread) ?? low];
  }
}

/** The measure of the same unit that is nearest to the upper end of a range; null where that is its lower end. */
function upperEnd(measures: readonly Measure[], from: number, spread: number): Measure | null {
  const low = measures[from];
  const unit = low?.terms[0]?.unit;
  if (low === undefined) return null;
  const wanted = low.near * spread;
  let below = low;
  for (let at = from + 1; at < measures.length; at++) {
    const measure = measures[at];
    if (measure === undefined || measure.terms.length > 1) continue;
    if (measure.terms[0]?.unit !== unit || measure.pack !== low.pack) continue;
    if (measure.near < wanted) below = measure;
    else return measure.near / wanted < wanted / below.near || below === low ? nearer(measure, low, wanted) : below;
  }
  return below === low ? null : below;
}

/** The upper end, unless the lower one is nearer to what is wanted: then the range is a single amount. */
function nearer(upper: Measure, low: Measure, wanted: number): Measure | null {
  return upper.near / wanted < wanted / low.near ? upper : null;
}

/** Index of the first measure of at least a size. */
function firstFrom(measures: readonly Measure[], size: number): number {
  let low = 0;
  let high = measures.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((measures[middle]?.near ?? 0) < size) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The step of a tool at a size: its smallest spoon, or the distance between the marks there. Shops and packs are no tools. */
function stepAt(size: number, measures: readonly Measure[]): number {
  const way = measures[0]?.way;
  if (way === 'counter' || way === 'pack') return Number.POSITIVE_INFINITY;
  const smallest = measures[0]?.near ?? Number.POSITIVE_INFINITY;
  if (way === 'spoon') return smallest;
  const at = firstFrom(measures, size);
  const [below, above] = [measures[at - 1]?.near, measures[at]?.near];
  if (below === undefined) return smallest;
  if (above === undefined) return below - (measures[at - 2]?.near ?? 0);
  return above - below;
}

/** Under three quarters of the smallest spoon a cook takes a pinch, half of it. Common practice, no source. */
const pinch = { under: 0.75, ofSpoon: 0.5, awkwardness: 3 } as const;

function addPinch(list: OfferList, demand: Demand, { kitchen, weights }: OfferContext, density: number | null): void {
  const spoon = measuresBy(kitchen, 'spoon')[0]?.near;
  const each = perBase('ml', demand, density);
  const role = demand.food?.role;
  if (spoon === undefined || each === null || (role !== 'seasoning' && role !== 'salt')) return;
  if (demand.quantity / each >= spoon * pinch.under) return;
  const term = { low: new Exact(1), high: null, unit: 'pinch' } as const;
  const stated: Stated = { statements: [[term]], pack: null, eggSize: null, approx: false };
  list.add(demand, spoon * pinch.ofSpoon * each, weights.awkward * pinch.awkwardness, () => stated);
}

/** What remains of the packs bought, as a share of them, by how it keeps. */
function leftoverCost(size: number, { food, base }: Demand, sold: Sold | null, weights: Weights): number {
  if (food === null || sold === null || base !== 'g' || sold.loose || sold.tap || sold.packs.length === 0) return 0;
  const { where, days, freezes } = food.keeps;
  if (where !== 'fridge' || days === null) return 0;
  const cost = freezes ? weights.leftoverFrozen : days < 7 ? weights.leftoverFresh : 0;
  return cost === 0 ? 0 : cost * shareLeft(size, sold.packs);
}

const shares = new WeakMap<readonly Pack[], Map<number, number>>();

/** Share of the packs bought that is left; looked up, since the same measures of a food come again in every recipe. */
function shareLeft(grams: number, packs: readonly Pack[]): number {
  let known = shares.get(packs);
  if (known === undefined) {
    known = new Map();
    shares.set(packs, known);
  }
  const rounded = Math.round(grams * 1e6);
  let share = known.get(rounded);
  if (share === undefined) {
    const { bought, left } = leastLeftGrams(grams, packs);
    share = bought === 0 ? 0 : left / bought;
    known.set(rounded, share);
  }
  return share;
}
