import type { Ingredients, Line, Recipe } from '../../recipe/recipe.js';
import { saidOfAll } from '../../recipe/said-of-all.js';

/** Said in an ingredient line: the egg goes onto the dough, not into it. */
const onto =
  /\b(?:to|for) (?:the |an? )?(?:egg[- ]?)?(?:glaze|glazing|wash|brush|brushing|seal|sealing)\b|\begg[- ]?wash\b/;

/** Whether a line's own words say that all of it is brushed on. */
export function saysThatItIsBrushedOn(line: Line): boolean {
  return saidOfAll(line, onto);
}

/** A part that is nothing but egg, thinned or salted, and called a glaze or wash. */
export function isPartThatIsBrushedOn({ label, lines }: Ingredients): boolean {
  if (label === null || !/\b(?:glaze|glazing|egg[- ]?wash|wash|brushing)\b/i.test(label)) return false;
  return lines.every(({ food }) => food !== null && thin.has(food.role));
}

const thin: ReadonlySet<string> = new Set(['egg', 'liquid', 'salt']);

const eggs = new Set(['egg', 'eggs', 'yolk', 'yolks', 'white', 'whites']);

/** Whether a method brushes something with its eggs, and does nothing else with them but beat them first. */
export function isBrushedOn(recipe: Recipe): boolean {
  const words = clausesOf(recipe);
  const uses = words.flatMap((own, at) =>
    own.some((word) => eggs.has(word)) ? [{ own, next: words[at + 1] ?? [] }] : [],
  );
  return (
    uses.length > 0 &&
    uses.every(({ own, next }) => brushes(own) || (own.every((word) => beating.has(word)) && goesOn(next)))
  );
}

/** Whether a line is egg beaten with a little of something thin, `1 egg, beaten with 1 tsp water`, and the method brushes egg on. */
export function isThinnedToBrush({ text }: Line, recipe: Recipe): boolean {
  return (
    /\b(?:beaten|whisked|mixed) with [^,]{1,30}\b(?:water|milk|cream)\b/i.test(text) && clausesOf(recipe).some(brushes)
  );
}

function clausesOf({ steps }: Recipe): string[][] {
  const clauses = steps.flatMap(({ native }) => native.prose.toLowerCase().split(/[.,;:!?\n]/));
  return clauses.map((clause) => clause.match(/\p{L}+/gu) ?? []).filter(({ length }) => length > 0);
}

/** `brush the tops with beaten egg`, `brush the egg over the buns` */
function brushes(words: readonly string[]): boolean {
  const brush = words.findIndex(isBrush);
  const egg = words.findIndex((word) => eggs.has(word));
  if (brush < 0 || egg < brush) return false;
  const between = words.slice(brush + 1, egg);
  return between.includes('with') || between.every((word) => beating.has(word));
}

/** Behind `beat the egg with a tablespoon of water`: `and brush it over the buns`, not `brush the pan with butter`. */
function goesOn(words: readonly string[]): boolean {
  const brush = words.findIndex(isBrush);
  const thing = words.indexOf('with');
  return brush >= 0 && brush <= 1 && (thing < 0 || same.has(words[thing + 1] ?? ''));
}

function isBrush(word: string): boolean {
  return word.startsWith('brush') || word.startsWith('glaz');
}

const same = new Set(['it', 'this', 'them']);

/** All that is said of an egg which is only beaten, perhaps thinner. */
const beating = new Set(
  `beat whisk mix stir beaten lightly together well the a an and with of in until smooth some little remaining last
  egg eggs yolk yolks white whites water milk cream salt pinch splash teaspoon tablespoon tsp tbsp small bowl cup fork`.split(
    /\s+/,
  ),
);
