import type { Recipe } from './recipe.js';

/** The sentences of a recipe's native methods, in small letters and in their order. */
export function sentencesOf({ steps }: Recipe): string[] {
  return steps.flatMap(({ native }) => native.prose.toLowerCase().split(/[.;!?\n]/));
}
