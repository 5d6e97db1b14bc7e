import { type Stated, sameStated, statedIn } from '../amount/stated.js';
import { writeStated } from '../amount/write.js';
import { translateName } from '../food/name.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Line } from '../recipe/recipe.js';
import type { Conversion } from './convert-amount.js';
import { amountEdits } from './edit.js';
import { convertFurther } from './further.js';
import type { Edit, PlacedProblem } from './version.js';
import { wholeEgg } from './weigh-line.js';

/** What to replace in a line's words so that it states another amount. */
export function amountInWords(line: Line, stated: Stated | null, kitchen: Kitchen): Edit[] {
  if (stated === null || line.reading.amounts.length === 0) return [];
  const { size } = line.reading;
  const isEgg = line.food?.id === wholeEgg && stated.pack === null;
  const text = writeStated(isEgg && size !== null ? { ...stated, eggSize: null } : stated, kitchen);
  const edits = readsTheSame(line, stated) ? [] : amountEdits(line.reading, text);
  if (!isEgg || size === null) return edits;
  // The size word of an egg belongs to its country: a US large egg is a UK medium one.
  const named = stated.eggSize ?? usualSize(kitchen);
  const gap = named === '' && line.text[size.span.end] === ' ' ? 1 : 0;
  return [...edits, { start: size.span.start, end: size.span.end + gap, text: named }];
}

/** A further statement of the same amount (`1¼ tsp (3.5 g)`) is as true in the other kitchen, but cups differ by a twentieth. */
function readsTheSame({ reading }: Line, stated: Stated): boolean {
  const own = statedIn(reading);
  if (own === null || sameStated(own, stated)) return own !== null;
  return (
    own.statements[0]?.[0]?.unit !== 'cup' && sameStated({ ...own, statements: own.statements.slice(0, 1) }, stated)
  );
}

/** A size that is sold by the carton's weight has no word that stands before `eggs`. */
function usualSize({ eggs }: Kitchen): string {
  return /\d/.test(eggs.usual) ? '' : eggs.usual;
}

/** The kitchen's own name of the food, where it has another. */
export function nameInWords({ food, name }: Line, kitchen: Kitchen): Edit[] {
  if (food === null || name === null) return [];
  const translated = translateName(food, name.text, kitchen.id);
  return translated === null ? [] : [{ ...name.span, text: translated }];
}

/** Further quantities of the line's words, in the kitchen's units. */
export function furtherInWords(line: Line, conversion: Conversion): Edit[] {
  return line.reading.further.flatMap((quantity) => {
    const text = convertFurther(quantity, line.food, conversion);
    return text === null ? [] : [{ ...quantity.span, text }];
  });
}

/** A further quantity that cannot be stated in the kitchen is a finding: a reader would take it as a unit of their own. */
export function unconverted(line: Line, conversion: Conversion): PlacedProblem[] {
  return line.reading.further
    .filter((quantity) => convertFurther(quantity, line.food, conversion) === null)
    .map((quantity) => ({
      span: quantity.span,
      problem: {
        rule: 'unmeasurable',
        reason: 'no-tool',
        text: line.text.slice(quantity.span.start, quantity.span.end),
        term: quantity,
        food: line.food,
        nearest: [],
      },
    }));
}
