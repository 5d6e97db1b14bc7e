import type { Line } from '../../recipe/recipe.js';

/**
 * Which native line each line of an author's version stands for: one of the same food, else one whose food does the same in the dish
 * (another salt, another milk), each native line once. Lines of a food in several amounts are matched in their order.
 *
 * @param isInParts Whether several foods together take a native line's place: then no other food stands for it.
 * @returns Lines without a native line of their own are left out.
 */
export function matchLines(
  native: readonly Line[],
  authored: readonly Line[],
  isInParts: (native: Line) => boolean = () => false,
): Map<Line, Line> {
  const matched = new Map<Line, Line>();
  const free = new Set(native);
  const match = (isAlike: (one: Line, other: Line) => boolean): void => {
    for (const line of authored) {
      if (matched.has(line)) continue;
      const own = [...free].find((each) => isAlike(each, line));
      if (own === undefined) continue;
      matched.set(line, own);
      free.delete(own);
    }
  };
  match((one, other) => (one.food === null ? sameWords(one, other) : one.food.id === other.food?.id));
  match(
    (one, other) =>
      one.food !== null && one.food.role === other.food?.role && isOfItsOwnKind(one.food.role) && !isInParts(one),
  );
  return matched;
}

function sameWords(one: Line, other: Line): boolean {
  const words = one.reading.food?.text.toLowerCase();
  return other.food === null && words !== undefined && words === other.reading.food?.text.toLowerCase();
}

/** Two seasonings, or two vegetables, are not the same for doing the same in the dish. */
function isOfItsOwnKind(role: string): boolean {
  return role !== 'seasoning' && role !== 'bulk' && role !== 'acid' && role !== 'cure';
}
