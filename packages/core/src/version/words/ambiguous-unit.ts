import type { Quantity } from '../../amount/reading.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import type { PlacedProblem } from '../version.js';

/**
 * Units that are read one way and may have been meant in another: ounces of something that pours, and the lone letters `T`, `t` and `c`.
 * A second statement of the amount settles it, and so does a kitchen that has no other meaning for the letter.
 */
export function ambiguousUnits(line: Line, kitchen: Kitchen): PlacedProblem[] {
  const { amounts, pack, text } = line.reading;
  const first = amounts[0];
  if (first === undefined || amounts.length > 1) return [];
  const written = text.slice(first.span.start, first.span.end);
  const letter = loneLetter(written);
  if (letter !== null && !(letter === 'c' && kitchen.cups !== null))
    return [problem(first, written, ...ofLetter(letter))];
  if (pack === null && first.unit === 'oz' && line.food?.pours === true && kitchen.units.floz !== undefined) {
    const because = `\`${written}\` of something that pours may be a weight or fluid ounces.`;
    return [problem(first, written, because, 'Write `fl oz`, or give the grams or millilitres in brackets.')];
  }
  return [];
}

/** Whether the unit is a letter that some read as a tablespoon and others as a teaspoon. */
export function isLoneSpoon({ reading: { text, amounts } }: Line): boolean {
  const [first] = amounts;
  const letter = first === undefined ? null : loneLetter(text.slice(first.span.start, first.span.end));
  return letter === 'T' || letter === 't';
}

function problem(quantity: Quantity, text: string, because: string, instead: string): PlacedProblem {
  return { span: quantity.span, problem: { rule: 'unreadable-amount', text, because, instead } };
}

/** The letter that a unit is written as, where it is a single one: `1 T`, `2t`, `½ c.` */
function loneLetter(written: string): 'T' | 't' | 'c' | null {
  const bare = written.trimEnd().replace(/\.$/, '');
  const letter = bare.at(-1) ?? '';
  const before = bare.at(-2) ?? '';
  if (/\p{L}/u.test(before)) return null;
  if (letter === 'T' || letter === 't') return letter;
  return letter === 'c' || letter === 'C' ? 'c' : null;
}

function ofLetter(letter: 'T' | 't' | 'c'): [because: string, instead: string] {
  if (letter === 'c')
    return ['A `c` is a cup, which this kitchen does not measure by.', 'Write the amount in its own units.'];
  const meant = letter === 'T' ? '`tbsp`' : '`tsp`';
  return [`A reader may take \`${letter}\` for a tablespoon or a teaspoon.`, `Write ${meant} if that is meant.`];
}
