import type { LineReading, Span } from '../../amount/reading.js';
import { isSpoonOrPinch } from '../../amount/unit-kind.js';
import { type FoundFood, findFoodIn } from '../find/find.js';
import type { Foods } from '../find/name-index.js';
import { nameWords } from '../find/name-words.js';
import { changesNothing } from '../find/plain-words.js';
import { otherPlants } from '../find/variety.js';
import type { Food } from '../food.js';
import { asMeasured } from './as-measured.js';
import { byCup } from './by-cup.js';
import { bySpoon } from './by-spoon.js';
import { clausesBehind } from './clauses-behind.js';
import { speaksOfCure } from './cure-words.js';
import { withHeadBehind } from './head-behind.js';
import { kindBehind } from './kind-behind.js';
import { dishIn, foodOfDish } from './linked-dish.js';
import { startOfFood } from './said-of-food.js';

/** The food of a line, and the words that name it. */
export interface NamedFood {
  food: Food;
  name: { text: string; span: Span };
}

/**
 * The food of an ingredient line. The words between amount and food are tried with it, since `crushed` makes another food of
 * tomatoes than it does of garlic, and so is what it is counted in: sardines in a tin are not those of the fishmonger. A kind that is
 * named behind the food (`sugar, brown`) is the one meant.
 */
export function findFoodOfLine(reading: LineReading, foods: Foods, kitchen: string): NamedFood | null {
  const named = namedInLine(reading, foods, kitchen);
  return named === null || named.food.role === 'salt' ? (cureInLine(reading, foods) ?? named) : named;
}

function namedInLine(reading: LineReading, foods: Foods, kitchen: string): NamedFood | null {
  const dish = dishIn(reading);
  if (dish !== null) {
    const { start, end } = dish;
    const food = firstOf(asMeasured(reading), (as) => foodOfDish(reading.text.slice(start, end), foods, kitchen, as));
    return food === null ? null : withName({ food, start, end }, reading);
  }
  const found = plainlyNamed(reading, foods, kitchen);
  const kind = kindBehind(reading, found?.food ?? null, foods, kitchen);
  const meant =
    kind === null ? found : { food: kind.food, start: found?.start ?? kind.start, end: found?.end ?? kind.end };
  if (meant === null || (kind === null && isDried(reading, meant.food))) return null;
  return withName({ ...meant, food: byCup(bySpoon(meant.food, reading, foods), reading, foods) }, reading);
}

/** `Apples, dried`: the fresh ones would be the wrong food, where the larder has no others. */
function isDried(reading: LineReading, food: Food): boolean {
  const dried = 'dried';
  return (
    clausesBehind(reading)[0]?.text.toLowerCase() === dried && !changesNothing(dried, food, new Set([dried]), false)
  );
}

function withName({ food, start, end }: FoundFood, { text }: LineReading): NamedFood {
  return { food, name: { text: text.slice(start, end), span: { start, end } } };
}

/** What the words before the food and its own mean. */
function plainlyNamed(reading: LineReading, foods: Foods, kitchen: string): FoundFood | null {
  return firstOf(asMeasured(reading), (measured) =>
    namedAs(reading, (words) => findFoodIn(words, foods, kitchen, measured)),
  );
}

function firstOf<Item, Found>(items: readonly Item[], find: (item: Item) => Found | null): Found | null {
  for (const item of items) {
    const found = find(item);
    if (found !== null) return found;
  }
  return null;
}

function namedAs(reading: LineReading, find: (words: string) => FoundFood | null): FoundFood | null {
  if (reading.food === null) return null;
  const { text, amounts } = reading;
  const { span } = reading.food;
  const whole = { start: startOfFood(reading), end: span.end };
  const found = foundAt(text, { ...whole, end: endIn(reading) }, find) ?? foundAt(text, whole, find);
  if (found !== null) return found;
  const shared = foundAt(text, span, find) ?? withHeadBehind(reading, find);
  // `1 cup cooked bulgur` is no bulgur as it is sold.
  if (shared !== null && !fits(text.slice(whole.start, span.start), shared.food, amounts.length === 0)) return null;
  return shared ?? (amounts.length === 0 ? firstOfTwo(text, span, find) : firstSpice(reading, span, find));
}

/** Where the words end that say what the food lies in or with, as names do: `chipotles in adobo`, `tomatoes with chilies`. */
function endIn(reading: LineReading): number {
  const [behind] = clausesBehind(reading);
  const end = reading.food?.span.end ?? 0;
  const isIn = behind?.adjoins && !behind.inBrackets && /^(?:in|with)\s\p{L}+(?:\s\p{L}+)?$/iu.test(behind.text);
  return isIn ? reading.text.indexOf(behind.text, end) + behind.text.length : end;
}

/** Whether the words before a food's name leave it what it is. */
function fits(before: string, food: Food, unmeasured: boolean): boolean {
  const words = nameWords(before).map(({ text }) => text);
  return words.every((word) => !otherPlants.has(word) && changesNothing(word, food, new Set(words), unmeasured));
}

function foundAt(text: string, { start, end }: Span, find: (words: string) => FoundFood | null): FoundFood | null {
  const found = find(text.slice(start, end));
  return found === null ? null : { food: found.food, start: start + found.start, end: start + found.end };
}

/** A cure under a name that the larder does not have is a cure all the same: converted, it could poison. */
function cureInLine({ food, prep, amounts }: LineReading, foods: Foods): NamedFood | null {
  if (food === null || amounts.length === 0 || !speaksOfCure(`${food.text} ${prep}`)) return null;
  for (const each of foods.values()) if (each.role === 'cure') return { food: each, name: food };
  return null;
}

/** `salt and pepper to taste`: without an amount, the first of two foods stands for the line. */
function firstOfTwo(text: string, { start, end }: Span, find: (words: string) => FoundFood | null): FoundFood | null {
  const joint = /\s(?:and|&|n)\s|,/.exec(text.slice(start, end));
  if (joint === null) return null;
  const at = start + joint.index;
  // `mango and avocado salsa` is neither mango nor avocado.
  if (find(text.slice(at + joint[0].length, end)) === null) return null;
  return foundAt(text, { start, end: at }, find);
}

/** Garlic is a seasoning too, but spooned with ginger it is as fresh as that. */
const isSpice = ({ role, pieces }: Food): boolean =>
  role === 'seasoning' && pieces.every(({ unit }) => unit !== 'count' && unit !== 'clove');

/**
 * `1 tsp dried thyme and rosemary` is spooned as either is: the first of two spices stands for their amount. `1 tsp each` is as much again,
 * and of more than two nobody knows how much is which.
 */
function firstSpice(
  { text, amounts }: LineReading,
  { start, end }: Span,
  find: (words: string) => FoundFood | null,
): FoundFood | null {
  const joints = [...text.slice(start, end).matchAll(/\s(?:and|&|n)\s|[,;/]/g)];
  const [joint] = joints;
  if (joint === undefined || joints.length > 1 || /\beach\b/i.test(text)) return null;
  if (!amounts.every(({ unit }) => isSpoonOrPinch(unit))) return null;
  const at = start + joint.index;
  const found = foundAt(text, { start, end: at }, find);
  const other = find(text.slice(at + joint[0].length, end));
  return found !== null && other !== null && [found, other].every(({ food }) => isSpice(food)) ? found : null;
}
