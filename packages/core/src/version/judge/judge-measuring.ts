import { dimensionOf, gramsIn, isMassUnit, isVolumeUnit, millilitresIn } from '../../amount/size.js';
import { type Stated, stateOne, type Term } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import type { Food } from '../../food/food.js';
import type { Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Measure } from '../../kitchen/measure/measure.js';
import { isMeasuredSum } from '../../kitchen/measure/measured-sum.js';
import { measuresBy } from '../../kitchen/measure/measures-by.js';
import { nearestOf } from '../../kitchen/measure/nearest-of.js';
import { isPartOfPack } from '../../kitchen/measure/pack-parts.js';
import { marksOn } from '../../kitchen/measure/wrapper.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import { isOnCounterStep } from '../../kitchen/shop/counter.js';
import { equalPacks } from '../../kitchen/shop/equal-packs.js';
import { isMultiple } from '../../kitchen/shop/is-multiple.js';
import { land, stateMeasure } from '../convert/land.js';
import type { Need } from '../convert/tables-for.js';
import type { Problem } from '../problem.js';

/** What is judged, and how strictly. */
export interface Judged {
  stated: Stated;
  /** The amount's own words, for the message. */
  text: string;
  food: Food | null;
  weighed: Weighed;
  kitchen: Kitchen;
  /** How far an author's amount may be from a measure, as a fraction. */
  tolerance: Exact;
}

/**
 * Whether a cook in the kitchen can measure an amount. One statement that can be measured is enough.
 *
 * @returns Null where it can be measured, or where there is nothing to measure (pieces, packs, gestures).
 */
export function judgeMeasuring(judged: Judged): Problem | null {
  // A cure is weighed as its recipe says, or not used: nothing is ever offered in its place.
  if (judged.stated.pack !== null || judged.food?.role === 'cure') return null;
  const verdicts = judged.stated.statements.map((terms) => judgeStatement(terms, judged));
  if (verdicts.some((verdict) => verdict === null)) return null;
  return verdicts[0] ?? null;
}

function judgeStatement(terms: readonly Term[], judged: Judged): Problem | null {
  const first = terms[0];
  if (first === undefined || dimensionOf(first.unit) === 'count') return null;
  const dimension = dimensionOf(first.unit);
  if (dimension !== 'mass' && dimension !== 'volume') return null;
  const ends = terms.some(({ high }) => high !== null) ? (['low', 'high'] as const) : (['low'] as const);
  for (const end of ends) {
    const problem = dimension === 'mass' ? judgeMass(terms, end, judged) : judgeVolume(terms, end, judged);
    if (problem !== null) return problem;
  }
  return null;
}

function judgeVolume(terms: readonly Term[], end: 'low' | 'high', judged: Judged): Problem | null {
  const { kitchen } = judged;
  const sizeOf = (unit: Term['unit']): Exact | null => (isVolumeUnit(unit) ? millilitresIn(unit, kitchen.units) : null);
  const millilitres = total(terms, end, sizeOf);
  const unknown = terms.find(({ unit }) => isVolumeUnit(unit) && !kitchen.writes.volume.includes(unit));
  if (millilitres === null || unknown !== undefined) return fault(judged, 'no-unit', unknown ?? terms[0]);
  const tables = [measuresBy(kitchen, 'spoon'), measuresBy(kitchen, 'cup'), measuresBy(kitchen, 'jug')];
  // What is weighed is the lower end of a range.
  const grams = judged.weighed.grams?.times(millilitres).dividedBy(total(terms, 'low', sizeOf) ?? millilitres);
  if (grams !== undefined && kitchen.scale === null && isOnWrapper(grams, judged)) return null;
  return isMeasuredSum(millilitres, kitchen, judged.tolerance) || isPack(millilitres, 'ml', judged)
    ? null
    : fault(judged, between(tables, millilitres), terms[0]);
}

/** Cut by the marks on the wrapper, whatever unit the marks are in. */
function isOnWrapper(grams: Exact, { food, kitchen, tolerance }: Judged): boolean {
  const marks = marksOn(food, kitchen);
  return marks !== null && isMultiple(grams, marks.grams, tolerance);
}

