import type { LineReading } from '../amount/reading.js';
import { dimensionOf } from '../amount/size.js';
import { type Stated, statedIn, type Term } from '../amount/stated.js';
import type { Dimension } from '../amount/unit.js';
import type { Exact } from '../exact.js';
import type { Food } from '../food/food.js';
import type { StatedDensities, Weighed } from '../food/weigh.js';
import { isUseWhole, soldIn } from '../kitchen/buy.js';
import { wholeEggs } from '../kitchen/egg.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { type Measure, measuresBy, nearestOf } from '../kitchen/measure.js';
import { land, type Need, stateMeasure, tablesFor, unlanded } from './land.js';
import { type WeighedAmount, weighingOf, weighReading, wholeEgg } from './weigh-line.js';
import { nearestPacks, samePack, wholeLimit } from './whole-packs.js';

/** Whose amount goes where. */
export interface Conversion {
  native: Kitchen;
  kitchen: Kitchen;
  densities: StatedDensities;
}

/**
 * A line's amount in another kitchen, line by line: whole packs and pieces where a cook there uses them whole, the same kind of unit
 * where the kitchen measures the food so, by density where it does not, and always the nearest amount that can be measured.
 *
 * @returns Null for a line with no amount.
 */
export function convertAmount(reading: LineReading, food: Food | null, conversion: Conversion): Stated | null {
  const stated = statedIn(reading);
  if (stated === null || food?.role === 'cure') return stated;
  const { native, kitchen, densities } = conversion;
  const weighed = weighReading(reading, weighingOf(reading, food, native, densities));
  if (weighed === null) return stated;
  if (food?.id === wholeEgg && weighed.dimension === 'count') return convertEggs(stated, weighed, kitchen);
  if (isCounted(stated, food)) return { ...stated, statements: stated.statements.slice(0, 1) };
  return inPacks(stated, weighed, food, kitchen) ?? byMeasure(stated, weighed, food, conversion);
}

/**
 * A weight of a food that takes another's place, as the kitchen measures it.
 *
 * @param reading The line whose amount it replaces: the same kind of unit is kept.
 */
export function convertWeighed(reading: LineReading, weighed: Weighed, food: Food, conversion: Conversion): Stated {
  const written = statedIn(reading);
  const unit = written?.statements[0]?.[0]?.unit ?? 'g';
  const stated: Stated = { statements: [], pack: null, eggSize: null, approx: written?.approx ?? false };
  const dimension = written?.pack == null ? dimensionOf(unit) : 'mass';
  const amount: WeighedAmount = { low: weighed, high: null, dimension, drainedGrams: null, pack: null, count: null };
  return inPacks(stated, amount, food, conversion.kitchen) ?? byMeasure(stated, amount, food, conversion);
}

/** Pieces and gestures are the same everywhere; a stick of butter is a weight. */
function isCounted(stated: Stated, food: Food | null): boolean {
  const unit = stated.statements[0]?.[0]?.unit;
  if (stated.pack !== null || unit === undefined || dimensionOf(unit) !== 'count') return false;
  if (unit === 'stick') return food?.role !== 'fat';
  return unit !== 'can' && unit !== 'tin' && unit !== 'packet';
}

function convertEggs(stated: Stated, weighed: WeighedAmount, kitchen: Kitchen): Stated {
  const grams = weighed.low.grams;
  const eggs = grams === null ? null : wholeEggs(kitchen, grams, wholeLimit);
  const high = weighed.high?.grams == null ? null : wholeEggs(kitchen, weighed.high.grams, wholeLimit);
  if (eggs === null) return { ...(unlanded(weighed.low, kitchen) ?? stated), approx: stated.approx };
  const usual = eggs.size.name === kitchen.eggs.usual;
  const ends = high?.count.greaterThan(eggs.count) ? high.count : null;
  return {
    statements: [[{ low: eggs.count, high: ends, unit: 'count' }]],
    pack: null,
    eggSize: usual ? null : eggs.size.name,
    approx: stated.approx,
  };
}

