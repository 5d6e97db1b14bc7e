import type { Line } from './recipe.js';

/** Words that take a part of the line aside: `2 eggs, plus 1 for brushing`, `3 eggs (1 for the glaze)`. A spoonful of milk does not. */
const aside =
  /\b(?:plus|extra|more|another|divided|reserved?|rest|remaining|keep|save|(?:some|little) (?:to|for))\b|\b(?:\d+|one|two)\b(?! ?(?:tbsp|tsp|tablespoons?|teaspoons?|ml|g)\b)/;

/** Whether a line says something of all its food: `1 egg, to glaze`, but not `2 eggs, plus 1 to glaze` or `butter, plus extra for the pan`. */
export function saidOfAll({ text, name }: Line, said: RegExp): boolean {
  const words = text.toLowerCase();
  const found = said.exec(words);
  if (found === null) return false;
  const from = name?.span.end ?? 0;
  return !aside.test(words.slice(from, Math.max(from, found.index)));
}
