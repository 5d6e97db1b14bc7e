import type { LineReading } from '../../amount/reading.js';

/** A stretch of the words behind a food's name. */
export interface Clause {
  text: string;
  /** In brackets: it speaks of the food before it, and is no further food. */
  inBrackets: boolean;
  /** Nothing parts it from the name. */
  adjoins: boolean;
}

const signs = new Set([',', ';', ':', '|', '–', '—']);
const openings = new Set(['(', '[']);
const closings = new Set([')', ']']);

/**
 * The stretches behind a line's food, as brackets, commas and dashes part them; a bracket is one. Those that state the amount are
 * left out.
 */
export function clausesBehind({ text, food, amountSpans }: LineReading): Clause[] {
  const clauses: Clause[] = [];
  if (food === null) return clauses;
  let start = food.span.end;
  let depth = 0;
  let isTarget = false;
  const close = (end: number): void => {
    const isAmount = amountSpans.some((span) => span.start < end && span.end > start);
    const clause = text.slice(start, end).trim();
    if (clause !== '' && !isAmount && !isTarget)
      clauses.push({ text: clause, inBrackets: depth > 0, adjoins: start === food.span.end });
    start = end + 1;
  };
  for (let at = start; at <= text.length; at += 1) {
    const sign = text[at] ?? ';';
    if (openings.has(sign)) {
      if (depth === 0) close(at);
      // `](/beef)` is where a link leads.
      if (depth === 0) isTarget = sign === '(' && text[at - 1] === ']';
      depth += 1;
    } else if (closings.has(sign) && depth > 0) {
      if (depth === 1) close(at);
      depth -= 1;
      if (depth === 0) isTarget = false;
    } else if (at === text.length || (depth === 0 && (signs.has(sign) || isDash(text, at)))) close(at);
  }
  return clauses;
}

/** A hyphen with blanks on both sides, where a sentence ends too. */
function isDash(text: string, at: number): boolean {
  return (
    (text[at] === '-' && text[at - 1] === ' ' && text[at + 1] === ' ') || (text[at] === '.' && text[at + 1] === ' ')
  );
}
