import { gramsIn } from '../../amount/size.js';
import type { Term } from '../../amount/stated.js';
import type { UnitId } from '../../amount/unit.js';
import { Exact } from '../../exact.js';
import type { Pack } from '../../food/food.js';
import type { Kitchen, Marks, MeasureSet, Way } from '../kitchen.js';

/** An amount that a kitchen's tools measure exactly. */
export interface Measure {
  way: Way | 'wrapper' | 'counter' | 'pack';
  /** As it is written; two terms for a cup amount with added spoons. */
  terms: readonly Term[];
  /** The pack that is counted, where whole packs are. */
  pack?: Pack;
  /** What `size` counts. */
  base: 'g' | 'ml';
  size: Exact;
  /** `size` as a float, for searching: what is chosen is computed exactly. */
  near: number;
  /** 0 whole or half of one tool or a round mark, up to ½ a mark between them, 1 another fraction, 2 with added spoons. */
  awkwardness: (typeof awkwardnesses)[number];
  /** More spoons than a cook counts, but for the upper end of a range that begins with them. */
  endOnly?: true;
}

const awkwardnesses = [0, 0.25, 0.5, 1, 2] as const;

const half = new Exact('0.5');
const tables = new WeakMap<Kitchen, Map<Way, readonly Measure[]>>();

/**
 * All that one way of measuring lands on exactly, ascending.
 *
 * @returns Empty where the kitchen has no such tool.
 */
export function measuresBy(kitchen: Kitchen, way: Way): readonly Measure[] {
  let byWay = tables.get(kitchen);
  if (byWay === undefined) {
    byWay = new Map();
    tables.set(kitchen, byWay);
  }
  let measures = byWay.get(way);
  if (measures === undefined) {
    measures = withoutTwins(build(kitchen, way).sort((a, b) => a.size.comparedTo(b.size)));
    byWay.set(way, measures);
  }
  return measures;
}

const rangeSpoons = new WeakMap<Kitchen, readonly Measure[]>();
/** `3–4 tbsp`, and at most twice the spoons that are counted. */
const mostOfRange = 2;

/**
 * The spoons of a kitchen, and counts of them at which a range may end, since they are the same as a cup amount or a larger spoon:
 * `3–4 tbsp`, `1–3 tsp`.
 */
export function spoonsOfRange(kitchen: Kitchen): readonly Measure[] {
  const known = rangeSpoons.get(kitchen);
  if (known !== undefined) return known;
  const spoons = measuresBy(kitchen, 'spoon');
  const { tsp, tbsp } = kitchen.spoons;
  const ends = [
    ...endsOf(
      kitchen,
      'tsp',
      Array.from({ length: tsp.wholes }, (_, at) => at + 1),
      spoons,
    ),
    ...endsOf(
      kitchen,
      'tbsp',
      Array.from({ length: tbsp.wholes * (mostOfRange - 1) }, (_, at) => tbsp.wholes + 1 + at),
      measuresBy(kitchen, 'cup'),
    ),
  ];
  const all = [...spoons, ...ends].sort((a, b) => a.near - b.near);
  rangeSpoons.set(kitchen, all);
  return all;
}

/** Counts of a spoon that are the same as a measure of another tool. */
function endsOf(
  kitchen: Kitchen,
  unit: 'tsp' | 'tbsp',
  counts: readonly number[],
  others: readonly Measure[],
): Measure[] {
  const each = kitchen.units[unit];
  return counts.flatMap((count): Measure[] => {
    const low = new Exact(count);
    const size = each?.times(low);
    const same = size === undefined ? undefined : others.find((other) => other.size.equals(size));
    if (size === undefined || same === undefined || same.terms[0]?.unit === unit) return [];
    const terms: Term[] = [{ low, high: null, unit }];
    return [{ way: 'spoon', terms, base: 'ml', ...sized(size), awkwardness: 0, endOnly: true }];
  });
}

/** Of two ways to the same amount the larger tool that is filled at least once: 1 tbsp, not 3 tsp, but 1½ tsp, not ½ tbsp. */
function withoutTwins(ascending: readonly Measure[]): Measure[] {
  const kept: Measure[] = [];
  for (const measure of ascending) {
    const twin = kept.at(-1);
    if (twin === undefined || !twin.size.equals(measure.size)) kept.push(measure);
    else if (isBetterThan(measure, twin)) kept[kept.length - 1] = measure;
  }
  return kept;
}

function isBetterThan(one: Measure, other: Measure): boolean {
  const [filled, otherFilled] = [one, other].map(({ terms }) => (terms[0]?.low.toNumber() ?? 0) >= 1);
  return filled === otherFilled ? scoops(one) < scoops(other) : filled === true;
}

function scoops({ terms }: Measure): number {
  return terms.reduce((sum, { low }) => sum + low.toNumber(), 0);
}

function build(kitchen: Kitchen, way: Way): Measure[] {
  switch (way) {
    case 'spoon':
      return [...ofSet(kitchen, 'tsp', kitchen.spoons.tsp), ...ofSet(kitchen, 'tbsp', kitchen.spoons.tbsp)];
    case 'cup':
      return kitchen.cups === null
        ? []
        : [...withSpoons(kitchen, ofSet(kitchen, 'cup', kitchen.cups)), ...quarts(kitchen)];
    case 'jug':
      return kitchen.jug === null
        ? []
        : onMarks(kitchen.jug.marks, 'jug', kitchen.jug.unit, jugMillilitres(kitchen), 'ml');
    case 'scale':
      return kitchen.scale === null
        ? []
        : onMarks(kitchen.scale.marks, 'scale', kitchen.scale.unit, gramsIn(kitchen.scale.unit), 'g');
  }
}

