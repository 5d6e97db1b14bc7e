import { shortSizes, sizeWords } from '../quantity/adjective-words.js';
import type { Span } from '../reading.js';
import type { Tokens } from '../token/token.js';

/** Farthest that a size stands before and behind the food, in tokens. */
const farthest = { before: 6, behind: 5 };

/**
 * The word for the size of a counted food, before or behind its name: `3 large eggs`, `2 onions, small`, `1 lg leek`.
 *
 * @param food Token indexes of the food.
 * @param free Whether a token may be a size: the size of a container (`1 large can`) is not the food's.
 */
export function readSizeWord(
  tokens: Tokens,
  food: readonly number[],
  free: (index: number) => boolean,
): { text: string; span: Span } | null {
  const from = Math.max(0, (food[0] ?? 0) - farthest.before);
  const last = Math.min(tokens.length, (food.at(-1) ?? 0) + farthest.behind);
  for (let at = from; at < last; at += 1) {
    const { lower, end } = tokens.at(at);
    const short = Object.hasOwn(shortSizes, lower) ? shortSizes[lower] : undefined;
    if (!free(at) || (short === undefined && !sizeWords.has(lower))) continue;
    const first = lower === 'large' ? extraBefore(tokens, at) : at;
    const text = first < at ? 'extra large' : (short ?? lower);
    // `lg.` takes its full stop along.
    const stop = tokens.at(at + 1);
    const isShort = short !== undefined && stop.lower === '.' && !stop.gap;
    return { text, span: { start: tokens.at(first).start, end: isShort ? stop.end : end } };
  }
  return null;
}

/** Index of the `extra` of `extra large` or `extra-large`, or of the word itself. */
function extraBefore(tokens: Tokens, at: number): number {
  if (tokens.word(at - 1) === 'extra') return at - 1;
  return tokens.word(at - 1) === '-' && tokens.word(at - 2) === 'extra' ? at - 2 : at;
}
