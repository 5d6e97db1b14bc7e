import type { LineReading, Span } from '../amount/reading.js';
import { speaksOfCure } from './cure-words.js';
import { type FoundFood, findFoodIn } from './find.js';
import type { Food } from './food.js';
import type { Foods } from './name-index.js';

/** The food of a line, and the words that name it. */
export interface NamedFood {
  food: Food;
  name: { text: string; span: Span };
}

/**
 * The food of an ingredient line. The words between amount and food are tried with it, since `crushed` makes another food of
 * tomatoes than it does of garlic, and so is what it is counted in: sardines in a tin are not those of the fishmonger.
 */
export function findFoodOfLine(reading: LineReading, foods: Foods, kitchen: string): NamedFood | null {
  const named = namedInLine(reading, foods, kitchen);
  return named === null || named.food.role === 'salt' ? (cureInLine(reading, foods) ?? named) : named;
}

function namedInLine(reading: LineReading, foods: Foods, kitchen: string): NamedFood | null {
  if (reading.food === null) return null;
  const { text } = reading;
  const { span } = reading.food;
  const before = reading.amountSpans.filter(({ end }) => end <= span.start).map(({ end }) => end);
  const from = Math.max(0, ...before);
  const spans = [{ start: from, end: span.end }, span];
  for (const as of asMeasured(reading)) {
    const found = firstFound(spans, (words) => findAs(as, words, foods, kitchen), text);
    if (found !== null) return found;
  }
  const found = firstFound(spans, (words) => findFoodIn(words, foods, kitchen), text);
  if (found !== null || reading.amounts.length > 0) return found;
  return firstOfTwo(text, span, (words) => findFoodIn(words, foods, kitchen));
}

/** A cure under a name that the larder does not have is a cure all the same: converted, it could poison. */
function cureInLine({ food, prep, amounts }: LineReading, foods: Foods): NamedFood | null {
  if (food === null || amounts.length === 0 || !speaksOfCure(`${food.text} ${prep}`)) return null;
  for (const each of foods.values()) if (each.role === 'cure') return { food: each, name: food };
  return null;
}

/** `salt and pepper to taste`: without an amount, the first of two foods stands for the line. */
function firstOfTwo(text: string, { start, end }: Span, find: (words: string) => FoundFood | null): NamedFood | null {
  const joint = /\s(?:and|&)\s|,/.exec(text.slice(start, end));
  if (joint === null) return null;
  const at = start + joint.index;
  // `mango and avocado salsa` is neither mango nor avocado.
  if (find(text.slice(at + joint[0].length, end)) === null) return null;
  return firstFound([{ start, end: at }], find, text);
}

/** What a container or a count makes of the words. */
interface AsMeasured {
  before: string;
  after: string;
  /** Only a food of this role is believed. */
  role?: Food['role'];
}

const wrappers = new Set(['can', 'tin', 'jar']);
const spoons = new Set(['tsp', 'tbsp']);
const greens = new Set(['bunch', 'sprig', 'handful']);

/** `canned …` in a can, `whole …` or `… cube` where one is counted, `… powder` of bouillon by the spoon. */
function asMeasured({ amounts, pack, text, food }: LineReading): AsMeasured[] {
  const unit = amounts[0]?.unit ?? '';
  if (wrappers.has(unit) || wrappers.has(pack?.word ?? '') || /\b(?:canned|tinned|jarred)\b/i.test(text)) {
    return [{ before: 'canned ', after: '' }];
  }
  if (spoons.has(unit) && /bouillon/i.test(food?.text ?? '')) return [{ before: '', after: ' powder' }];
  // Coriander by the bunch is the herb, where the bare word may be the spice.
  if (greens.has(unit)) return [{ before: 'fresh ', after: '', role: 'seasoning' }];
  // A stick of cinnamon, a sheet of gelatin.
  const shape = shapeOf(unit, text.slice(0, food?.span.start));
  if (shape !== null) return [{ before: '', after: ` ${shape}` }];
  // In `1 glass of milk` the glass is counted.
  const isCounted = unit === 'count' && pack === null && !/\p{L}{3}/u.test(text.slice(0, food?.span.start));
  return isCounted
    ? [
        { before: '', after: ' cube' },
        { before: 'whole ', after: '' },
      ]
    : [];
}

/** The word for the thing counted that may be part of the food's name: `stick`, `sheet`, `leaf`. */
function shapeOf(unit: string, before: string): string | null {
  if (unit === 'stick') return 'stick';
  const word = /\b(?:sheets?|leaf|leaves)\b/i.exec(before)?.[0].toLowerCase();
  if (word === undefined) return null;
  return word.startsWith('sheet') ? 'sheet' : 'leaf';
}

function findAs({ before, after, role }: AsMeasured, words: string, foods: Foods, kitchen: string): FoundFood | null {
  if (before !== '' && words.toLowerCase().startsWith(before)) return null;
  const whole = `${before}${words}${after}`;
  const found = findFoodIn(whole, foods, kitchen);
  if (found === null || (role !== undefined && found.food.role !== role)) return null;
  // Found without the word that was added, it is what the words alone would have found.
  if ((before !== '' && found.start > 0) || (after !== '' && found.end < whole.length)) return null;
  // The words that were added stand in no text.
  const start = Math.max(words.length - words.trimStart().length, found.start - before.length);
  return { food: found.food, start, end: Math.min(words.trimEnd().length, found.end - before.length) };
}

function firstFound(spans: readonly Span[], find: (words: string) => FoundFood | null, text: string): NamedFood | null {
  for (const { start, end } of spans) {
    const found = find(text.slice(start, end));
    if (found === null) continue;
    const span = { start: start + found.start, end: start + found.end };
    return { food: found.food, name: { text: text.slice(span.start, span.end), span } };
  }
  return null;
}
