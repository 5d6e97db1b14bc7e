import type { Line, Recipe } from '../recipe/recipe.js';

/** What a cook does with a food that is no part of the dough or batter. */
const apart = [
  'whip',
  'fill',
  'serve',
  'drizzle',
  'dust',
  'frost',
  'glaze',
  'scatter',
  'sandwich',
  'pour over',
  'over the top',
  'spread',
];
/** The same, said in the line itself. */
const apartInLine = [
  'to serve',
  'for serving',
  'for dusting',
  'to dust',
  'for the filling',
  'to fill',
  'for the top',
  'to finish',
  'for the pan',
  'for greasing',
  'for frying',
  'to garnish',
];

/**
 * Whether a line stands outside the ratios of its part: the method whips it, fills with it, pours it over or serves it.
 *
 * A sentence that names the food beside such a word says so; a food that is named elsewhere too may still be in the dough, but then its
 * ratio cannot be told from the page.
 */
export function standsOutside(line: Line, recipe: Recipe): boolean {
  const words = line.text.toLowerCase();
  if (apartInLine.some((phrase) => words.includes(phrase))) return true;
  const name = lastWord(line.reading.food?.text ?? '');
  if (name === '') return false;
  return sentencesOf(recipe).some(
    (sentence) => sentence.includes(name) && apart.some((phrase) => sentence.includes(phrase)),
  );
}

/** Lines that a dish does without: they weigh nothing in the choice. */
export function isOptional(line: Line): boolean {
  const words = line.text.toLowerCase();
  return (
    line.reading.optional || words.includes('to serve') || words.includes('for serving') || words.includes('to garnish')
  );
}

function lastWord(name: string): string {
  return name.toLowerCase().split(/\s+/).at(-1)?.replace(/s$/, '') ?? '';
}

const sentences = new WeakMap<Recipe, string[]>();

function sentencesOf(recipe: Recipe): string[] {
  let known = sentences.get(recipe);
  if (known === undefined) {
    known = recipe.steps.flatMap(({ native }) => native.prose.toLowerCase().split(/[.;!?\n]/));
    sentences.set(recipe, known);
  }
  return known;
}
