import { gramsIn } from '../amount/size.js';
import type { Term } from '../amount/stated.js';
import type { UnitId } from '../amount/unit.js';
import { Exact } from '../exact.js';
import type { Kitchen, Marks, MeasureSet, Way } from './kitchen.js';

/** An amount that a kitchen's tools measure exactly. */
export interface Measure {
  way: Way | 'wrapper' | 'counter';
  /** As it is written; two terms for a cup amount with added spoons. */
  terms: readonly Term[];
  /** What `size` counts. */
  base: 'g' | 'ml';
  size: Exact;
  /** 0 whole or half of one tool or a plain mark, 1 another fraction, 2 with added spoons. */
  awkwardness: 0 | 1 | 2;
}

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
    measures = build(kitchen, way).sort((a, b) => a.size.comparedTo(b.size));
    byWay.set(way, measures);
  }
  return measures;
}

function build(kitchen: Kitchen, way: Way): Measure[] {
  switch (way) {
    case 'spoon':
      return [...ofSet(kitchen, 'tsp', kitchen.spoons.tsp), ...ofSet(kitchen, 'tbsp', kitchen.spoons.tbsp)];
    case 'cup':
      return kitchen.cups === null ? [] : withSpoons(kitchen, ofSet(kitchen, 'cup', kitchen.cups));
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
        size: value.times(each),
        awkwardness: plain ? 0 : 1,
      });
    }
  }
  return measures;
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
        size: cup.size.plus(tablespoon.times(low)),
        awkwardness: 2,
      });
    }
  }
  return [...cups, ...added];
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
      measures.push({ way, terms: [{ low: value, high: null, unit }], base, size: value.times(each), awkwardness: 0 });
    }
  }
  return measures;
}

/** The entry of an ascending table that is nearest to a size by ratio, with its signed error as a fraction; null for an empty table. */
export function nearestOf(measures: readonly Measure[], size: Exact): { measure: Measure; error: Exact } | null {
  let low = 0;
  let high = measures.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (measures[middle]?.size.lessThan(size)) low = middle + 1;
    else high = middle;
  }
  const above = measures[low];
  const below = measures[low - 1];
  if (above === undefined) return null;
  const nearest = below !== undefined && ratio(size, below.size).lessThan(ratio(size, above.size)) ? below : above;
  return { measure: nearest, error: nearest.size.dividedBy(size).minus(1) };
}

function ratio(a: Exact, b: Exact): Exact {
  return a.greaterThan(b) ? a.dividedBy(b) : b.dividedBy(a);
}
