import { dimensionOf, isMassUnit } from '../../amount/size.js';
import { type Stated, stateOne, statePacks } from '../../amount/stated.js';
import { Exact, sumOf } from '../../exact.js';
import type { Food, Pack, Sold } from '../../food/food.js';
import { partOfEgg } from '../../kitchen/egg.js';
import { type Bought, contentsOf, isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import { counterStepGrams, isOnCounterStep, isWeighedOffOnly } from '../../kitchen/shop/counter.js';
import { isMultiple, onTheMark } from '../../kitchen/shop/is-multiple.js';
import { remainderOf } from '../../kitchen/shop/remainder.js';
import { isCan } from '../../kitchen/shop/unsized-pack.js';
import { samePack } from '../convert/whole-packs.js';
import type { Problem } from '../problem.js';
import { isLabelled } from '../weigh/weigh-packs.js';
import type { Judged } from './judge-measuring.js';
import { shopFor } from './shop.js';

/** What a cook buys for an amount, and what stands in the way. */
export interface Shopping {
  bought: Bought | null;
  problem: Problem | null;
}

/** Whether a kitchen's shops sell an amount, and what to buy for it. Nothing is said of a food that the larder does not know. */
export function judgeBuying(judged: Judged): Shopping {
  const { food, kitchen } = judged;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (food === null || sold === null || food.role === 'cure') return { bought: null, problem: null };
  if (!sold.sold) {
    const standIns = sold.standIns.map(({ parts }) => parts);
    return { bought: null, problem: { rule: 'unbuyable', reason: 'not-sold', text: judged.text, food, standIns } };
  }
  const problem =
    packSize(judged, food, sold) ??
    noCan(judged, food, sold) ??
    partOfPiece(judged, food) ??
    partOfPack(judged, food, sold) ??
    offStep(judged, food, sold);
  if (problem !== null) return { bought: null, problem };
  const bought = shopFor(judged.stated, judged.weighed, food, judged.kitchen);
  return { bought, problem: bought === null ? null : awkwardLeftover(judged.text, food, bought) };
}

/** A size on the label that no shop there has. */
function packSize({ stated, weighed, text }: Judged, food: Food, sold: Sold): Problem | null {
  const count = stated.statements[0]?.[0]?.low;
  if (stated.pack === null || stated.pack.word === '' || count === undefined || sold.packs.length === 0) return null;
  const label = stated.pack;
  const same = sold.packs.some((pack) => isLabelled(pack, label, food));
  if (same || weighed.grams === null || count.isZero()) return null;
  const each = weighed.grams.dividedBy(count);
  if (samePack(each, sold) !== null) return null;
  return {
    rule: 'unbuyable',
    reason: 'pack-size',
    text,
    food,
    packs: [...sold.packs],
    nearest: nearestWhole(weighed.grams, sold),
  };
}

/** `1 can` of what comes in other containers there: nobody can tell how much that is. */
function noCan({ stated, weighed, text }: Judged, food: Food, sold: Sold): Problem | null {
  const unit = stated.statements[0]?.[0]?.unit;
  if (stated.pack !== null || weighed.grams !== null || (unit !== 'can' && unit !== 'tin')) return null;
  if (sold.packs.length === 0 || sold.packs.some(({ word }) => isCan(word))) return null;
  return { rule: 'unbuyable', reason: 'pack-size', text, food, packs: [...sold.packs], nearest: [] };
}

/** Part of a use-whole food: half a tin, 820 g of beans from 400 g tins. */
function partOfPack({ stated, weighed, text }: Judged, food: Food, sold: Sold): Problem | null {
  if (!isUseWhole(sold) || partOfEgg(food) !== null) return null;
  const step = sold.packs.some((pack) => pack.whole === 'half') ? new Exact('0.5') : new Exact(1);
  const counted = stated.statements[0]?.[0];
  if (counted === undefined) return null;
  const isCount = dimensionOf(counted.unit) === 'count';
  const whole = isCount
    ? counted.low.dividedBy(step).isInteger()
    : weighed.grams === null || isWholePacks(weighed.grams, sold.packs, step);
  if (whole) return null;
  const nearest = weighed.grams === null ? [] : nearestWhole(weighed.grams, sold);
  return { rule: 'unbuyable', reason: 'part-of-pack', text, food, packs: [...sold.packs], nearest };
}

function isWholePacks(grams: Exact, packs: readonly Pack[], step: Exact): boolean {
  const sizes = packs.flatMap((pack) => [pack.grams, ...(pack.drainedGrams === null ? [] : [pack.drainedGrams])]);
  return sizes.some((size) => isMultiple(grams, size.times(step), onTheMark));
}

/** Half an egg cannot be bought and its other half is of no use. */
function partOfPiece({ stated, text }: Judged, food: Food): Problem | null {
  const counted = stated.statements[0]?.[0];
  if (partOfEgg(food) === null || counted === undefined || counted.unit !== 'count' || counted.low.isInteger())
    return null;
  const nearest = [counted.low.floor(), counted.low.ceil()]
    .filter((low) => !low.isZero())
    .map((low) => stateOne({ low, high: null, unit: 'count' }));
  return { rule: 'unbuyable', reason: 'part-of-piece', text, food, nearest };
}

/** A weight between two steps of the counter, of a food that is only weighed off there. */
function offStep({ stated, weighed, text, kitchen }: Judged, food: Food, sold: Sold): Problem | null {
  const unit = stated.statements[0]?.[0]?.unit;
  if (!isWeighedOffOnly(sold) || stated.pack !== null) return null;
  if (unit === undefined || !isMassUnit(unit) || weighed.grams === null) return null;
  const { grams } = weighed;
  if (isOnCounterStep(grams, kitchen)) return null;
  const step = counterStepGrams(kitchen);
  // Less than a counter weighs off is bought as its first step, and weighed again at home: 20 g of fresh yeast.
  if (kitchen.scale !== null && grams.lessThan(step)) return null;
  const steps = grams.dividedBy(step);
  const nearest = [steps.floor(), steps.ceil()]
    .filter((count) => !count.isZero())
    .map((count) => stateOne({ low: kitchen.counter.step.times(count), high: null, unit: kitchen.counter.unit }));
  return { rule: 'unbuyable', reason: 'counter-step', text, food, nearest };
}

/** Whole packs of the size that comes nearest to a need; empty where none is sold. */
function nearestWhole(grams: Exact, sold: Sold): Stated[] {
  // Of as much the fewest packs.
  const [pack] = [...sold.packs].sort(
    (a, b) => distance(a, grams).comparedTo(distance(b, grams)) || b.grams.comparedTo(a.grams),
  );
  if (pack === undefined) return [];
  const count = Exact.max(grams.dividedBy(pack.grams).round(), 1);
  return [statePacks({ low: count, high: null, unit: 'count' }, pack)];
}

function distance(pack: Pack, grams: Exact): Exact {
  const count = Exact.max(grams.dividedBy(pack.grams).round(), 1);
  return count.times(pack.grams).minus(grams).abs();
}

/** A remainder that spoils, or that is too little to keep. Packs that stand in a cupboard are no remainder. */
export function awkwardLeftover(text: string, food: Food, bought: Bought): Problem | null {
  const total = sumOf(bought.packs, ({ count, pack }) => contentsOf(pack).times(count));
  const remainder = remainderOf(food.keeps, total.toNumber(), bought.leftoverGrams.toNumber());
  if (remainder === 'none' || remainder === 'keeps') return null;
  const spoils = remainder === 'spoils';
  const { days } = food.keeps;
  return { rule: 'awkward-leftover', text, food, grams: bought.leftoverGrams, spoils, days, packs: bought.packs };
}
