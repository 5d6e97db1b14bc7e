import type { LineReading, Span } from '../amount/reading.js';
import type { Food } from './food.js';
import type { Foods } from './name-index.js';
import { foodNamed, indexOf } from './name-index.js';
import { nameKey, singularKey } from './name-key.js';
import { isRaw } from './traits.js';

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

/** Done to a food that stays the same, unless it is meat. */
const cuts = new Set(['fresh', 'grated', 'shredded', 'sliced', 'chopped', 'diced']);

/** The larder's food under the very name of a dish, one that some kitchen shows for it: `[corn tortillas](…)`. */
export function foodOfDish(words: string, foods: Foods, kitchen: string): Food | null {
  const key = nameKey(words);
  const food = shownAs(key, foods, kitchen);
  if (food !== null) return food;
  const [first = '', ...rest] = key.split(' ');
  const uncut = cuts.has(first) ? shownAs(rest.join(' '), foods, kitchen) : null;
  return uncut === null || isRaw(uncut) ? null : uncut;
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
