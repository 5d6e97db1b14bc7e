import { type Food, findFood, findFoodOfLine, nameIn, readingIn, readLine } from '@retare/core';
import type { Larder } from '@retare/larder';

/** A food that words mean in some kitchens, with what each calls it. */
export interface Found {
  id: string;
  kitchens: { kitchen: string; name: string }[];
}

/** The foods that words mean, or a whole line with its amount, by kitchen: `cornflour` is one food in the US and another in the UK. */
export function findEntries(words: string, larder: Larder, kitchens: readonly string[]): Found[] {
  const { foods } = larder;
  const found = new Map<string, Found>();
  for (const kitchen of kitchens) {
    const food = findFood(words, foods, kitchen) ?? foodOfLine(words, larder, kitchen);
    if (food === null) continue;
    const entry = found.get(food.id) ?? { id: food.id, kitchens: [] };
    entry.kitchens.push({ kitchen, name: nameIn(food, kitchen).many });
    found.set(food.id, entry);
  }
  return [...found.values()];
}

function foodOfLine(line: string, { foods, kitchens }: Larder, id: string): Food | null {
  const kitchen = kitchens.get(id);
  if (kitchen === undefined) return null;
  const reading = readLine(line, readingIn(kitchen));
  return reading.amounts.length === 0 ? null : (findFoodOfLine(reading, foods, id)?.food ?? null);
}

/** Foods with a name that has a word beginning with each of the words, at most ten: for words that mean none. */
export function likeEntries(words: string, { foods }: Larder): string[] {
  const wanted = wordsOf(words);
  const has = (name: string) => wanted.every((word) => wordsOf(name).some((each) => each.startsWith(word)));
  const isLike = ({ id, names }: Food) =>
    has(id) || Object.values(names).some((list) => list.some(({ one, many }) => has(one) || has(many)));
  return [...foods.values()]
    .filter(isLike)
    .slice(0, 10)
    .map(({ id }) => id);
}

const wordsOf = (name: string): string[] => name.toLowerCase().split(/[\s-]+/);
