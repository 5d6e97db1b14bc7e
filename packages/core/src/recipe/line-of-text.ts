import { readingIn, readLine } from '../amount/line/read-line.js';
import { singular } from '../amount/line/same-food.js';
import type { LineReading } from '../amount/reading.js';
import { dimensionOf, isLengthUnit } from '../amount/size.js';
import { isGesture } from '../amount/unit-kind.js';
import { findFood } from '../food/find/find.js';
import type { Foods } from '../food/find/name-index.js';
import { findFoodOfLine } from '../food/of-line/find-in-line.js';
import { partOfEgg } from '../kitchen/egg.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { eachOf } from './each-of.js';
import type { Line } from './recipe.js';

/**
 * An ingredient line of its words: read, its food found, and what else it counts (`2 eggs plus 1 yolk`) read as a line within it.
 *
 * @param kitchen Where it was written.
 */
export function lineOfText(text: string, key: string, kitchen: Kitchen, foods: Foods): Line {
  const own = plainLine(text, key, kitchen, foods);
  return eachOf(own, kitchen, foods) ?? withCounted(own, kitchen, foods, mostCounted);
}

/** Nobody counts more foods in a line; a text of a thousand of them is read in no more time than any other. */
const mostCounted = 8;

function plainLine(text: string, key: string, kitchen: Kitchen, foods: Foods): Line {
  const reading = readLine(text, readingIn(kitchen));
  const named = findFoodOfLine(reading, foods, kitchen.id);
  return { key, text, reading, food: named?.food ?? null, name: named?.name ?? null };
}

/** @param most How many further places are tried. */
function withCounted(line: Line, kitchen: Kitchen, foods: Foods, most: number): Line {
  const { text, reading } = line;
  const name = reading.food;
  if (name === null || reading.amounts.length === 0) return line;
  let left = most;
  for (const { index, 0: joint } of text.slice(name.span.end).matchAll(joints)) {
    if (left === 0) return line;
    left -= 1;
    const at = name.span.end + index;
    const plus = plusAt(at + joint.length, line, kitchen, foods);
    if (plus === null || isIn(reading, at)) continue;
    // What stands behind it says nothing of what this is: `black beans plus 1 can kidney beans`.
    const alone = findFoodOfLine(readLine(text.slice(0, at), readingIn(kitchen)), foods, kitchen.id);
    const further = reading.further.filter(({ span }) => !isIn(plus.reading, span.start));
    const { food, name: words } = alone ?? line;
    return {
      ...line,
      food,
      name: words,
      reading: { ...reading, further },
      plus: withCounted(plus, kitchen, foods, left),
    };
  }
  return line;
}

/** `plus 1 yolk`, not `plus a yolk`: an article may belong to any words. */
const joints = /(?:,? )(?:plus|\+|and|&) (?=[\p{Nd}\p{No}]|(?:one|two|three|four)\b)/giu;

/** The line that begins at an index; null where it counts nothing, or no food that is known. */
function plusAt(from: number, main: Line, kitchen: Kitchen, foods: Foods): Line | null {
  // Blanks for what stands before it keep every place that of the whole line.
  const text = ' '.repeat(from) + main.text.slice(from);
  const line = plainLine(text, `${main.key}+`, kitchen, foods);
  const { reading } = line;
  const [amount] = reading.amounts;
  const [span] = reading.amountSpans;
  if (amount === undefined || span === undefined || span.start !== from || reading.doubt !== null) return null;
  if (isLengthUnit(amount.unit) || dimensionOf(amount.unit) === 'temperature' || isGesture(amount.unit)) return null;
  // `3 cloves garlic, plus 1 clove to rub`: the spice is not meant.
  if (singular(reading.food?.text.toLowerCase() ?? '') === main.reading.amounts[0]?.unit) return null;
  const named = partOfMain(line, main, foods, kitchen) ?? line;
  if (named.food === null) return null;
  // `1 cup sugar, plus 2 tbsp sugar to dust`: a part of the same is converted where it stands.
  if (dimensionOf(amount.unit) !== 'count' && named.food === main.food) return null;
  // A second statement may be of both: `2 eggs plus 1 yolk (120 g)`.
  const only = reading.pack === null ? { amounts: [amount], amountSpans: [span] } : {};
  // The yolk of `2 medium eggs plus 1 yolk` is a medium one's.
  const isOfEgg = partOfEgg(named.food) !== null && partOfEgg(main.food) !== null;
  const size = reading.size ?? (isOfEgg ? main.reading.size : null);
  return { ...line, food: named.food, name: named.name, reading: { ...reading, ...only, size, further: [] } };
}

/** `2 eggs plus 2 whites` */
function partOfMain({ reading }: Line, main: Line, foods: Foods, kitchen: Kitchen): Pick<Line, 'food' | 'name'> | null {
  if (reading.food === null || partOfEgg(main.food) === null) return null;
  const food = findFood(`egg ${reading.food.text}`, foods, kitchen.id);
  return partOfEgg(food) === null ? null : { food, name: reading.food };
}

function isIn({ amountSpans }: LineReading, at: number): boolean {
  return amountSpans.some(({ start, end }) => start <= at && at < end);
}
