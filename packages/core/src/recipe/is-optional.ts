import type { Line } from './recipe.js';

/** What is served beside the dish. */
const beside = /\b(?:to serve|for serving|to garnish|for garnish|for garnishing|for the table)\b/;

/** Lines that a dish does without: they weigh nothing in the choice. */
export function isOptional(line: Line): boolean {
  // `3 lemons, plus 1 lemon for garnish`: that is said of the last one.
  const own = line.plus === undefined ? line.text : line.text.slice(0, line.plus.reading.amountSpans[0]?.start);
  return line.reading.optional || beside.test(own.toLowerCase());
}