function judgeMass(terms: readonly Term[], end: 'low' | 'high', judged: Judged): Problem | null {
  const { kitchen, food } = judged;
  const grams = total(terms, end, (unit) => (isMassUnit(unit) ? gramsIn(unit) : null));
  if (grams === null) return null;
  if (isPack(grams, 'g', judged)) return null;
  // Nothing is known of how an unknown food is sold: that it is unknown is finding enough.
  if (food === null && kitchen.scale === null) return null;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  // The shop weighs it: whether the weight is on the counter's step is a question of buying.
  if (sold?.loose && isOnCounterStep(grams, kitchen)) return null;
  if (isOnWrapper(grams, judged) || isPartOfPack(grams, food, kitchen, judged.tolerance)) return null;
  if (kitchen.scale === null) {
    return sold?.loose && !isUseWhole(sold) ? null : fault(judged, 'no-tool', terms[0]);
  }
  const scale = [measuresBy(kitchen, 'scale')];
  return withinAny(scale, grams, judged) ? null : fault(judged, between(scale, grams), terms[0]);
}

function total(terms: readonly Term[], end: 'low' | 'high', each: (unit: Term['unit']) => Exact | null): Exact | null {
  let sum = new Exact(0);
  for (const term of terms) {
    const size = each(term.unit);
    if (size === null) return null;
    sum = sum.plus((end === 'high' ? (term.high ?? term.low) : term.low).times(size));
  }
  return sum;
}

function withinAny(tables: readonly (readonly Measure[])[], size: Exact, { tolerance }: Judged): boolean {
  return tables.some((table) => nearestOf(table, size)?.error.abs().lessThanOrEqualTo(tolerance) ?? false);
}

function between(tables: readonly (readonly Measure[])[], size: Exact): 'below-smallest' | 'between-measures' {
  const smallest = tables.flatMap((table) => table[0]?.size ?? []);
  return smallest.length > 0 && smallest.every((least) => size.lessThan(least)) ? 'below-smallest' : 'between-measures';
}

/** A whole pack, or a half where halves are used, needs no measuring. */
function isPack(size: Exact, base: 'g' | 'ml', { food, kitchen }: Judged): boolean {
  const packs = food === null ? [] : (soldIn(food, kitchen.id)?.packs ?? []);
  return packs.some((pack) => {
    const one =
      base === 'g'
        ? pack.grams
        : isVolumeUnit(pack.unit)
          ? (millilitresIn(pack.unit, kitchen.units)?.times(pack.size) ?? null)
          : null;
    if (one === null) return false;
    const parts = pack.whole === 'half' ? new Exact('0.5') : new Exact(1);
    return isMultiple(size, one.times(parts), equalPacks);
  });
}

function fault(
  judged: Judged,
  reason: 'no-tool' | 'between-measures' | 'below-smallest' | 'no-unit',
  term: Term | undefined,
): Problem | null {
  if (term === undefined) return null;
  return { rule: 'unmeasurable', reason, text: judged.text, term, food: judged.food, nearest: nearestAmounts(judged) };
}

/** Up to two amounts that the kitchen can measure, the author's kind of unit first. */
function nearestAmounts({ weighed, food, kitchen, stated }: Judged): Stated[] {
  const unit = stated.statements[0]?.[0]?.unit;
  const dimension = unit === undefined ? 'mass' : dimensionOf(unit);
  const need: Need = { weighed, dimension, food, byWrapper: false };
  const landed = land(need, kitchen);
  if (landed === null) return [];
  const same = stateMeasure(landed.measure, false);
  const sold = food === null ? null : soldIn(food, kitchen.id);
  const grams = weighed.grams;
  const pack =
    grams === null
      ? undefined
      : sold?.packs.find((each) => each.grams.dividedBy(grams).minus(1).abs().lessThan('0.15'));
  return pack === undefined ? [same] : [same, stateOne({ low: pack.size, high: null, unit: pack.unit })];
}
