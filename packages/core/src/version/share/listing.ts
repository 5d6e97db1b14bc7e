import { type Foods, findFood } from '../../food/find/find.js';
import type { Food } from '../../food/food.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { lineCalled } from '../../recipe/line-called.js';
import type { Line, Mention } from '../../recipe/recipe.js';

/** An annotated amount of the running text. */
export type AmountMention = Extract<Mention, { kind: 'amount' }>;

/** Finds the line that an amount is a share of: by the words of `of` first, then by its food, then by the end of a name. */
export function listing(
  lines: readonly Line[],
  kitchen: Kitchen,
  foods: Foods,
): (mention: AmountMention) => Line | null {
  const byWords = new Map<string, Line>();
  const byFood = new Map<Food, Line>();
  // A share is of an amount: lines that state one come first.
  const stating = lines.filter(({ reading }) => reading.amounts.length > 0);
  for (const line of [...stating, ...lines.filter(({ reading }) => reading.amounts.length === 0)].reverse()) {
    const words = line.reading.food?.text.toLowerCase();
    if (words !== undefined) byWords.set(words, line);
    if (line.food !== null) byFood.set(line.food, line);
  }
  const short = lineCalled(stating);
  return (mention) => {
    const wanted = (mention.of ?? mention.reading.food?.text ?? '').toLowerCase();
    if (wanted === '') return null;
    const exact = byWords.get(wanted);
    if (exact !== undefined) return exact;
    const food = mention.food ?? findFood(wanted, foods, kitchen.id);
    return (food === null ? undefined : byFood.get(food)) ?? short(wanted);
  };
}
