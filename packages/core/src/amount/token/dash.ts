import type { Tokens } from './token.js';

/** A hyphen, a dash or a minus, whichever smart punctuation made of it. */
export function isDash(sign: string): boolean {
  return sign === '-' || sign === '–' || sign === '—' || sign === '‐' || sign === '‑' || sign === '‒' || sign === '−';
}

/** Whether a hyphen joins what stands before it to a word, without a blank: the one of `full-fat`. */
export function isInnerHyphen(tokens: Tokens, at: number): boolean {
  const [dash, behind] = [tokens.at(at), tokens.at(at + 1)];
  return isDash(dash.lower) && !dash.gap && !behind.gap && behind.kind === 'word';
}
