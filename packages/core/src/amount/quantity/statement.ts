import type { Exact } from '../../exact.js';
import { isLengthUnit, isMassUnit, isVolumeUnit, type KitchenUnits } from '../size.js';
import { isDash } from '../token/dash.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';
import { addUp, inSmallerUnit, inTablespoons, type Measure } from './add-up.js';
import { type ReadQuantity, readQuantity } from './quantity.js';

/** One statement of an amount: a quantity, a range over two units, or a sum. */
export interface Statement {
  low: Exact;
  high: Exact | null;
  /** `count` where there is no unit. */
  unit: UnitId;
  /** Of a sum the larger unit, which its words name beside `unit`. */
  beside?: UnitId;
  approx: boolean;
  /** Token indexes: from the words for about, from the number, and behind the last unit without `of`. */
  start: number;
  first: number;
  next: number;
  /** The quantity it begins with. */
  quantity: ReadQuantity;
}

/**
 * Reads a statement at an index: `about 2 cups`, `30g to 70g`, `1/4 cup + 1/2 tsp`, `1 lb 4 oz`.
 *
 * @param kitchen Sizes of the kitchen's own units, for a sum.
 */
export function readStatement(tokens: Tokens, index: number, kitchen: KitchenUnits): Statement | null {
  const quantity = readQuantity(tokens, index);
  if (quantity === null) return null;
  const single: Statement = { ...quantity, unit: quantity.unit ?? 'count', quantity };
  if (quantity.unit === null || quantity.bare) return single;
  return readLongRange(tokens, single, kitchen) ?? readSum(tokens, single, kitchen) ?? single;
}

/** Whether a statement has a unit that measures: mass, volume or length. */
export function isMeasured(unit: UnitId | null): boolean {
  return unit !== null && (isMassUnit(unit) || isVolumeUnit(unit) || isLengthUnit(unit));
}

/** `30g to 70g`, `1 tsp–1 tbsp`: a range whose ends both have a unit. */
function readLongRange(tokens: Tokens, low: Statement, kitchen: KitchenUnits): Statement | null {
  const joint = tokens.word(low.next);
  if (low.high !== null || !(isDash(joint) || joint === 'to')) return null;
  const upper = readQuantity(tokens, low.next + 1);
  if (upper === null || upper.high !== null || upper.unit === null || upper.bare || upper.article) return null;
  const both = inSmallerUnit(low, { ...upper, unit: upper.unit }, kitchen);
  if (both === null || !both[1].low.gt(both[0].low)) return null;
  // `1 cup - 250 ml` says the same twice, `1 tsp–1 tbsp` does not.
  if (isDash(joint) && upper.unit !== low.unit && both[1].low.lt(both[0].low.times('1.5'))) return null;
  return {
    ...low,
    low: both[0].low,
    high: both[1].low,
    unit: both[0].unit,
    approx: low.approx || upper.approx,
    next: upper.next,
  };
}

/** `1 stick plus 2 tbsp`, `1/4 cup + 1/2 tsp`, `1 cup plus 2 tbsp`, `1 lb 4 oz`, `2 cups and 1 tbsp` */
function readSum(tokens: Tokens, first: Statement, kitchen: KitchenUnits): Statement | null {
  const joint = tokens.word(first.next);
  const joined = joint === '+' || joint === 'plus' || joint === 'and' || joint === '&';
  const bare = first.unit === 'lb' && tokens.at(first.next).kind === 'number';
  // `1 pound, 4 ounces`
  const comma = first.unit === 'lb' && joint === ',' && tokens.at(first.next + 1).kind === 'number';
  const sticks = first.unit === 'stick' && joined;
  if (!(isMeasured(first.unit) || sticks) || !(joined || bare || comma)) return null;
  const second = readQuantity(tokens, joined || comma ? first.next + 1 : first.next);
  if (second === null || second.unit === null || second.bare || !isMeasured(second.unit)) return null;
  if (second.unit === first.unit || ((bare || comma) && second.unit !== 'oz')) return null;
  // A pound and more is stated again, as in `1 lb, 16 oz`.
  if (comma && second.low.gte(16)) return null;
  if (sticks && !isVolumeUnit(second.unit)) return null;
  const sum: Measure | null = addUp(inTablespoons(first), { ...second, unit: second.unit }, kitchen);
  return sum === null ? null : { ...first, ...sum, approx: first.approx || second.approx, next: second.next };
}
