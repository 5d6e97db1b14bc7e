import type { Quantity, Span } from '../../amount/reading.js';
import { isLengthUnit } from '../../amount/size.js';
import { isLengthRead, isSameLength } from '../../kitchen/measure/length.js';
import type { Line } from '../../recipe/recipe.js';
import type { Conversion } from '../convert/convert-amount.js';
import type { Edit } from '../version.js';
import { furtherOfLine } from './further.js';

/** Further quantities of the line's words, in the kitchen's units. */
export function furtherInWords(line: Line, conversion: Conversion): Edit[] {
  const { further } = line.reading;
  return further.flatMap((quantity, at): Edit[] => {
    const [before, behind] = [further[at - 1], further[at + 1]];
    // Of two statements of a length (`½-inch (1 cm) dice`) the one that is read there is enough.
    if (before !== undefined && isLengthAgain(before, quantity, line)) return [];
    const own = isUnderstoodLength(quantity, conversion);
    if (own) return [];
    const again = behind !== undefined && isLengthAgain(quantity, behind, line) ? behind : null;
    const text =
      again !== null && isUnderstoodLength(again, conversion)
        ? line.text.slice(again.span.start, again.span.end)
        : furtherOfLine(quantity, line, conversion);
    const end = again === null ? quantity.span.end : endOfAgain(line.text, quantity.span, again.span);
    return text === null ? [] : [{ start: quantity.span.start, end, text }];
  });
}

function isUnderstoodLength({ unit }: Quantity, { kitchen }: Conversion): boolean {
  return isLengthUnit(unit) && isLengthRead(unit, kitchen);
}

/** A length that stands right behind another, in a bracket or with a stroke, and says it again. */
function isLengthAgain(one: Quantity, other: Quantity, { text }: Line): boolean {
  if (!isLengthUnit(one.unit) || !isLengthUnit(other.unit)) return false;
  const between = text.slice(one.span.end, other.span.start).trim();
  return (
    (between === '(' || between === '/') && isSameLength({ ...one, unit: one.unit }, { ...other, unit: other.unit })
  );
}

/** Behind a second statement and the bracket that it stands in. */
function endOfAgain(text: string, one: Span, other: Span): number {
  return text.slice(one.end, other.start).includes('(') && text[other.end] === ')' ? other.end + 1 : other.end;
}
