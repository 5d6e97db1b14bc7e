import type { LineReading } from '../../amount/reading.js';

/** What begins a clause about something else: `or 1 tbsp fresh`, `plus more for the pan`. */
const elsewhere = new Set(['or', 'plus', 'and', 'for', 'with', 'to', 'not', 'if', 'see', 'instead']);

/** Where the words about a line's food begin: behind the amounts that stand before it. */
export function startOfFood({ amountSpans, food }: LineReading): number {
  const start = food?.span.start ?? 0;
  return Math.max(0, ...amountSpans.map(({ end }) => end).filter((end) => end <= start));
}

/** The words of a line that speak of its food: those before it, its own, and the clauses behind it that turn to nothing else. */
export function saidOfFood(reading: LineReading): string {
  const { text, food, prep } = reading;
  if (food === null) return '';
  const clauses = prep
    .split(/[;,()]/)
    .map((clause) => clause.trim())
    .filter((clause) => !elsewhere.has(clause.split(' ')[0]?.toLowerCase() ?? ''));
  return [text.slice(startOfFood(reading), food.span.end), ...clauses].join('; ');
}
