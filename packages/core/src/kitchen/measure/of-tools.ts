import { gramsIn } from '../../amount/size.js';
import type { UnitId } from '../../amount/unit.js';
import { Exact } from '../../exact.js';
import type { Kitchen, Marks, MeasureSet, Way } from '../kitchen.js';
import { type Measure, sized, unroundness } from './measure.js';

const half = new Exact('0.5');

/** All that one way of measuring lands on exactly, in the order of its tools; the same size may stand twice. */
export function ofTools(kitchen: Kitchen, way: Way): Measure[] {
  switch (way) {
    case 'spoon':
      return [
        ...ofSet(kitchen, 'tsp', kitchen.spoons.tsp),
        ...ofSet(kitchen, 'tbsp', kitchen.spoons.tbsp),
        ...bothSpoons(kitchen),
      ];
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
      // Three teaspoons and a quarter of one more are no easier than a tablespoon and a teaspoon.
      const many = unit === 'tsp' && whole === set.wholes;
      measures.push({
        way: unit === 'cup' ? 'cup' : 'spoon',
        terms: [{ low: value, high: null, unit }],
        base: 'ml',
        ...sized(value.times(each)),
        awkwardness: plain ? 0 : many ? 3.5 : 1,
      });
    }
  }
  return measures;
}

/** Past two tablespoons a teaspoon more or less is no other amount. */
const mostWithTeaspoons = 2;

/**
 * One or two tablespoons and whole teaspoons: another country's tablespoon is 1 tbsp + 1 tsp, which every spoon set measures exactly.
 * Common practice, no source.
 */
function bothSpoons({ units, spoons }: Kitchen): Measure[] {
  const { tsp, tbsp } = units;
  if (tsp === undefined || tbsp === undefined) return [];
  const sums: Measure[] = [];
  for (let large = 1; large <= Math.min(spoons.tbsp.wholes, mostWithTeaspoons); large++) {
    for (let small = 1; tsp.times(small).lessThan(tbsp); small++) {
      sums.push({
        way: 'spoon',
        terms: [
          { low: new Exact(large), high: null, unit: 'tbsp' },
          { low: new Exact(small), high: null, unit: 'tsp' },
        ],
        base: 'ml',
        ...sized(tbsp.times(large).plus(tsp.times(small))),
        awkwardness: 3.5,
      });
    }
  }
  return sums;
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
        awkwardness: 3.5,
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