function jugMillilitres(kitchen: Kitchen): Exact {
  return kitchen.jug?.unit === 'floz' ? (kitchen.units.floz ?? new Exact(1)) : new Exact(1);
}

function ofSet(kitchen: Kitchen, unit: 'tsp' | 'tbsp' | 'cup', set: MeasureSet): Measure[] {
  const each = kitchen.units[unit];
  if (each === undefined) return [];
  const measures: Measure[] = [];
  for (let whole = 0; whole <= set.wholes; whole++) {
    for (const fraction of [new Exact(0), ...set.fractions]) {
      const value = fraction.plus(whole);
      if (value.isZero()) continue;
      const plain = fraction.isZero() || fraction.equals(half);
      measures.push({
        way: unit === 'cup' ? 'cup' : 'spoon',
        terms: [{ low: value, high: null, unit }],
        base: 'ml',
        ...sized(value.times(each)),
        awkwardness: plain ? 0 : 1,
      });
    }
  }
  return measures;
}

/** A size, exact and as a float. */
export function sized(size: Exact): Pick<Measure, 'size' | 'near'> {
  return { size, near: size.toNumber() };
}

/** A cup amount and 1 to 3 tablespoons. */
function withSpoons(kitchen: Kitchen, cups: Measure[]): Measure[] {
  const tablespoon = kitchen.units.tbsp;
  if (kitchen.cups === null || tablespoon === undefined) return cups;
  const added: Measure[] = [];
  for (const cup of cups) {
    for (let spoons = 1; spoons <= kitchen.cups.plusTablespoons; spoons++) {
      const low = new Exact(spoons);
      added.push({
        ...cup,
        terms: [...cup.terms, { low, high: null, unit: 'tbsp' }],
        ...sized(cup.size.plus(tablespoon.times(low))),
        awkwardness: 2,
      });
    }
  }
  return [...cups, ...added];
}

/** Past the cups that are still counted: quarts, of four cups each, by a quarter up to 4 and by a half up to 12. */
function quarts(kitchen: Kitchen): Measure[] {
  const { cup, quart } = kitchen.units;
  const { cups } = kitchen;
  if (cups === null || cup === undefined || quart === undefined || !kitchen.writes.volume.includes('quart')) return [];
  const measures: Measure[] = [];
  for (let quarters = cups.wholes + 1; quarters <= 48; quarters += quarters < 16 ? 1 : 2) {
    const low = new Exact(quarters).dividedBy(4);
    const awkwardness = low.times(2).isInteger() ? 0 : 1;
    measures.push({
      way: 'cup',
      terms: [{ low, high: null, unit: 'quart' }],
      base: 'ml',
      ...sized(low.times(quart)),
      awkwardness,
    });
  }
  return measures;
}

function onMarks(
  marks: readonly Marks[],
  way: 'jug' | 'scale',
  unit: UnitId,
  each: Exact,
  base: 'g' | 'ml',
): Measure[] {
  const measures: Measure[] = [];
  let last = new Exact(0);
  for (const { from, to, step } of marks) {
    for (let value = from; value.lessThanOrEqualTo(to); value = value.plus(step)) {
      if (value.lessThanOrEqualTo(last)) continue;
      last = value;
      measures.push({
        way,
        terms: [{ low: value, high: null, unit }],
        base,
        ...sized(value.times(each)),
        awkwardness: way === 'scale' ? unroundness(value) : 0,
      });
    }
  }
  return measures;
}

/** Nobody writes 455 g for 450 where five grams make no dish. Quarters of a hundred are round, and tens where they are a larger share. */
function unroundness(value: Exact): Measure['awkwardness'] {
  if (value.lessThan(100) || value.greaterThan(500) || value.modulo(25).isZero()) return 0;
  if (!value.modulo(10).isZero()) return 0.5;
  return value.lessThan(200) ? 0 : 0.25;
}

/** The entry of an ascending table that is nearest to a size by ratio, with its signed error as a fraction; null for an empty table. */
export function nearestOf(measures: readonly Measure[], size: Exact): { measure: Measure; error: Exact } | null {
  const wanted = size.toNumber();
  let low = 0;
  let high = measures.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((measures[middle]?.near ?? 0) < wanted) low = middle + 1;
    else high = middle;
  }
  const above = measures[low];
  const below = measures[low - 1];
  if (above === undefined) return null;
  const nearest = below !== undefined && ratio(wanted, below.near) < ratio(wanted, above.near) ? below : above;
  return { measure: nearest, error: nearest.size.dividedBy(size).minus(1) };
}

function ratio(a: number, b: number): number {
  return a > b ? a / b : b / a;
}

const levels = new WeakMap<readonly Measure[], Measure[][]>();

/** The nearest measure of each awkwardness: an easier one may be worth a little more error. */
export function nearestOfEach(measures: readonly Measure[], size: Exact): { measure: Measure; error: Exact }[] {
  let byLevel = levels.get(measures);
  if (byLevel === undefined) {
    byLevel = awkwardnesses.map((level) => measures.filter(({ awkwardness }) => awkwardness === level));
    levels.set(measures, byLevel);
  }
  return byLevel.flatMap((level) => nearestOf(level, size) ?? []);
}
