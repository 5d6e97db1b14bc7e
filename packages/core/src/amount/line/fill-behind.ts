import { fillIn } from '../fill.js';
import type { Quantity } from '../reading.js';
import type { Tokens } from '../token/token.js';

/** A word for how full a spoon or cup is that stands apart from it, and the tokens that fall away with it. */
export interface FillBehind {
  fill: string;
  start: number;
  next: number;
}

/**
 * `a scant ½ cup oil`, `1 tbsp heaping peanut butter`, `2 tbsp (heaped) cocoa`, `3 tbsp flour, heaped`: said before the number, right behind
 * the unit, in a bracket or in a clause of its own.
 *
 * @param free Whether a token belongs to nothing yet.
 */
export function fillBehind(tokens: Tokens, amount: Quantity, free: (index: number) => boolean): FillBehind | null {
  if (amount.fill !== undefined || fillIn(tokens.text.slice(amount.span.start, amount.span.end), amount.unit) !== null)
    return null;
  for (let at = 0; at < tokens.length; at += 1) {
    if (!free(at)) continue;
    const fill = fillIn(tokens.word(at), amount.unit);
    if (fill === null) continue;
    // `a scant ½ cup`: the article goes with it.
    if (at + 1 < tokens.length && tokens.at(at + 1).start === amount.span.start)
      return { fill, start: at > 0 && tokens.word(at - 1) === 'a' ? at - 1 : at, next: at + 1 };
    if (tokens.at(at).start < amount.span.end) continue;
    if (tokens.partner[at - 1] === at + 1) return { fill, start: at - 1, next: at + 2 };
    const isClause = tokens.word(at - 1) === ',' && (at + 1 === tokens.length || tokens.word(at + 1) === ',');
    if (isClause) return { fill, start: at - 1, next: at + 1 };
    if (tokens.at(at - 1).end === amount.span.end) return { fill, start: at, next: at + 1 };
  }
  return null;
}
