import { readUnit } from '../quantity/unit-reading.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';
import { type FoodPhrase, phraseText } from './food-phrase.js';

/** A unit word at the end of a food's name. */
export interface TrailingUnit {
  unit: UnitId;
  /** The name without the word; `null` where the word stays in it. */
  food: FoodPhrase | null;
  /** Index of the word. */
  at: number;
}

/** Foods of which a stick is a natural measure: other sticks (`fish sticks`) are foods. */
const inSticks = new Set(['cinnamon', 'celery', 'butter', 'lemongrass', 'margarine', 'grass']);
const creatures = new Set([
  'fish',
  'salmon',
  'shrimp',
  'prawn',
  'pig',
  'cod',
  'chicken',
  'duck',
  'lamb',
  'sheep',
  'calf',
]);
const bacons = new Set(['bacon', 'pancetta', 'prosciutto', 'ham']);
/** Containers in a food's own name: `2 tea bags`. */
const ownContainers = new Set([
  'tea',
  'oven',
  'juice',
  'freezer',
  'lunch',
  'stock',
  'bouillon',
  'canning',
  'mason',
  'baking',
  'roasting',
  'muffin',
  'glass',
]);

/**
 * The unit of a counted food that follows it: `3 garlic cloves`, `1 cinnamon stick`, `4 bread slices`; and strips of bacon, which are slices.
 *
 * @param unit Unit read before the food.
 * @param loose Measure word without a unit that was read before the food.
 */
export function trailingUnit(tokens: Tokens, food: FoodPhrase, unit: UnitId, loose: string): TrailingUnit | null {
  if (unit !== 'count') return null;
  const at = food.tokens.at(-1) ?? 0;
  const words = food.tokens.map((index) => tokens.word(index));
  const last = words.at(-1) ?? '';
  const before = words.at(-2) ?? '';
  if ((loose === 'strip' || loose === 'strips') && words.some((word) => bacons.has(word)))
    return { unit: 'slice', food: null, at };
  if (loose !== '' || before === '') return null;
  const shorter = {
    tokens: food.tokens.slice(0, -1),
    text: phraseText(tokens, food.tokens.slice(0, -1)),
    next: food.next,
  };
  if ((last === 'strips' || last === 'strip') && bacons.has(before)) return { unit: 'slice', food: shorter, at };
  const read = readUnit(tokens, at, { afterNumber: false });
  if (read === null || read.loose !== '' || !countsBehind(read.unit, before)) return null;
  return { unit: read.unit, food: shorter, at };
}

function countsBehind(unit: UnitId, before: string): boolean {
  if (unit === 'clove') return before === 'garlic';
  if (unit === 'stick') return inSticks.has(before);
  if (unit === 'head') return !creatures.has(before);
  if (unit === 'packet') return !ownContainers.has(before);
  return (
    unit === 'slice' || unit === 'sprig' || unit === 'bunch' || unit === 'can' || unit === 'tin' || unit === 'piece'
  );
}
