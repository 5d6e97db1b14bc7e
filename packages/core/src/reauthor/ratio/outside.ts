import type { Line, Recipe } from '../../recipe/recipe.js';
import { saidOfAll } from '../../recipe/said-of-all.js';
import { sentencesOf } from '../../recipe/sentences.js';

/** What a cook does with a food that is no part of the dough or batter. */
const apart = new RegExp(
  `\\b(?:${[
    'whip(?:s|ped|ping)?',
    'fill(?:s|ed|ing)?',
    'serv(?:e|es|ed|ing)',
    'drizzl(?:e|es|ed|ing)',
    'dust(?:s|ed|ing)?',
    'frost(?:s|ed|ing)?',
    'glaz(?:e|es|ed|ing)',
    'ic(?:e|es|ed|ing) the',
    'scatter(?:s|ed|ing)?',
    'sandwich(?:es|ed|ing)?',
    'pour(?:s|ed|ing)? (?:it |them )?over',
    'over the top',
    'spread(?:s|ing)?',
  ].join('|')})\\b`,
);

/** The same, said in the line itself. */
const apartInLine =
  /\b(?:to|for) (?:serve|serving|dust|dusting|fill|the filling|the top|topping|finish|garnish|the pan|greasing|grease|frying|fry|brushing|brush|glaze|glazing|sprinkling|sprinkle|drizzling|drizzle)\b/;

/**
 * Whether a line stands outside the flour ratios of its part: the method whips it, fills with it, pours it over or serves it, and does
 * nothing else with it. A food that other sentences name too may be in the dough, and is held to its ratio.
 */
export function standsOutside(line: Line, recipe: Recipe): boolean {
  if (saidOfAll(line, apartInLine)) return true;
  const name = lastWord(line.reading.food?.text ?? '');
  if (name === '') return false;
  const own = readSentences(recipe).filter(({ words }) => words.has(name) || words.has(`${name}s`));
  return own.length > 0 && own.every((sentence) => sentence.apart);
}

function lastWord(name: string): string {
  return name.toLowerCase().split(/\s+/).at(-1)?.replace(/s$/, '') ?? '';
}

/** Words for foods that say what is done: `cream the butter` names no cream, `flour the board` no flour. */
const asVerb =
  /\b(?:cream|butter|flour|oil|salt|sugar|pepper|water|egg)\s+(?:the|a|an|your|two|both|it|them|together|and\s+(?:flour|line|sugar))\b/g;

interface Sentence {
  words: ReadonlySet<string>;
  /** It whips, fills, pours over or serves. */
  apart: boolean;
}

const sentences = new WeakMap<Recipe, Sentence[]>();

function readSentences(recipe: Recipe): Sentence[] {
  let known = sentences.get(recipe);
  if (known === undefined) {
    known = sentencesOf(recipe).map((text) => ({
      words: new Set(text.replace(asVerb, ' ').match(/\p{L}+/gu) ?? []),
      apart: apart.test(text),
    }));
    sentences.set(recipe, known);
  }
  return known;
}
