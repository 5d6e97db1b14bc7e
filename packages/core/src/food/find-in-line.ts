import type { LineReading, Span } from '../amount/reading.js';
import { type FoundFood, findFoodIn } from './find.js';
import type { Food } from './food.js';
import type { Foods } from './name-index.js';

/** The food of a line, and the words that name it. */
export interface NamedFood {
  food: Food;
  name: { text: string; span: Span };
}

/**
 * The food of an ingredient line. The words between amount and food are tried with it, since `crushed` makes another food of
 * tomatoes than it does of garlic, and so is what it is counted in: sardines in a tin are not those of the fishmonger.
 */
export function findFoodOfLine(reading: LineReading, foods: Foods, kitchen: string): NamedFood | null {
  if (reading.food === null) return null;
  const { text } = reading;
  const { span } = reading.food;
  const before = reading.amountSpans.filter(({ end }) => end <= span.start).map(({ end }) => end);
  const from = Math.max(0, ...before);
  const spans = [{ start: from, end: span.end }, span];
  const as = asCounted(reading);
  const counted = as === null ? null : firstFound(spans, (words) => findAs(as, words, foods, kitchen), text);
  return counted ?? firstFound(spans, (words) => findFoodIn(words, foods, kitchen), text);
}

/** What a container or count makes of the words: `canned …` in a can, `… cube` of a stock that is counted. */
interface AsCounted {
  before: string;
  after: string;
}

const wrappers = new Set(['can', 'tin', 'jar']);

function asCounted({ amounts, pack, text }: LineReading): AsCounted | null {
  const unit = amounts[0]?.unit ?? '';
  if (wrappers.has(unit) || wrappers.has(pack?.word ?? '') || /\b(?:canned|tinned|jarred)\b/i.test(text)) {
    return { before: 'canned ', after: '' };
  }
  return unit === 'count' && pack === null ? { before: '', after: ' cube' } : null;
}

function findAs({ before, after }: AsCounted, words: string, foods: Foods, kitchen: string): FoundFood | null {
  const found = findFoodIn(`${before}${words}${after}`, foods, kitchen);
  if (found === null) return null;
  // The words that were added stand in no text.
  const start = Math.max(0, found.start - before.length);
  const end = Math.min(words.length, found.end - before.length);
  // Found without the word that was added, it is what the words alone would have found.
  return found.start > 0 && before !== '' ? null : { food: found.food, start, end };
}

function firstFound(spans: readonly Span[], find: (words: string) => FoundFood | null, text: string): NamedFood | null {
  for (const { start, end } of spans) {
    const found = find(text.slice(start, end));
    if (found === null) continue;
    const span = { start: start + found.start, end: start + found.end };
    return { food: found.food, name: { text: text.slice(span.start, span.end), span } };
  }
  return null;
}
