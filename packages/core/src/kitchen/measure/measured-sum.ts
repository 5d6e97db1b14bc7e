import { Exact } from '../../exact.js';
import type { Kitchen } from '../kitchen.js';
import type { Measure } from './measure.js';
import { measuresBy } from './measures-by.js';
import { nearestOf } from './nearest-of.js';

/**
 * Whether a volume is one measure of the kitchen's spoons, cups or jug, or a sum of two tools: 4 tsp are 1 tbsp and 1 tsp, 5 tbsp are
 * ¼ cup, or a jug mark, and 1 tbsp. What is added is whole spoons.
 *
 * @param tolerance How far it may be from that, as a fraction.
 */
export function isMeasuredSum(millilitres: Exact, kitchen: Kitchen, tolerance = new Exact('1e-9')): boolean {
  const tables = (['spoon', 'cup', 'jug'] as const).map((way) => measuresBy(kitchen, way));
  const isNear = (table: readonly Measure[], size: Exact): boolean => {
    const off = nearestOf(table, size)?.error;
    return off?.abs().times(size).dividedBy(millilitres).lessThanOrEqualTo(tolerance) ?? false;
  };
  if (tables.some((table) => isNear(table, millilitres))) return true;
  const [spoons = [], ...vessels] = tables;
  const whole = spoons.filter(({ terms: [term, ...others] }) => others.length === 0 && term?.low.isInteger());
  const tablespoons = whole.filter(({ terms: [term] }) => term?.unit === 'tbsp');
  return whole.some(({ size, terms: [term] }) => {
    const rest = millilitres.minus(size);
    if (rest.isNegative() || rest.isZero()) return false;
    return (term?.unit === 'tbsp' ? vessels : [tablespoons]).some((table) => isNear(table, rest));
  });
}
