import { type Food, type Kitchen, near, sharedNames } from '@retare/core';
import type { Fault, KeyPath } from '../read/problem.js';
import type { FoodEntry } from '../schema/food-schema.js';

/** What a food's names are looked up in. */
export interface Known {
  base: ReadonlyMap<string, Food>;
  /** Entries beside this one: named even if they have faults of their own. */
  entries: Readonly<Record<string, FoodEntry>>;
  kitchens: ReadonlyMap<string, Kitchen>;
}

/** What one food names beyond itself, and nobody has: foods and kitchens. */
export function checkNames(entry: FoodEntry, { base, entries, kitchens }: Known): Fault[] {
  const isKnown = (food: string) => (entries[food] === undefined ? base.has(food) : entries[food].remove !== true);
  return [
    ...foodsNamed(entry)
      .filter(({ food }) => !isKnown(food))
      .map(({ path, food }) => ({
        path,
        message: `There is no food \`${food}\` in the larder. Add it, or name another`,
      })),
    ...(['names', 'sold'] as const).flatMap((key) =>
      Object.keys(entry[key] ?? {})
        .filter((kitchen) => kitchen !== 'any' && !kitchens.has(kitchen))
        .map((kitchen) => unknownKitchen([key, kitchen], kitchen, kitchens)),
    ),
  ];
}

/** A food of the site's own that takes another's place has to say its allergens: silence would tell readers that there are none. */
export function checkUnsaid(entry: FoodEntry, { base, entries }: Known): Fault[] {
  const isUnsaid = (food: string) =>
    !base.has(food) && entries[food] !== undefined && entries[food].allergens === undefined;
  return standInsNamed(entry)
    .filter(({ food }) => isUnsaid(food))
    .map(({ path, food }) => ({
      path,
      message: `\`${food}\` takes the place of another food, and its entry does not say what allergens it has. Write its \`allergens\` there, \`[]\` for none`,
    }));
}

/** Kitchens of which a food says nothing: whether it is sold there, and what it is then called. */
export function checkForgotten({ names, sold }: Food, kitchens: ReadonlyMap<string, Kitchen>): Fault[] {
  const ids = [...kitchens.keys()];
  const unsaid = ids.filter((id) => (sold[id] ?? sold.any) === undefined);
  const unnamed = ids.filter((id) => (sold[id] ?? sold.any)?.sold === true && (names[id] ?? names.any) === undefined);
  return [forgotten('sold', unsaid), forgotten('names', unnamed)].flat();
}

function forgotten(key: string, kitchens: readonly string[]): Fault[] {
  if (kitchens.length === 0) return [];
  const list = kitchens.map((kitchen) => `\`${kitchen}\``).join(', ');
  return [
    { path: [key], message: `\`${key}\` says nothing for ${list}. Add them, or \`any\` for every other kitchen` },
  ];
}

/** Names that an entry gives its food though another food has them there: the later of the two would never be found. */
export function checkShared(food: Food, entry: FoodEntry, foods: ReadonlyMap<string, Food>): Fault[] {
  return sharedNames(food, foods)
    .filter(({ kitchen }) => entry.names?.[kitchen] !== undefined)
    .map(({ name, kitchen, other }) => ({
      path: ['names', kitchen],
      message: `\`${name}\` is the name of \`${other}\` too, so that only one of the two would be found. Override \`${other}\`, or write another name`,
    }));
}

/** What is wrong with taking a food away: there is none, or another that was not itself touched is made of it. */
export function checkRemoved(id: string, foods: ReadonlyMap<string, Food>, base: ReadonlyMap<string, Food>): Fault[] {
  if (!base.has(id)) {
    const meant = near(id, [...base.keys()]);
    const advice = meant === undefined ? '`retare larder list` lists them' : `Write \`${meant}\``;
    return [{ path: [], on: 'key', message: `There is no food \`${id}\` in the larder to remove. ${advice}` }];
  }
  return [...foods.values()]
    .filter((food) => partsOf(food).includes(id))
    .map((food) => ({
      path: ['remove'],
      message: `\`${id}\` cannot be removed: \`${food.id}\` is made of it or replaced by it. Override that food too`,
    }));
}

/** The fault of a kitchen id that nobody has. */
export function unknownKitchen(path: KeyPath, id: string, kitchens: ReadonlyMap<string, unknown>): Fault {
  const allowed = [...kitchens.keys()];
  const known = allowed.map((each) => `\`${each}\``).join(', ');
  return { path, message: `There is no kitchen \`${id}\`. Use ${known}, or one from your larder file`, allowed };
}

function foodsNamed({ contains = [], sold = {}, spooned, cupped }: FoodEntry): { path: KeyPath; food: string }[] {
  const contents = contains.map(({ food }, index) => ({ path: ['contains', index, 'food'], food }));
  return [
    ...contents,
    ...standInsNamed({ sold }),
    ...(spooned === undefined ? [] : [{ path: ['spooned'], food: spooned }]),
    ...(cupped === undefined ? [] : [{ path: ['cupped'], food: cupped }]),
  ];
}

function standInsNamed({ sold = {} }: Pick<FoodEntry, 'sold'>): { path: KeyPath; food: string }[] {
  return Object.entries(sold).flatMap(([kitchen, shops]) =>
    (shops['stand-ins'] ?? []).flatMap(({ parts }, one) =>
      parts.map(({ food }, other) => ({ path: ['sold', kitchen, 'stand-ins', one, 'parts', other, 'food'], food })),
    ),
  );
}

const partsOf = ({ contains, sold }: Food): string[] => [
  ...contains.map(({ food }) => food),
  ...Object.values(sold).flatMap(({ standIns }) => standIns.flatMap(({ parts }) => parts.map(({ food }) => food))),
];
