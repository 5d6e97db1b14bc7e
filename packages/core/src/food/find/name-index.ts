import type { Food } from '../food.js';
import { type SlipIndex, slipIndex } from './misspelt.js';
import { nameKey, singularKey } from './name-key.js';

/** Foods by their id, as a larder holds them. */
export type Foods = ReadonlyMap<string, Food>;

/**
 * Which foods a name means, by the name's key. A value lists foods with the kitchens that call them so, `any` for everywhere:
 * `cornstarch:uk,eu corn-flour:us`.
 */
export type NameIndex = Readonly<Record<string, string>>;

/** A food that a name means, and the kitchens that call it so. */
interface Meaning {
  id: string;
  kitchens: readonly string[];
}

/** An index made ready for look-ups. */
export interface ReadyIndex {
  /** What a key means: read out of the index when it is first asked for. */
  meanings(key: string): readonly Meaning[] | undefined;
  /** Whether a name uses a word, in its number or in the singular. */
  knows(word: string): boolean;
  /** The two words of a name that a text writes as one, `bell pepper` for `bellpepper`. Made when first asked for. */
  parted(word: string): readonly [string, string] | null;
  /** The words of names by the slips that may be made of them. Made when first asked for: only for words that no name has. */
  slips(): SlipIndex;
}

const indexes = new WeakMap<Foods, ReadyIndex>();

/** The index of all names of the foods: worked out once by whoever keeps foods on disk. */
export function indexNames(foods: Foods): NameIndex {
  const index = new Map<string, Map<string, string[]>>();
  const add = (key: string, id: string, kitchen: string) => {
    const entries = index.get(key) ?? new Map<string, string[]>();
    const kitchens = entries.get(id) ?? [];
    if (!kitchens.includes(kitchen)) entries.set(id, [...kitchens, kitchen]);
    index.set(key, entries);
  };
  for (const food of foods.values()) {
    for (const [kitchen, names] of Object.entries(food.names)) {
      for (const { one, many } of names) {
        const key = nameKey(one);
        for (const each of new Set([key, nameKey(many), singularKey(key)])) add(each, food.id, kitchen);
      }
    }
  }
  for (const id of foods.keys()) if (!index.has(nameKey(id))) add(nameKey(id), id, 'any');
  return Object.fromEntries([...index].map(([key, entries]) => [key, written(entries)]));
}

function written(entries: ReadonlyMap<string, readonly string[]>): string {
  return [...entries].map(([id, kitchens]) => `${id}:${kitchens.join(',')}`).join(' ');
}

/** Gives foods the index that was worked out for them, read when the first food is looked up. */
export function useNameIndex(foods: Foods, read: () => NameIndex): void {
  let index: ReadyIndex | undefined;
  const once = () => {
    index ??= ready(read());
    return index;
  };
  indexes.set(foods, {
    meanings: (key) => once().meanings(key),
    knows: (word) => once().knows(word),
    parted: (word) => once().parted(word),
    slips: () => once().slips(),
  });
}

/** The index of foods, worked out if nobody has given them one. */
export function indexOf(foods: Foods): ReadyIndex {
  const known = indexes.get(foods);
  if (known !== undefined) return known;
  const index = ready(indexNames(foods));
  indexes.set(foods, index);
  return index;
}

function ready(index: NameIndex): ReadyIndex {
  const names = new Map<string, string | readonly Meaning[]>(Object.entries(index));
  let words: ReadonlySet<string> | undefined;
  let slips: SlipIndex | undefined;
  let pairs: ReadonlyMap<string, readonly [string, string]> | undefined;
  const wordsOfNames = () => {
    words ??= new Set([...names.keys()].flatMap((key) => key.split(' ')));
    return words;
  };
  return {
    meanings: (key) => {
      const known = names.get(key);
      if (typeof known !== 'string') return known;
      const meanings = known.split(' ').map(readMeaning);
      names.set(key, meanings);
      return meanings;
    },
    knows: (word) => wordsOfNames().has(word) || wordsOfNames().has(singularKey(word)),
    parted: (word) => {
      pairs ??= pairsOf(names.keys());
      return pairs.get(word) ?? null;
    },
    slips: () => {
      slips ??= slipIndex(wordsOfNames());
      return slips;
    },
  };
}

/** Every two words that stand side by side in a name, as one. */
function pairsOf(keys: Iterable<string>): ReadonlyMap<string, readonly [string, string]> {
  const pairs = new Map<string, readonly [string, string]>();
  for (const key of keys) {
    const words = key.split(' ');
    for (let at = 1; at < words.length; at += 1) {
      const [one = '', other = ''] = [words[at - 1], words[at]];
      if (one.length > 2 && other.length > 2) pairs.set(one + other, [one, other]);
    }
  }
  return pairs;
}

function readMeaning(written: string): Meaning {
  const [id = '', kitchens = ''] = written.split(':');
  return { id, kitchens: kitchens.split(',') };
}

/** A name of a food that another food has in the same kitchen, so that only one of them would ever be found. */
export interface SharedName {
  name: string;
  kitchen: string;
  other: string;
}

/** The names of a food that are another's too: `pepper` is not the plural `peppers`, of which other foods may speak. */
export function sharedNames({ id, names }: Food, foods: Foods): SharedName[] {
  const index = indexOf(foods);
  const isCalled = (food: string, kitchen: string, key: string) =>
    (foods.get(food)?.names[kitchen] ?? []).some(({ one, many }) => nameKey(one) === key || nameKey(many) === key);
  return Object.entries(names).flatMap(([kitchen, list]) =>
    list.flatMap(({ one }) => {
      const key = nameKey(one);
      const other = index.meanings(key)?.find((meaning) => meaning.id !== id && isCalled(meaning.id, kitchen, key));
      return other === undefined ? [] : [{ name: one, kitchen, other: other.id }];
    }),
  );
}

/**
 * The food that a name means in a kitchen: its own name first, then one understood everywhere, then another kitchen's if only
 * one food has it.
 *
 * @param ownOnly Another kitchen's name means nothing.
 */
export function foodNamed(index: ReadyIndex, key: string, kitchen: string, ownOnly = false): string | null {
  const meanings = index.meanings(key) ?? index.meanings(singularKey(key));
  if (meanings === undefined) return null;
  const own = meanings.find(({ kitchens }) => kitchens.includes(kitchen));
  const everywhere = own ?? meanings.find(({ kitchens }) => kitchens.includes('any'));
  return everywhere?.id ?? (meanings.length === 1 && !ownOnly ? (meanings[0]?.id ?? null) : null);
}
