import { isLengthUnit } from '../../amount/size.js';
import { firstStatement, type Stated } from '../../amount/stated.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { lengthFor } from '../../kitchen/measure/length.js';

/** A piece by its length (`3-inch piece of ginger`), or pieces of a length each; null where no length is stated. */
export function byLength(stated: Stated, kitchen: Kitchen): Stated | null {
  const term = stated.statements[0]?.[0];
  if (stated.pack !== null && isLengthUnit(stated.pack.unit)) {
    const { low, unit } = lengthFor(stated.pack.size, stated.pack.unit, kitchen);
    // A piece has no container word of its own, and its amount's stretch took the word in.
    const word = term?.unit === 'piece' ? 'piece' : stated.pack.word;
    return { ...firstStatement(stated), pack: { size: low, unit, word } };
  }
  if (stated.pack !== null || term === undefined || !isLengthUnit(term.unit)) return null;
  const from = lengthFor(term.low, term.unit, kitchen);
  const to = term.high === null ? null : lengthFor(term.high, term.unit, kitchen);
  return { ...stated, statements: [[{ ...from, high: to?.unit === from.unit ? to.low : null }]] };
}
