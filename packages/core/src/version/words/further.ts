import type { Quantity } from '../../amount/reading.js';
import { dimensionOf, isLengthUnit } from '../../amount/size.js';
import { writeStated, writeTerm } from '../../amount/write.js';
import type { Exact } from '../../exact.js';
import { findFood } from '../../food/find/find.js';
import type { Food } from '../../food/food.js';
import { shareByWeight, weigh } from '../../food/weigh.js';
import { temperatureFor } from '../../kitchen/heat/temperature.js';
import { lengthFor } from '../../kitchen/measure/length.js';
import { type StandInFood, standInOf } from '../../kitchen/shop/stand-in.js';
import type { Line } from '../../recipe/recipe.js';
import type { Conversion } from '../convert/convert-amount.js';
import { land, stateMeasure } from '../convert/land.js';
import { mustNotShrink } from '../convert/must-not-shrink.js';

/**
 * The food that a further quantity is of: what is named behind it (`or ¾ cup oil`, `in 130 ml of lemon juice`), else the line's own (`plus
 * 1 tbsp`). What an `or` names and is not known has no density, so that a volume stays one.
 */
function meantBy(
  { span }: Quantity,
  line: Line,
  { foods, native }: Conversion,
): { food: Food | null; isNamed: boolean } {
  const unnamed = { food: line.food, isNamed: false };
  const before = line.text.slice(0, span.start).trimEnd();
  const behind = /^[^,;()]*/u.exec(line.text.slice(span.end))?.[0] ?? '';
  // `¼ cup water and 1 tsp sugar` is of water.
  const words = (behind.split(/ (?:and|plus|\+|&) (?=[\p{Nd}\p{No}])/u)[0] ?? '').trim().replace(/^of /i, '');
  if (words === '') return unnamed;
  const named = findFood(words, foods, native.id);
  if (/\b(?:liquid|juices?|brine|syrup)\b/i.test(words)) return { food: named, isNamed: true };
  return named === null && !/[\s,(]or$/i.test(before) ? unnamed : { food: named, isNamed: true };
}

/**
 * A further quantity of a line's words in another kitchen: a length, a temperature, or an amount of a food.
 *
 * @param only The one food that takes its place there; null for none.
 * @returns Null where it cannot be stated there: a finding, never left as it is.
 */
export function convertFurther(
  quantity: Quantity,
  food: Food | null,
  conversion: Conversion,
  only: StandInFood | null = null,
): string | null {
  const high = quantity.high;
  const low = convertOne(quantity.low, quantity, food, only, conversion);
  if (low === null || high === null) return low;
  const top = convertOne(high, quantity, food, only, conversion);
  return top === null || top === low ? low : `${low} to ${top}`;
}

/**
 * A further quantity in the line's words in another kitchen. What names no food (`1 cup kosher salt plus 2 tbsp`) is read there as of the
 * one food that takes the line's own place, and is converted to it.
 *
 * @returns Null where it cannot be stated there.
 */
export function furtherOfLine(quantity: Quantity, line: Line, conversion: Conversion): string | null {
  const { kitchen, foods } = conversion;
  const { food, isNamed } = meantBy(quantity, line, conversion);
  const standIn = isNamed || food === null ? null : standInOf(food, kitchen, foods);
  const [only = null] = standIn?.length === 1 ? standIn : [];
  return convertFurther(quantity, food, conversion, only);
}

function convertOne(
  value: Exact,
  { unit }: Quantity,
  own: Food | null,
  standIn: StandInFood | null,
  conversion: Conversion,
): string | null {
  const { native, kitchen, ownWeights } = conversion;
  const dimension = dimensionOf(unit);
  if (isLengthUnit(unit)) return writeTerm(lengthFor(value, unit, kitchen));
  if (unit === 'C' || unit === 'F') {
    const to = temperatureFor(value, unit, kitchen);
    return writeTerm({ low: to.value, high: null, unit: to.unit });
  }
  if (dimension !== 'mass' && dimension !== 'volume') return null;
  const written = weigh(value, unit, own, { units: native.units, prep: '', stated: ownWeights });
  const there = { units: kitchen.units, prep: '', stated: ownWeights };
  const isOther = standIn !== null && written.grams !== null;
  const food = isOther ? standIn.food : own;
  const weighed = isOther ? shareByWeight(written, standIn.share, standIn.food, there) : written;
  // Of a food without a density a volume is still a volume: the juice of limes.
  const need = { weighed, dimension, byWrapper: false, atLeast: mustNotShrink(food, conversion) };
  const landed = land({ ...need, food }, kitchen) ?? land({ ...need, food: null }, kitchen);
  return landed === null ? null : writeStated(stateMeasure(landed.measure, false), kitchen);
}
