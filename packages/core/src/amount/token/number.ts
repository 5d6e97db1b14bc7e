import { readFigures } from './number-in-figures.js';
import { readWords } from './number-in-words.js';
import type { ReadNumber } from './number-parts.js';
import type { Tokens } from './token.js';

/**
 * Reads one number at an index: `2`, `1 1/2`, `1-1/2`, `2 and 1/4`, `½`, `two`, `half a`, `one and a half`, `a couple`, `two dozen`.
 *
 * @returns `null` where no number stands.
 */
export function readNumber(tokens: Tokens, index: number): ReadNumber | null {
  return readFigures(tokens, index) ?? readWords(tokens, index);
}
