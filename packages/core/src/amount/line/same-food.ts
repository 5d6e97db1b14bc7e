import type { Tokens } from '../token/token.js';
import { leadingPreparation, partsOfFood } from './line-words.js';

/** A word without its plural: `limes` and `lime`, `leaves` and `leaf`, `tomatoes` and `tomato` are the same. */
export function singular(word: string): string {
  if (word.endsWith('ies') && word.length > 4) return `${word.slice(0, -3)}y`;
  if (word.endsWith('ves') && word.length > 4) return `${word.slice(0, -3)}f`;
  if (word.endsWith('oes') || word.endsWith('ches') || word.endsWith('shes') || word.endsWith('sses'))
    return word.slice(0, -2);
  if (word.endsWith('s') && !word.endsWith('ss') && word.length > 3) return word.slice(0, -1);
  return word;
}

/** Where the words from an index stop naming the line's own food, and whether they named it at all. */
export interface SameFood {
  next: number;
  named: boolean;
}

/**
 * Passes over words that only name the line's food again, a part of it, its size or preparation.
 *
 * @param foods The food's words, singular.
 */
export function passSameFood(tokens: Tokens, from: number, stop: number, foods: ReadonlySet<string>): SameFood {
  let at = from;
  let named = false;
  while (at < stop) {
    const { lower, kind } = tokens.at(at);
    if (foods.has(singular(lower))) named = true;
    else if (!(lower === '-' || (kind === 'word' && (partsOfFood.has(lower) || leadingPreparation.has(lower))))) break;
    if (lower === '-' && tokens.at(at).gap) break;
    at += 1;
  }
  return { next: at, named };
}
