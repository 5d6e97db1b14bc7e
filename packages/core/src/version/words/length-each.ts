import { readUnit } from '../../amount/quantity/unit-reading.js';
import { isLengthUnit } from '../../amount/size.js';
import { firstStatement, type Stated } from '../../amount/stated.js';
import { tokenize } from '../../amount/token/tokenize.js';
import { writeStated } from '../../amount/write.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import type { Edit } from '../version.js';

/**
 * Pieces of a length each, whose number and length alone are replaced: `2 × 7.5 cm` for the `2 (3-inch)` of cinnamon sticks and of strips
 * of zest. Null for any other amount.
 */
export function lengthEach({ text, reading }: Line, stated: Stated, kitchen: Kitchen): Edit[] | null {
  const { pack } = reading;
  const start = reading.amountSpans[0]?.start;
  if (pack === null || stated.pack === null || start !== pack.span.start || !isLengthUnit(pack.unit)) return null;
  const end = endOfLength(text.slice(pack.span.start, pack.span.end), pack.unit);
  if (end === null || !isLengthUnit(stated.pack.unit)) return null;
  const alone = { ...firstStatement(stated), pack: { ...stated.pack, word: '' } };
  const count = alone.statements[0]?.map((term) => ({ ...term, unit: 'count' as const })) ?? [];
  return [{ start, end: start + end, text: writeStated({ ...alone, statements: [count] }, kitchen) }];
}

/** Behind the unit of the length, and the bracket that it stands in. */
function endOfLength(words: string, unit: string): number | null {
  const tokens = tokenize(words);
  for (let at = 0; at < tokens.length; at += 1) {
    if (tokens.at(at).kind !== 'number') continue;
    const read = readUnit(tokens, at + 1, { afterNumber: true });
    if (read?.unit !== unit) continue;
    const next = tokens.word(read.next) === ')' ? read.next + 1 : read.next;
    return tokens.at(next - 1).end;
  }
  return null;
}
