import type { LineReading, Span } from '../../amount/reading.js';
import { findFoodIn } from '../find/find.js';
import type { Foods } from '../find/name-index.js';
import { foodNamed, indexOf } from '../find/name-index.js';
import { nameKey, singularKey } from '../find/name-key.js';
import type { Measured } from '../find/speech.js';
import { isRaw } from '../find/traits.js';
import type { Food } from '../food.js';

/**
 * Where a line names the result of another recipe, all of it: the words of a link into the same site (`[pizza sauce](/pizza-sauce)`),
 * or what is counted in batches.
 */
export function dishIn({ text, food, amountSpans }: LineReading): Span | null {
  if (food === null) return null;
  const link = linkAround(text, food.span);
  if (link !== null) return link;
  const isBatch = amountSpans.some(({ start, end }) =>
    /\b(?:batch|batches|recipe|recipes)\b/i.test(text.slice(start, end)),
  );
  return isBatch ? food.span : null;
}

/** The words of the link that a stretch stands in, unless it leads to another site. */
function linkAround(text: string, { start, end }: Span): Span | null {
  const open = text.lastIndexOf('[', start);
  const close = text.indexOf('](', open);
  if (open < 0 || close < end || text.slice(open, close).includes(']')) return null;
  const target = text.slice(close + 2, text.indexOf(')', close));
  return /^[a-z]+:/i.test(target.trim()) ? null : { start: open + 1, end: close };
}

/** Words for what is made, so that the shop's is another than the recipe's. */
const made = new Set(
  `sauce sauces salsa slaw salad soup stew seasoning dressing dip mix mayo mayonnaise rub marinade dough crust filling topping gravy chutney
  relish cake bread curry crema cream batter paste spread glaze syrup jam`.split(/\s+/),
);

/**
 * The larder's food that a dish is: under a name that some kitchen shows for it (`[corn tortillas](…)`), or as the line's words mean
 * it (`[cooked chard](…)`), unless they speak of something made, or of raw meat that the recipe does something to.
 */
export function foodOfDish(words: string, foods: Foods, kitchen: string, measured: Measured): Food | null {
  const key = nameKey(words);
  const food = shownAs(key, foods, kitchen);
  if (food !== null || made.has(key.slice(key.lastIndexOf(' ') + 1))) return food;
  const meant = findFoodIn(words, foods, kitchen, measured)?.food ?? null;
  return meant !== null && isRaw(meant) ? null : meant;
}

function shownAs(key: string, foods: Foods, kitchen: string): Food | null {
  const food = foods.get(foodNamed(indexOf(foods), key, kitchen) ?? '');
  if (food === undefined) return null;
  const bare = withoutKind(key);
  const isShown = Object.values(food.names).some(([first]) => {
    return (
      first !== undefined && (withoutKind(nameKey(first.one)) === bare || withoutKind(nameKey(first.many)) === bare)
    );
  });
  return isShown ? food : null;
}

/** `Cheddar cheese` is `cheddar`, in the singular. */
function withoutKind(key: string): string {
  return singularKey(key.endsWith(' cheese') ? key.slice(0, -' cheese'.length) : key);
}
