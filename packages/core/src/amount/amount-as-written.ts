import type { LineReading } from './reading.js';

/** A line's amount as its author wrote it, without the `of` between it and its food; null for a line without one. */
export function amountAsWritten({ text, amounts, amountSpans }: LineReading): string | null {
  if (amounts.length === 0 || amountSpans.length === 0) return null;
  const isOfEach = amountSpans.every(({ start, end }) => start === end);
  // The second food of `1 cup each flour and sugar` has the amount of the first.
  const spans = isOfEach ? amounts.map(({ span }) => span) : amountSpans;
  const words = spans.map(({ start, end }) => text.slice(start, end).trim());
  return words.join(' ').replace(/ of$/, '');
}
