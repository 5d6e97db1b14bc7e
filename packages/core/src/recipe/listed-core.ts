import { singularKey } from '../food/find/name-key.js';
import { nameWords } from '../food/find/name-words.js';
import { nameIn } from '../food/name.js';
import { celsiusOf } from '../kitchen/heat/oven.js';
import { safeMinimum } from '../kitchen/heat/safe.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Line } from './recipe.js';

/** Nobody calls a listed food by more words than this. */
const mostWords = 6;

/**
 * Finds the class of safe temperature of what a core temperature is `of`, by the lines: `beef` is the ground beef that is listed, `chicken`
 * the whole chicken. A line that is called just so comes first; of several the class with the highest minimum.
 *
 * @param lines Lines of one kitchen.
 * @param kitchen The kitchen that they were written in, whose minimum decides.
 * @param kitchens Every kitchen: where the own one has one minimum for both, the highest of all decides.
 * @returns For a name its class; null where no line with a safe temperature is called so.
 */
export function listedCore(
  lines: readonly Line[],
  kitchen: Kitchen,
  kitchens: Iterable<Kitchen>,
): (name: string) => string | null {
  const all = [...kitchens];
  const stricter = (one: string | null | undefined, other: string): string =>
    one == null || isStricter(other, one, kitchen, all) ? other : one;
  const whole = new Map<string, string>();
  const part = new Map<string, string>();
  for (const { food, reading } of lines) {
    if (food?.coreClass == null) continue;
    for (const name of [reading.food?.text ?? '', nameIn(food, kitchen.id).one]) {
      const words = nameWords(name).map(({ text }) => text);
      whole.set(keyOf(words), stricter(whole.get(keyOf(words)), food.coreClass));
      for (let from = 0; from < words.length; from += 1) {
        for (let to = from + 1; to <= Math.min(words.length, from + mostWords); to += 1) {
          const key = keyOf(words.slice(from, to));
          part.set(key, stricter(part.get(key), food.coreClass));
        }
      }
    }
  }
  return (name) => {
    const key = keyOf(nameWords(name).map(({ text }) => text));
    return whole.get(key) ?? part.get(key) ?? null;
  };
}

/** Whether a class has the higher minimum in its own kitchen or, where that is the same, in any. */
export function isStricter(one: string, other: string, kitchen: Kitchen, kitchens: readonly Kitchen[]): boolean {
  const own = leastIn(one, kitchen) - leastIn(other, kitchen);
  if (own !== 0) return own > 0;
  const most = (of: string): number => Math.max(...kitchens.map((each) => leastIn(of, each)));
  return most(one) > most(other);
}

function leastIn(foodClass: string, kitchen: Kitchen): number {
  const minimum = safeMinimum(kitchen, foodClass);
  return minimum === null ? 0 : celsiusOf(minimum.temperature, minimum.unit).toNumber();
}

function keyOf(words: readonly string[]): string {
  return singularKey(words.join(' '));
}
