import type { LineReading } from '../amount/reading.js';

/** What begins a clause about something else: `or 1 tbsp fresh`, `plus more for the pan`. */
const elsewhere = new Set(['or', 'plus', 'and', 'for', 'with', 'to', 'not', 'if', 'see', 'instead']);

/** The words of a line that speak of its food: those before it, its own, and the clauses behind it that turn to nothing else. */
export function saidOfFood({ text, amountSpans, food, prep }: LineReading): string {
  if (food === null) return '';
  const before = amountSpans.filter(({ end }) => end <= food.span.start).map(({ end }) => end);
  const clauses = prep
    .split(/[;,()]/)
    .map((clause) => clause.trim())
    .filter((clause) => !elsewhere.has(clause.split(' ')[0]?.toLowerCase() ?? ''));
  return [text.slice(Math.max(0, ...before), food.span.end), ...clauses].join('; ');
}
