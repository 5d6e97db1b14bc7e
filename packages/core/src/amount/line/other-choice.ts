import type { LineReading, Quantity } from '../reading.js';

/** How far back the words of another choice can begin: `or 1 (`, `or two (`. */
const reach = 16;

/**
 * A size in brackets behind `or` and a number belongs to another choice, `2 lb tomatoes or 1 (28-oz) can`: it is no second statement of
 * the line's amount but a further quantity.
 */
export function withoutOtherChoice(reading: LineReading): LineReading {
  const others = reading.amounts.slice(1).filter((quantity) => isOfOtherChoice(reading.text, quantity));
  if (others.length === 0) return reading;
  return {
    ...reading,
    amounts: reading.amounts.filter((quantity) => !others.includes(quantity)),
    amountSpans: reading.amountSpans.filter(
      (span) => !others.some((other) => span.start <= other.span.start && other.span.end <= span.end),
    ),
    further: [...reading.further, ...others].sort((a, b) => a.span.start - b.span.start),
  };
}

function isOfOtherChoice(text: string, { span }: Quantity): boolean {
  const before = text.slice(Math.max(0, span.start - reach), span.start);
  return /\bor \S{1,6} \($/u.test(before);
}
