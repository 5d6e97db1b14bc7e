import type { Term } from '../../amount/stated.js';
import type { Dimension } from '../../amount/unit.js';
import { Exact } from '../../exact.js';
import type { Food } from '../../food/food.js';
import type { Weighed } from '../../food/weigh.js';
import type { Kitchen, Way } from '../../kitchen/kitchen.js';
import { type Measure, sized } from '../../kitchen/measure/measure.js';
import { measuresBy } from '../../kitchen/measure/measures-by.js';
import { mostSpooned } from '../../kitchen/measure/most-spooned.js';
import { leastByEye, packMeasures } from '../../kitchen/measure/pack-parts.js';
import { spoonsOfRange } from '../../kitchen/measure/spoons-of-range.js';
import { wrapperCuts } from '../../kitchen/measure/wrapper.js';
import { soldIn } from '../../kitchen/shop/buy.js';
import { counterStepGrams, counterSteps, isOnCounterStep, isWeighedOffOnly } from '../../kitchen/shop/counter.js';
import { equalPacks } from '../../kitchen/shop/equal-packs.js';

/** What has to be measured out. */
export interface Need {
  weighed: Weighed;
  /** What the author measured it by: the same kind of unit is kept where the kitchen measures the food so. */
  dimension: Dimension;
  food: Food | null;
  /** Measured off a wrapper where it was written: a scale does that elsewhere. */
  byWrapper: boolean;
  /** Less than is needed will not do: beside a cure nothing is rounded down. */
  atLeast?: boolean;
  /** Upper end over lower end where a range is needed: then `weighed` is one of its ends or between them. */
  spread?: number;
}

/** What one way of measuring lands on, ascending, in grams or millilitres. */
export interface Table {
  base: 'g' | 'ml';
  measures: readonly Measure[];
}

/** Tables of what the kitchen can measure for this food, first choice first. */
export function tablesFor(need: Need, kitchen: Kitchen): Table[] {
  const { food, weighed, dimension, byWrapper } = need;
  if (food !== null && isWeighedByShop(need, food, kitchen)) return counterTable(need, food, kitchen);
  const ways: Way[] = [];
  const { spread = 1 } = need;
  const smallVolume = weighed.millilitres?.lessThanOrEqualTo(mostSpooned(kitchen).times(Math.sqrt(spread))) ?? false;
  const weighs = kitchen.scale !== null;
  if (smallVolume && !(byWrapper && weighs && isMoreThanDab(weighed)) && !(dimension === 'mass' && weighs))
    ways.push('spoon');
  const pours = food?.pours ?? dimension === 'volume';
  const atHome = (pours ? kitchen.measures.pours : kitchen.measures.dry).filter((way) => way !== 'spoon');
  if (!isDividedOnly(need, food, kitchen)) ways.push(...atHome);
  if (dimension === 'mass' && weighs && !ways.includes('scale')) ways.push('scale');
  // Too little for the scale: the smallest spoons are still there, and cups for a few leaves.
  if (isBelowScale(weighed, kitchen)) {
    const isLight = weighs && weighed.grams !== null;
    if ((smallVolume || isLight) && !ways.includes('spoon')) ways.push('spoon');
    if (isLight && dimension === 'volume' && !ways.includes('cup')) ways.push('cup');
  }
  const sold = food === null ? null : soldIn(food, kitchen.id);
  const measuresOf = (way: Way): readonly Measure[] => {
    if (way === 'spoon' && spread > 1) return spoonsOfRange(kitchen);
    const measures = measuresBy(kitchen, way);
    if (way === 'cup' && !pours) return inCups(measures);
    return way === 'scale' && isWeighedOffOnly(sold) ? onCounterSteps(measures, kitchen) : measures;
  };
  const tables = ways.map((way): Table => ({ base: way === 'scale' ? 'g' : 'ml', measures: measuresOf(way) }));
  if (food === null) return tables;
  const cuts = wrapperCuts(food, kitchen);
  return [
    ...(cuts.length > 0 ? [{ base: 'g' as const, measures: cuts }, ...withoutMarked(tables)] : tables),
    ...counterTable(need, food, kitchen),
    ...packTable(need, food, kitchen),
  ];
}

const dryCups = new WeakMap<readonly Measure[], readonly Measure[]>();

/** Quarts are of what pours: past the cups that are counted, flour is written in cups all the same. */
function inCups(measures: readonly Measure[]): readonly Measure[] {
  const known = dryCups.get(measures);
  if (known !== undefined) return known;
  const cups = measures.map((measure): Measure => {
    const [term] = measure.terms;
    if (term?.unit !== 'quart') return measure;
    return { ...measure, terms: [{ ...term, low: term.low.times(cupsInQuart), unit: 'cup' }] };
  });
  dryCups.set(measures, cups);
  return cups;
}

const cupsInQuart = 4;

