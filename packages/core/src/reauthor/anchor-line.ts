import { statedIn } from '../amount/stated.js';
import { lineCalled } from '../recipe/line-called.js';
import type { Line } from '../recipe/recipe.js';

/** The food's id that an anchor's words may be: `butter-beans` for `Butter beans`. */
export function foodIdOf(name: string): string {
  return name.trim().toLowerCase().replaceAll(' ', '-');
}

/**
 * The line that an anchor names, of those with an amount: by the line's words first, then by its food, then by the end of a name.
 *
 * @returns Null where no line is called so.
 */
export function anchorLine(name: string, lines: readonly Line[]): Line | null {
  const wanted = name.trim().toLowerCase();
  const id = foodIdOf(name);
  const stating = lines.filter(({ reading }) => statedIn(reading) !== null);
  const byWords = stating.find(({ reading, name: named }) =>
    [reading.food?.text, named?.text.trim()].some((text) => text?.toLowerCase() === wanted),
  );
  return byWords ?? stating.find(({ food }) => food?.id === id) ?? lineCalled(stating)(name);
}
