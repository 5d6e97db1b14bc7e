import type { Line } from '../recipe/recipe.js';

/** What is served beside the dish. */
const beside = /\b(?:to serve|for serving|to garnish|for garnish|for garnishing|for the table)\b/;

/** Lines that a dish does without: they weigh nothing in the choice. */
export function isOptional(line: Line): boolean {
  return line.reading.optional || beside.test(line.text.toLowerCase());
}
