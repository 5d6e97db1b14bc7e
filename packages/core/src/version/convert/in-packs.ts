import { type Stated, statePacks } from '../../amount/stated.js';
import type { Food, Sold } from '../../food/food.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { measuresBy } from '../../kitchen/measure/measures-by.js';
import { nearestOf } from '../../kitchen/measure/nearest-of.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import { endsOf, rangeOf } from '../weigh/weighed-ends.js';
import type { WeighedAmount } from '../weigh/weighing.js';
import type { Conversion } from './convert-amount.js';
import { nextAbove, stateMeasure, unlanded } from './land.js';
import { stateRange } from './land-range.js';
import { mustNotShrink } from './must-not-shrink.js';
import { type PackNeed, packsForEnds, samePack, wholeLimit } from './whole-packs.js';

/** Whole packs of a use-whole food, or the same pack where the shops sell an equal one. */
export function inPacks(
  stated: Stated,
  weighed: WeighedAmount,
  food: Food | null,
  conversion: Conversion,
): Stated | null {
  const { kitchen } = conversion;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  const grams = weighed.low.grams;
  if (food === null || sold === null || grams === null) return null;
  if (isUseWhole(sold)) {
    const atLeast = mustNotShrink(food, conversion);
    return (
      inWholePacks(stated, weighed, food, sold, atLeast) ??
      (atLeast ? massAbove(weighed, kitchen, stated.approx) : massOf(weighed, kitchen, stated.approx))
    );
  }
  if (weighed.count === null || weighed.count.isZero() || stated.pack?.word === '') return null;
  const same = samePack(grams.dividedBy(weighed.count), sold);
  if (same === null) return null;
  return statePacks(rangeOf(weighed.count, stated.statements[0]?.[0]?.high ?? null), same, stated.approx);
}

function inWholePacks(stated: Stated, weighed: WeighedAmount, food: Food, sold: Sold, atLeast: boolean): Stated | null {
  const { low, drainedGrams } = weighed;
  const needs = endsOf(weighed).flatMap(({ grams }): PackNeed[] => {
    if (grams === null || low.grams === null) return [];
    return [{ grams, drainedGrams: drainedGrams?.times(grams).dividedBy(low.grams) ?? null }];
  });
  const packs = packsForEnds(needs, food, sold);
  const [first, more] = packs ?? [];
  if (
    first === undefined ||
    packs?.some(({ drift }) => drift.abs().greaterThan(wholeLimit) || (atLeast && drift.isNegative()))
  )
    return null;
  return statePacks(rangeOf(first.count, more?.count ?? null), first.pack, stated.approx);
}

/** What no whole packs come near is stated by weight, with a finding: a volume of a drained food would be another amount. */
function massOf(weighed: WeighedAmount, kitchen: Kitchen, approx: boolean): Stated | null {
  const ends = endsOf(weighed).map(({ grams }) =>
    grams === null ? null : nearestOf(measuresBy(kitchen, 'scale'), grams),
  );
  const [low, high] = ends;
  if (low == null) return unlandedEnds(weighed, kitchen);
  return high == null ? stateMeasure(low.measure, approx) : stateRange(low.measure, high.measure, approx);
}

/** The same beside a cure, where less will not do; a range stands as it was written there. */
function massAbove({ low }: WeighedAmount, kitchen: Kitchen, approx: boolean): Stated | null {
  const [enough] = low.grams === null ? [] : nextAbove(measuresBy(kitchen, 'scale'), low.grams);
  return enough === undefined ? unlanded(low, kitchen, true) : stateMeasure(enough.measure, approx);
}

function unlandedEnds({ low, high }: WeighedAmount, kitchen: Kitchen): Stated | null {
  const stated = unlanded(low, kitchen);
  const [from, to] = [stated, high === null ? null : unlanded(high, kitchen)].map((end) => end?.statements[0]?.[0]);
  if (stated === null || from === undefined || to === undefined || !to.low.greaterThan(from.low)) return stated;
  return { ...stated, statements: [[{ ...from, high: to.low }]] };
}
