import type { Term } from '../../amount/stated.js';
import type { UnitId } from '../../amount/unit.js';
import { Exact } from '../../exact.js';
import type { Food, Pack } from '../../food/food.js';
import type { Kitchen } from '../kitchen.js';
import { soldIn } from '../shop/buy.js';
import { type Measure, sized } from './measure.js';

/** The marks on the wrapper in which a kitchen's shops sell a food; null where there are none. */
export function marksOn(food: Food | null, kitchen: Kitchen): NonNullable<Pack['marks']> | null {
  const packs = food === null ? [] : (soldIn(food, kitchen.id)?.packs ?? []);
  return packs.find(({ marks }) => marks !== null)?.marks ?? null;
}

/** A cup of what is marked in tablespoons. */
const tablespoonsInCup = 16;

/**
 * Grams of a food that is cut by its wrapper's marks and not spooned: tablespoons, and cups of sixteen.
 *
 * @returns Null for another unit, and where there are no marks, or a scale that is used instead.
 */
export function gramsByWrapper(value: Exact, unit: UnitId, food: Food, kitchen: Kitchen): Exact | null {
  const marks = marksOn(food, kitchen);
  if (marks === null || kitchen.scale !== null) return null;
  const each = marks.grams.dividedBy(marks.size);
  if (unit === marks.unit) return value.times(each);
  return unit === 'cup' && marks.unit === 'tbsp' ? value.times(tablespoonsInCup).times(each) : null;
}

/** Nobody cuts more packs of butter for a dish. */
const mostMarkedPacks = 4;
/** Up to here a mark is halved by eye. */
const mostHalved = 4;

/** Cuts by the marks on the wrapper, the least first; none where there are no marks, or a scale that is used instead. */
export function wrapperCuts(food: Food, kitchen: Kitchen): Measure[] {
  const marks = marksOn(food, kitchen);
  const largest = soldIn(food, kitchen.id)?.packs.findLast((pack) => pack.marks !== null);
  if (marks === null || largest === undefined || kitchen.scale !== null) return [];
  const whole = largest.grams.times(mostMarkedPacks).dividedBy(marks.grams).floor().toNumber();
  const halves = Array.from({ length: mostHalved }, (_, at) => new Exact(at).plus('0.5'));
  const wholes = Array.from({ length: whole }, (_, at) => new Exact(at + 1));
  const measures = [...halves, ...wholes].map((count): Measure => {
    const terms = wrapperTerms(marks.size.times(count), marks.unit, kitchen);
    const awkwardness = count.isInteger() ? 0 : 1;
    return { way: 'wrapper', terms, base: 'g', ...sized(marks.grams.times(count)), awkwardness };
  });
  return measures.sort((one, other) => one.near - other.near);
}

/** Eight tablespoons of butter are written as half a cup, and eighteen as a cup and two. */
function wrapperTerms(value: Exact, unit: Term['unit'], kitchen: Kitchen): Term[] {
  if (unit !== 'tbsp' || kitchen.cups === null) return [{ low: value, high: null, unit }];
  const cups = value.dividedBy(tablespoonsInCup);
  const written = cups.times(4).isInteger() || cups.times(3).isInteger();
  if (written && cups.greaterThanOrEqualTo('0.5')) return [{ low: cups, high: null, unit: 'cup' }];
  if (cups.lessThan(1)) return [{ low: value, high: null, unit }];
  const quarters = cups.times(4).floor();
  return [
    { low: quarters.dividedBy(4), high: null, unit: 'cup' },
    { low: value.minus(quarters.times(4)), high: null, unit: 'tbsp' },
  ];
}
