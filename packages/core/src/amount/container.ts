import { containers } from './quantity/unit-words.js';
import type { LineReading } from './reading.js';
import { isContainer } from './unit-kind.js';

/** A container of the shop that a line counts without saying how much it holds: `1 large can`. */
export interface UnsizedContainer {
  /** In the singular, `tin` and `can` as written. */
  word: string;
  /** What the line says of its size all the same. */
  size: 'small' | 'large' | null;
  /** A block, a bar: no container, and said of nothing else than what is sold so. */
  isPiece?: true;
}

/** Pieces in which shops sell a food, each of one weight. A loaf or a wedge is as large as anyone likes. */
const shopPieces: ReadonlyMap<string, string> = new Map([
  ...['block', 'bar', 'log', 'ball', 'sheet', 'wheel', 'ring'].flatMap((word): [string, string][] => [
    [word, word],
    [`${word}s`, word],
  ]),
  ['brick', 'block'],
  ['bricks', 'block'],
]);

/** The container of a line that counts cans, packets or a shop's blocks and gives no size; null for any other line. */
export function unsizedContainer({ text, amounts: [amount], pack }: LineReading): UnsizedContainer | null {
  if (amount === undefined || pack !== null) return null;
  const { unit, span } = amount;
  const isPiece = unit === 'count';
  if (!isPiece && !isContainer(unit)) return null;
  const words: string[] =
    text
      .slice(span.start, span.end)
      .toLowerCase()
      .match(/\p{L}+/gu) ?? [];
  const size = words.includes('small') ? 'small' : words.includes('large') ? 'large' : null;
  const piece = words.map((word) => shopPieces.get(word)).find((word) => word !== undefined);
  if (isPiece) return piece === undefined ? null : { word: piece, size, isPiece };
  const named = words.map((word) => containers[word]).find((word) => word !== undefined);
  return { word: unit === 'packet' ? (named ?? unit) : unit, size };
}
