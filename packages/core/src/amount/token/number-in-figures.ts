import { Exact } from '../../exact.js';
import {
  dozens,
  fractionBehind,
  isHyphened,
  passOfArticle,
  plainNumber,
  type ReadNumber,
  shareWord,
} from './number-parts.js';
import type { Tokens } from './token.js';

/** A number that begins with figures: `2`, `1 1/2`, `3/4th`, `½ dozen`. */
export function readFigures(tokens: Tokens, index: number): ReadNumber | null {
  const read = readFigure(tokens, index);
  if (read === null || tokens.at(read.next - 1).form !== 'fraction') return read;
  return fractionEnds.has(tokens.word(read.next)) ? { ...read, next: read.next + 1 } : read;
}

/** `3/4th cup`, `1/4 th tsp`, `2/3rds cup` */
const fractionEnds = new Set(['th', 'ths', 'rd', 'rds']);

/** `1 quarter`, `3 quarters`; but `2 quarter pound burgers` are two. */
function figureShare(tokens: Tokens, value: Exact, index: number): ReadNumber | null {
  const share = shareWord(tokens.word(index));
  if (share === null || isHyphened(tokens, index)) return null;
  const says = value.eq(1) || tokens.word(index).endsWith('s');
  const part = value.times(share);
  return says && part.lt(1) ? { ...plainNumber(part, passOfArticle(tokens, index + 1)), fraction: true } : null;
}

function readFigure(tokens: Tokens, index: number): ReadNumber | null {
  const token = tokens.at(index);
  if (token.value === null) return null;
  if (token.form !== 'whole') {
    const fraction = token.form === 'fraction';
    // `½ dozen`, `1½ dozen`
    const dozen = dozens(tokens, token.value, index + 1);
    if (dozen.next > index + 1 && dozen.value.isInteger()) return dozen;
    return { ...plainNumber(token.value, index + 1), fraction, neighbours: fraction && areNeighbours(token.text) };
  }
  const thousands = groupedBehind(tokens, index);
  if (thousands !== null) return thousands;
  const spaced = spacedFraction(tokens, index);
  if (spaced !== null) return spaced;
  const mixed = fractionBehind(tokens, index + 1);
  if (mixed !== null) return dozens(tokens, token.value.plus(mixed.value), mixed.next);
  return figureShare(tokens, token.value, index + 1) ?? dozens(tokens, token.value, index + 1);
}

/** `1 000`: a group of three noughts behind a blank is part of the number. */
function groupedBehind(tokens: Tokens, index: number): ReadNumber | null {
  const group = tokens.at(index + 1);
  if (group.lower !== '000') return null;
  return plainNumber(new Exact(`${tokens.at(index).lower}000`), index + 2);
}

/** `1 / 2`, with blanks. */
function spacedFraction(tokens: Tokens, index: number): ReadNumber | null {
  const [above, sign, below] = [tokens.at(index), tokens.at(index + 1), tokens.at(index + 2)];
  if (sign.text !== '/' || below.form !== 'whole' || above.value === null || below.value === null) return null;
  if (!above.value.lt(below.value) || below.value.gt(16)) return null;
  return { ...plainNumber(above.value.div(below.value), index + 3), fraction: true };
}

function areNeighbours(text: string): boolean {
  const [above, below] = text.split(/[/\u2044\u2215]/u);
  return above !== '1' && Number(above) + 1 === Number(below);
}
