import type { Quantity } from '../../amount/reading.js';
import { isLengthUnit, isMassUnit, isVolumeUnit } from '../../amount/size.js';
import { writeTerm } from '../../amount/write.js';
import { isLengthRead } from '../../kitchen/measure/length.js';
import { unitRatio } from '../../kitchen/measure/unit-ratio.js';
import { weightSaid } from '../../kitchen/measure/weight-said.js';
import type { Line } from '../../recipe/recipe.js';
import type { Conversion } from '../convert/convert-amount.js';
import type { Edit } from '../version.js';
import { convertFurther } from './further.js';

/**
 * Further statements of an amount that stays as it is, `2 carrots (about ½ lb)`, where a cook there does not read their unit, or has
 * another spoon of that name.
 */
export function againInWords(line: Line, conversion: Conversion | undefined): Edit[] {
  if (conversion === undefined) return [];
  return saidAgain(line, conversion).flatMap(({ quantity, text }) =>
    text === null ? [] : [{ ...quantity.span, text }],
  );
}

/** Second statements that have to be said otherwise there, in words; null where they cannot be. */
export function saidAgain(
  { reading, food }: Line,
  conversion: Conversion,
): { quantity: Quantity; text: string | null }[] {
  return reading.amounts
    .slice(1)
    .filter((quantity) => !isUnderstood(quantity, conversion) && !saysLengthAgain(quantity, reading.amounts[0]))
    .map((quantity) => ({
      quantity,
      text: weightAgain(quantity, conversion) ?? convertFurther(quantity, food, conversion),
    }));
}

/** `5cm/2in` of ginger: where the first is read, so is the second. */
function saysLengthAgain({ unit }: Quantity, first: Quantity | undefined): boolean {
  return isLengthUnit(unit) && first !== undefined && isLengthUnit(first.unit);
}

/** A cup is a twentieth larger or smaller, which a second statement leaves open; a tablespoon may be a third larger. */
const sameWithin = '0.06';

function isUnderstood({ unit }: Quantity, { native, kitchen }: Conversion): boolean {
  if (isMassUnit(unit)) return kitchen.writes.mass.includes(unit);
  if (isLengthUnit(unit)) return isLengthRead(unit, kitchen);
  if (!isVolumeUnit(unit)) return true;
  if (!kitchen.writes.volume.includes(unit)) return false;
  return unitRatio(unit, kitchen, native)?.minus(1).abs().lessThan(sameWithin) ?? false;
}

/** What pieces come to is told, as a weight: nobody measures it. */
function weightAgain({ low, high, unit }: Quantity, { kitchen }: Conversion): string | null {
  if (!isMassUnit(unit)) return null;
  return writeTerm(weightSaid(low, high, unit, kitchen));
}