/** A spoonful of butter for the pan is not weighed anywhere. */
function isMoreThanDab({ grams }: Weighed): boolean {
  return grams === null || grams.greaterThanOrEqualTo(20);
}

function isBelowScale({ grams }: Weighed, kitchen: Kitchen): boolean {
  const least = measuresBy(kitchen, 'scale')[0]?.size;
  return grams === null || least === undefined || grams.lessThan(least);
}

/** Where a wrapper says what a cup or a tablespoon of a food is, no cup or tablespoon says otherwise. */
function withoutMarked(tables: readonly Table[]): Table[] {
  const isMarked = ({ terms }: Measure): boolean => terms.some(({ unit }) => unit === 'tbsp' || unit === 'cup');
  return tables.map((table) => ({ ...table, measures: table.measures.filter((measure) => !isMarked(measure)) }));
}

/** A weight of a food that is only weighed off at the counter is bought as it will be used. */
function isWeighedByShop({ dimension, weighed }: Need, food: Food, kitchen: Kitchen): boolean {
  const sold = soldIn(food, kitchen.id);
  if (!sold?.loose || sold.packs.length > 0) return false;
  // A cup of it is weighed where there is a scale, and so at the shop already.
  if (dimension === 'volume' && (kitchen.scale === null || sold.singly || food.pours)) return false;
  // Potatoes are sold singly too: a scale weighs any weight of them, and without one nobody fills seven cups.
  if (sold.singly && (kitchen.scale !== null || food.pours)) return false;
  const least = counterStepGrams(kitchen).times(sold.singly ? leastOfStep.times(fewestSteps) : leastOfStep);
  return weighed.grams?.greaterThanOrEqualTo(least) ?? false;
}

/** As much of a step as counts as equal to it. */
const leastOfStep = new Exact(1).minus(equalPacks);

const onSteps = new WeakMap<readonly Measure[], readonly Measure[]>();

/** Those marks of a kitchen's scale that its counters weigh off too, and less than that: it is bought as one step and weighed at home. */
function onCounterSteps(marks: readonly Measure[], kitchen: Kitchen): readonly Measure[] {
  let kept = onSteps.get(marks);
  if (kept === undefined) {
    const least = counterStepGrams(kitchen);
    kept = marks.filter(({ size }) => size.lessThan(least) || isOnCounterStep(size, kitchen));
    onSteps.set(marks, kept);
  }
  return kept;
}

/** Under so many of the counter's steps a cup or a piece is nearer to what is wanted: a pound. Common practice, no source. */
const fewestSteps = 4;

/** What the shop weighs off, where a food is bought so and there is nothing at home to weigh it with. */
function counterTable(need: Need, food: Food, kitchen: Kitchen): Table[] {
  const sold = soldIn(food, kitchen.id);
  const grams = need.weighed.grams;
  if (sold === null || !sold.loose || grams === null) return [];
  if (need.dimension === 'volume' && kitchen.scale === null) return [];
  if (kitchen.scale !== null && !isWeighedByShop(need, food, kitchen)) return [];
  const { unit } = kitchen.counter;
  const measures = counterSteps(kitchen).flatMap(({ step, grams: each }, at): Measure[] => {
    const { from, to } = around(grams.dividedBy(each).toNumber());
    const counts = Array.from({ length: Math.max(to - from + 1, 0) }, (_, count) => from + count);
    // Three thirds are a pound, and nobody asks for a third more of many.
    const asked = at === 0 ? counts : counts.filter((count) => count % 3 !== 0 && count <= mostThirds);
    return asked.map((count) => {
      const terms: Term[] = [{ low: step.times(count), high: null, unit }];
      return { way: 'counter', terms, base: 'g', ...sized(each.times(count)), awkwardness: 0 };
    });
  });
  return [{ base: 'g', measures: measures.sort((one, other) => one.near - other.near) }];
}

/** Up to 2⅔ lb. */
const mostThirds = 8;

/** Whole numbers from under half to over twice a need: as far as any batch of it goes. */
function around(steps: number): { from: number; to: number } {
  return { from: Math.max(1, Math.floor(steps / 2)), to: Math.ceil(steps * 2) };
}

/** Whole packs, and parts of them by eye, where there is nothing at home to weigh with: the shop has weighed them. */
function packTable(need: Need, food: Food, kitchen: Kitchen): Table[] {
  const { grams } = need.weighed;
  if (kitchen.scale !== null || need.dimension === 'volume' || grams === null) return [];
  return [{ base: 'g', measures: packMeasures(grams, food, kitchen) }];
}

/** Nobody fills a cup with bacon, unless it is less than a part of a pack, or the author does. */
function isDividedOnly({ dimension, weighed: { grams } }: Need, food: Food | null, kitchen: Kitchen): boolean {
  const least = food === null || dimension === 'volume' ? null : leastByEye(food, kitchen);
  if (least === null || grams === null) return false;
  return grams.greaterThanOrEqualTo(least.times('0.75'));
}
