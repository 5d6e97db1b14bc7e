import { containers } from './quantity/unit-words.js';
import type { LineReading } from './reading.js';

/** A container of the shop that a line counts without saying how much it holds: `1 large can`. */
export interface UnsizedContainer {
  /** In the singular, `tin` and `can` as written. */
  word: string;
  /** What the line says of its size all the same. */
  size: 'small' | 'large' | null;
}

/** The container of a line that counts cans or packets and gives no size; null for any other line. */
export function unsizedContainer({ text, amounts: [amount], pack }: LineReading): UnsizedContainer | null {
  if (amount === undefined || pack !== null) return null;
  const { unit, span } = amount;
  if (unit !== 'can' && unit !== 'tin' && unit !== 'packet') return null;
  const words: string[] =
    text
      .slice(span.start, span.end)
      .toLowerCase()
      .match(/\p{L}+/gu) ?? [];
  const named = words.map((word) => containers[word]).find((word) => word !== undefined);
  const size = words.includes('small') ? 'small' : words.includes('large') ? 'large' : null;
  return { word: unit === 'packet' ? (named ?? unit) : unit, size };
}