/** Whole packs of a use-whole food, or the same pack where the shops sell an equal one. */
function inPacks(stated: Stated, weighed: WeighedAmount, food: Food | null, kitchen: Kitchen): Stated | null {
  const sold = food === null ? null : soldIn(food, kitchen.id);
  const grams = weighed.low.grams;
  if (sold === null || grams === null || weighed.high !== null) return null;
  if (isUseWhole(sold)) {
    const packs = nearestPacks(grams, weighed.drainedGrams, sold);
    if (packs?.drift.abs().lessThanOrEqualTo(wholeLimit)) {
      return packsStated(packs.count, packs.pack, stated.approx);
    }
    return massOf(weighed.low, kitchen, stated.approx);
  }
  if (weighed.count === null || weighed.count.isZero() || stated.pack?.word === '') return null;
  const same = samePack(grams.dividedBy(weighed.count), sold);
  return same === null ? null : packsStated(weighed.count, same, stated.approx);
}

/** What no whole packs come near is stated by weight, with a finding: a volume of a drained food would be another amount. */
function massOf(weighed: Weighed, kitchen: Kitchen, approx: boolean): Stated | null {
  const grams = weighed.grams;
  const onScale = grams === null ? null : nearestOf(measuresBy(kitchen, 'scale'), grams);
  return onScale === null ? unlanded(weighed, kitchen) : stateMeasure(onScale.measure, approx);
}

function packsStated(count: Exact, pack: { size: Exact; unit: Term['unit']; word: string }, approx: boolean): Stated {
  return {
    statements: [[{ low: count, high: null, unit: 'count' }]],
    pack: { size: pack.size, unit: pack.unit, word: pack.word },
    eggSize: null,
    approx,
  };
}

function byMeasure(stated: Stated, weighed: WeighedAmount, food: Food | null, conversion: Conversion): Stated {
  const { native, kitchen } = conversion;
  if (weighed.low.grams === null && weighed.low.millilitres === null) return unweighed(stated);
  const byWrapper = food !== null && (soldIn(food, native.id)?.packs.some(({ marks }) => marks !== null) ?? false);
  const dimension = measuredAs(stated, weighed, food);
  const need: Need = { weighed: middle(weighed), dimension, food, byWrapper };
  const landed = land(need, kitchen);
  if (landed === null) return unlanded(weighed.low, kitchen) ?? unweighed(stated);
  if (weighed.high === null) return stateMeasure(landed.measure, stated.approx);
  return bothEnds(weighed, landed.measure, need, kitchen, stated.approx) ?? stateMeasure(landed.measure, stated.approx);
}

/** Packs and pieces are weighed, unless what is in them pours. */
function measuredAs(stated: Stated, { dimension }: WeighedAmount, food: Food | null): Dimension {
  if (stated.pack === null && dimension !== 'count') return dimension;
  return food?.pours ? 'volume' : 'mass';
}

/** Only the first statement is kept, container words in the reader's sense are the author's own. */
function unweighed(stated: Stated): Stated {
  return { ...stated, statements: stated.statements.slice(0, 1) };
}

/** A range counts by its geometric mean. */
function middle({ low, high }: WeighedAmount): Weighed {
  if (high === null) return low;
  const mean = (a: Exact | null, b: Exact | null): Exact | null =>
    a === null || b === null ? null : a.times(b).sqrt();
  return { grams: mean(low.grams, high.grams), millilitres: mean(low.millilitres, high.millilitres) };
}

/** Both ends of a range on the same tool. */
function bothEnds(weighed: WeighedAmount, near: Measure, need: Need, kitchen: Kitchen, approx: boolean): Stated | null {
  const unit = near.terms[0]?.unit;
  const table = tablesFor(need, kitchen).find(({ measures }) => measures.some((measure) => measure.way === near.way));
  if (table === undefined || weighed.high === null) return null;
  const ends = [weighed.low, weighed.high].map((end) => {
    const size = table.base === 'g' ? end.grams : end.millilitres;
    const plain = table.measures.filter(({ terms }) => terms.length === 1 && terms[0]?.unit === unit);
    return size === null ? null : nearestOf(plain, size);
  });
  const low = ends[0]?.measure.terms[0];
  const high = ends[1]?.measure.terms[0];
  if (low === undefined || high === undefined) return null;
  const top = high.low.greaterThan(low.low) ? high.low : null;
  return { statements: [[{ low: low.low, high: top, unit: low.unit }]], pack: null, eggSize: null, approx };
}
