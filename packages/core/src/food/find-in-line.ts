import type { LineReading, Span } from '../amount/reading.js';
import { type Foods, findFoodIn } from './find.js';
import type { Food } from './food.js';

/** The food of a line, and the words that name it. */
export interface NamedFood {
  food: Food;
  name: { text: string; span: Span };
}

/**
 * The food of an ingredient line. The words between amount and food are tried with it, since `crushed` makes another food of
 * tomatoes than it does of garlic.
 */
export function findFoodOfLine(reading: LineReading, foods: Foods, kitchen: string): NamedFood | null {
  if (reading.food === null) return null;
  const { span } = reading.food;
  const before = reading.amountSpans.filter(({ end }) => end <= span.start).map(({ end }) => end);
  const from = Math.max(0, ...before);
  return (
    namedIn(reading.text, { start: from, end: span.end }, foods, kitchen) ?? namedIn(reading.text, span, foods, kitchen)
  );
}

function namedIn(text: string, { start, end }: Span, foods: Foods, kitchen: string): NamedFood | null {
  const found = findFoodIn(text.slice(start, end), foods, kitchen);
  if (found === null) return null;
  const span = { start: start + found.start, end: start + found.end };
  return { food: found.food, name: { text: text.slice(span.start, span.end), span } };
}
