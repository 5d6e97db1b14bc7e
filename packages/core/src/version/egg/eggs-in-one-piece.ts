import type { Line, Recipe } from '../../recipe/recipe.js';
import { sentencesOf } from '../../recipe/sentences.js';

/** Cooked as it is, an egg is an egg: six halves are made of three. */
const cookedWhole = /\b(?:(?:hard|soft)[- ]?(?:boiled|cooked)|boiled|poached|fried)\b/;

/** Whether a line's own words say that its eggs stay in one piece. */
export function saysThatTheyStayWhole({ text }: Line): boolean {
  return cookedWhole.test(text.toLowerCase());
}

const cooking = new Set(['boil', 'boiled', 'poach', 'poached', 'fry', 'fried']);
/** `crack an egg into each well`, not `add the eggs, beating well after each` */
const cracking = new Set(['crack', 'break', 'slide']);
const places = new Set(['each', 'well', 'wells', 'hollow', 'hollows', 'nest', 'nests', 'dip', 'dips']);
/** What else is done with eggs in one piece, before and after. */
const handling = new Set(
  'peel halve halved quarter quartered slice sliced shell cool drain top serve add lower place arrange put lift cook set cover bake'.split(
    ' ',
  ),
);
/** Beginnings of words for what takes an egg apart: `beat`, `beating`. */
const mixing = ['beat', 'whisk', 'whip', 'mix', 'stir', 'fold', 'blend', 'combin', 'separat', 'scrambl', 'cream'];
const eggs = new Set(['egg', 'eggs']);

/**
 * Whether a method boils, poaches or fries its eggs, or cracks one into each place, and mixes them into nothing; or what it makes is
 * counted in eggs: `24 devilled eggs`.
 */
export function staysWhole(recipe: Recipe): boolean {
  const { makes } = recipe;
  if (makes !== null && /\beggs?\b/i.test(makes)) return true;
  const own = sentencesOf(recipe)
    .map((sentence) => sentence.match(/\p{L}+/gu) ?? [])
    .filter((words) => words.some((word) => eggs.has(word)));
  return own.some(isWhole) && own.every((words) => !words.some(isMixing) && (isWhole(words) || has(words, handling)));
}

function isWhole(words: readonly string[]): boolean {
  return has(words, cooking) || (has(words, cracking) && has(words, places));
}

function isMixing(word: string): boolean {
  return mixing.some((beginning) => word.startsWith(beginning));
}

function has(words: readonly string[], some: ReadonlySet<string>): boolean {
  return words.some((word) => some.has(word));
}
