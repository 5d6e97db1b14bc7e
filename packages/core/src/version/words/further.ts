import type { Quantity } from '../../amount/reading.js';
import { dimensionOf, isLengthUnit } from '../../amount/size.js';
import { writeStated, writeTerm } from '../../amount/write.js';
import type { Exact } from '../../exact.js';
import { findFood } from '../../food/find/find.js';
import type { Food } from '../../food/food.js';
import { weigh } from '../../food/weigh.js';
import { temperatureFor } from '../../kitchen/heat/temperature.js';
import { lengthFor } from '../../kitchen/measure/length.js';
import type { Line } from '../../recipe/recipe.js';
import type { Conversion } from '../convert/convert-amount.js';
import { land, stateMeasure } from '../convert/land.js';

/**
 * The food that a further quantity is of: what is named behind it (`or ¾ cup oil`, `in 130 ml of lemon juice`), else the line's own (`plus
 * 1 tbsp`). What an `or` names and is not known has no density, so that a volume stays one.
 */
export function foodOfFurther({ span }: Quantity, line: Line, { foods, native }: Conversion): Food | null {
  const before = line.text.slice(0, span.start).trimEnd();
  if (foods === undefined) return line.food;
  const behind = /^[^,;()]*/u.exec(line.text.slice(span.end))?.[0] ?? '';
  // `¼ cup water and 1 tsp sugar` is of water.
  const words = (behind.split(/ (?:and|plus|\+|&) (?=[\p{Nd}\p{No}])/u)[0] ?? '').trim().replace(/^of /i, '');
  if (words === '') return line.food;
  if (/\b(?:liquid|juices?|brine|syrup)\b/i.test(words)) return findFood(words, foods, native.id);
  const named = findFood(words, foods, native.id);
  return /[\s,(]or$/i.test(before) ? named : (named ?? line.food);
}

/**
 * A further quantity of a line's words in another kitchen: a length, a temperature, or an amount of the same food.
 *
 * @returns Null where it cannot be stated there: a finding, never left as it is.
 */
export function convertFurther(quantity: Quantity, food: Food | null, conversion: Conversion): string | null {
  const high = quantity.high;
  const low = convertOne(quantity.low, quantity, food, conversion);
  if (low === null || high === null) return low;
  const top = convertOne(high, quantity, food, conversion);
  return top === null || top === low ? low : `${low} to ${top}`;
}

function convertOne(value: Exact, { unit }: Quantity, food: Food | null, conversion: Conversion): string | null {
  const { native, kitchen, ownWeights } = conversion;
  const dimension = dimensionOf(unit);
  if (isLengthUnit(unit)) return writeTerm(lengthFor(value, unit, kitchen));
  if (unit === 'C' || unit === 'F') {
    const to = temperatureFor(value, unit, kitchen);
    return writeTerm({ low: to.value, high: null, unit: to.unit });
  }
  if (dimension !== 'mass' && dimension !== 'volume') return null;
  const weighed = weigh(value, unit, food, { units: native.units, prep: '', stated: ownWeights });
  // Of a food without a density a volume is still a volume: the juice of limes.
  const landed =
    land({ weighed, dimension, food, byWrapper: false }, kitchen) ??
    land({ weighed, dimension, food: null, byWrapper: false }, kitchen);
  return landed === null ? null : writeStated(stateMeasure(landed.measure, false), kitchen);
}
