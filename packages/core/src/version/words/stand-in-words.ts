import type { Stated } from '../../amount/stated.js';
import { writeStated } from '../../amount/write.js';
import type { Food } from '../../food/food.js';
import { nameIn } from '../../food/name.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import type { Edit } from '../version.js';
import { amountEdits, overlap } from './edit.js';

/** A food that takes the place of a line's own, with its amount; null where the line has none. */
export interface StandingIn {
  food: Food;
  stated: Stated | null;
}

/** What to replace in a line's words, for all of its stand-in and for each food of it by itself. */
export interface StandInEdits {
  together: Edit[];
  alone: Edit[][];
  /** What each food is called. */
  names: string[];
}

/** `½ cup half-and-half` becomes `90 ml whole milk and 1½ tbsp double cream`, or a line for each. */
export function standInEdits(line: Line, foods: readonly StandingIn[], kitchen: Kitchen): StandInEdits {
  const { name } = line;
  const [first, ...others] = foods;
  if (first === undefined || name === null) return { together: [], alone: foods.map(() => []), names: [] };
  const form = formOf(line);
  const named = foods.map((each) => inForm(each, form, first.food, kitchen.id));
  const amounts = foods.map(({ stated }) => (stated === null ? '' : `${writeStated(stated, kitchen)} `));
  const also = others
    .map((_, at) => `${at === others.length - 1 ? ' and' : ','} ${amounts[at + 1]}${named[at + 1]}`)
    .join('');
  const edits = (at: number, more: string): Edit[] => {
    const stated = foods[at]?.stated ?? null;
    const amount = stated === null ? [] : amountEdits(line.reading, writeStated(stated, kitchen));
    // A name may take in the blank before it.
    const blank = name.text.slice(0, name.text.length - name.text.trimStart().length);
    return [...amount, { ...name.span, text: `${blank}${headed(named[at] ?? '', line)}${more}` }];
  };
  // What may be had instead of the food is none of each of its stand-in's: `½ cup half-and-half or milk`.
  const hasChoice = /^\s+or\b/i.test(line.text.slice(name.span.end));
  const alone = foods.map(({ food }, at) =>
    food.role === first.food.role && (at === 0 || !hasChoice)
      ? edits(at, '')
      : [{ start: 0, end: line.text.length, text: `${amounts[at]}${named[at]}` }],
  );
  return { together: edits(0, also), alone, names: named };
}

/** The kitchen's name beside an amount: `1 green chilli`, `½ green chilli`, but `12 g green chillies`. */
export function nameWith(stated: Stated | null, food: Food, kitchen: string): string {
  const term = stated?.statements[0]?.[0];
  const { one, many } = nameIn(food, kitchen);
  return stated?.pack === null && term?.unit === 'count' && !(term.high ?? term.low).greaterThan(1) ? one : many;
}

/** Edits of further quantities of a line, as far as its other edits leave their words. */
export function withFurther(edits: readonly Edit[], further: readonly Edit[]): Edit[] {
  return [...edits, ...further.filter((each) => !edits.some((edit) => overlap(edit, each)))];
}

/** A capital at the head of a line stays one; a name that has its own keeps it for itself. */
function headed(text: string, { name }: Line): string {
  const written = name?.text.trimStart()[0] ?? '';
  const isHead = name !== null && name.span.start === 0 && written !== written.toLowerCase();
  return isHead ? text.charAt(0).toUpperCase() + text.slice(1) : text;
}

/** Forms that some names begin with. What else a line says of its food stands outside the name, and stays. */
const leading = /^(?:shredded|grated|crumbled|chopped|diced|sliced|crushed|ground)(?= )/i;

/** The word for the form in which a line's name has its food: `shredded Mexican cheese`, `graham cracker crumbs`. */
function formOf({ name, text }: Line): string {
  const words = name?.text.trim() ?? '';
  // Crumbs of another food may be no name that is known; what is crushed is that food.
  const form = leading.exec(words)?.[0] ?? (/\bcrumbs?$/i.test(words) ? 'crushed' : '');
  const before = text.slice(0, name?.span.start ?? 0).toLowerCase();
  return form === '' || before.includes(form.toLowerCase()) ? '' : `${form} `;
}

/** The form goes with what does the same in the dish as the first food: crushed crackers, not crushed butter. */
function inForm({ food, stated }: StandingIn, form: string, first: Food, kitchen: string): string {
  const name = nameWith(stated, food, kitchen);
  // What is minced is ground already.
  const isFormed = leading.test(name) || /\bminced?\b/i.test(name);
  return food.role === first.role && !isFormed ? `${form}${name}` : name;
}
