import type { LineReading } from '../reading.js';

/** Foods of which nobody counts one: `a good olive oil` names its kind. Common usage of recipe writers, no source. */
const massNouns = new Set(
  'oil vinegar wine flour sugar salt honey mustard cheese cheddar parmesan butter rice stock broth water milk cream yogurt yoghurt'.split(
    ' ',
  ),
);

/** An article before what is not counted is no amount: `a good quality olive oil`, `a dry white wine`. */
export function withoutArticle(reading: LineReading): LineReading {
  const { text, amounts, pack, food, amountSpans } = reading;
  const [amount, ...others] = amounts;
  if (amount === undefined || others.length > 0 || pack !== null || food === null || amount.unit !== 'count')
    return reading;
  const words = text.slice(amount.span.start, amount.span.end).trim().toLowerCase();
  const last =
    food.text
      .trim()
      .toLowerCase()
      .split(/[\s-]+/u)
      .at(-1) ?? '';
  if ((words !== 'a' && words !== 'an') || amountSpans.length !== 1 || !massNouns.has(last)) return reading;
  return { ...reading, kind: 'no-amount', amounts: [], amountSpans: [], size: null };
}
