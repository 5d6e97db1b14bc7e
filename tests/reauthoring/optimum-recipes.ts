import { Exact, type Food, type Kitchen, type Line, type Recipe, readLine } from '@retare/core';
import { ofAnEgg } from './optimum-candidates.ts';
import { soldFor } from './optimum-kinds.ts';

/** A native line, weighed by the generator itself. */
export interface Wanted {
  food: Food;
  grams: number;
  /** `g`, `ml` for any volume, `count` for pieces, `pack` for packs. */
  unit: 'g' | 'ml' | 'count' | 'pack';
  /** Measured by the spoon. */
  spooned?: true;
  /** How many of its unit. */
  count: number;
  text: string;
  /** Served beside the dish: it weighs nothing. */
  beside: boolean;
}

/** A recipe of a few lines. */
export interface SmallRecipe {
  native: string;
  wanted: Wanted[];
}

/** A source of numbers that gives the same ones every time (mulberry32). */
export function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

interface Choosing {
  random: () => number;
  kitchen: Kitchen;
  foods: ReadonlyMap<string, Food>;
}

function pick<T>(random: () => number, from: readonly T[]): T {
  const chosen = from[Math.floor(random() * from.length)];
  if (chosen === undefined) throw new RangeError('Nothing to choose from.');
  return chosen;
}

const flours = ['plain-flour', 'bread-flour', 'self-raising-flour'] as const;
const partners = {
  liquid: ['milk', 'water', 'buttermilk', 'thin-soup'],
  sugar: ['caster-sugar', 'granulated-sugar', 'honey'],
  fat: ['unsalted-butter', 'olive-oil', 'block-fat', 'soft-block'],
  egg: ['egg', 'egg', 'egg-white', 'egg-yolk'],
  partOfEgg: ['egg-white', 'egg-yolk'],
  leavening: ['baking-powder', 'baking-soda'],
  salt: ['table-salt', 'fine-sea-salt'],
  seasoning: ['paprika', 'ground-cumin'],
  bulk: [
    'diced-tomatoes',
    'chickpeas',
    'onion',
    'carrot',
    'half-tin',
    'big-tin',
    'frozen-half-tin',
    'no-half-tin',
    'loose-mince',
    'loose-root',
    'bun',
  ],
  gelling: ['setting-powder'],
} as const;

/** A recipe of two to five lines, mostly a batter; never two lines of one food. */
export function smallRecipe(
  random: () => number,
  native: Kitchen,
  foods: ReadonlyMap<string, Food>,
  most: number,
): SmallRecipe {
  const lines = random() < 0.1 ? 2 : 3 + Math.floor(Math.sqrt(random()) * (most - 2));
  const choosing = { random, kitchen: native, foods };
  const batter = random() < 0.95;
  const roles = batter ? pick(random, batters) : pick(random, stews);
  const ids = [...(batter ? [pick(random, flours)] : []), ...roles.map((role) => pick(random, partners[role]))].slice(
    0,
    lines,
  );
  const potful = !batter && random() < 0.5;
  const wanted = [...new Set<string>(ids)].map((id) => line(id, choosing, potful));
  const last = wanted.at(-1);
  if (last !== undefined && wanted.length > 2 && random() < 0.1) {
    last.beside = true;
    last.text += ', to serve';
  }
  return { native: native.id, wanted };
}

const batters: readonly (keyof typeof partners)[][] = [
  ['liquid', 'sugar', 'fat', 'egg'],
  ['sugar', 'fat', 'egg', 'leavening'],
  ['fat', 'sugar', 'liquid', 'salt'],
  ['liquid', 'fat', 'leavening', 'bulk'],
  ['bulk', 'fat', 'sugar', 'egg'],
  ['bulk', 'liquid', 'egg', 'salt'],
  ['liquid', 'sugar', 'salt', 'egg'],
  ['sugar', 'egg', 'partOfEgg', 'fat'],
];
const stews: readonly (keyof typeof partners)[][] = [
  ['bulk', 'salt', 'seasoning', 'liquid', 'fat'],
  ['bulk', 'liquid', 'seasoning', 'egg', 'salt'],
  ['liquid', 'gelling', 'sugar', 'salt', 'egg'],
];

/** @param potful Whether what pours comes by the litre, past the cups that are counted. */
function line(id: string, choosing: Choosing, potful: boolean): Wanted {
  return { ...inDish(id, choosing, potful), beside: false };
}

const counted: ReadonlySet<string> = new Set(['onion', 'carrot', 'bun']);
/** Foods that are weighed even where there is no scale. */
const weighed: ReadonlySet<string> = new Set(['unsalted-butter', 'block-fat', 'loose-mince', 'loose-root']);

function inDish(id: string, { random, kitchen, foods }: Choosing, potful: boolean): Omit<Wanted, 'beside'> {
  const food = foods.get(id);
  if (food === undefined) throw new RangeError(`There is no food ${id}.`);
  const size = sizes[food.role] ?? { from: 100, to: 400, step: 5 };
  const metric = kitchen.scale !== null;
  const small = size.from + Math.floor(random() * ((size.to - size.from) / size.step + 1)) * size.step;
  const amount = potful && food.role === 'liquid' ? small * 10 : small;
  const egg = ofAnEgg[id];
  if (egg !== undefined)
    return inPieces(food, countOfEggs(random()), Number(usualEgg(kitchen)) * egg, id === 'egg' ? 'eggs' : id);
  if (counted.has(id)) return inPieces(food, 1 + Math.floor(random() * 4), pieceOf(food), food.id);
  const pack = usesWhole(food, kitchen) ? pick(random, soldFor(food, kitchen.id)?.packs ?? []) : undefined;
  if (pack !== undefined) {
    const count = 1 + Math.floor(random() * 3);
    const label = `${pack.size} ${pack.unit}`;
    const text = `${count} (${label.replace(' ', '-')}) ${count > 1 ? `${pack.word}s` : pack.word} ${food.id}`;
    return { food, grams: count * Number(pack.grams), unit: 'pack', count, text };
  }
  if (size.spoons) return inSpoons(food, kitchen, random);
  if (metric && food.pours) {
    const millilitres = Math.round(amount / 5) * 5;
    return {
      food,
      grams: millilitres * density(food),
      unit: 'ml',
      count: millilitres,
      text: `${millilitres} ml ${food.id}`,
    };
  }
  if (metric || weighed.has(id))
    return { food, grams: amount, unit: 'g', count: amount, text: `${amount} g ${food.id}` };
  const quarters = Math.max(1, Math.round((amount / density(food) / 240) * 4));
  const grams = (quarters / 4) * Number(kitchen.units.cup) * density(food);
  return { food, grams, unit: 'ml', count: quarters / 4, text: `${quarters / 4} cups ${food.id}` };
}

/** One to five, and now and then half of the last one. */
function countOfEggs(drawn: number): number {
  const count = 1 + Math.floor(drawn * 5);
  return (drawn * 5) % 1 < 0.1 ? count - 0.5 : count;
}

function inPieces(food: Food, count: number, each: number, word: string): Omit<Wanted, 'beside'> {
  return { food, grams: count * each, unit: 'count', count, text: `${count} ${word}` };
}

function inSpoons(food: Food, kitchen: Kitchen, random: () => number): Omit<Wanted, 'beside'> {
  const quarters = 1 + Math.floor(random() * 10);
  const grams = (quarters / 4) * Number(kitchen.units.tsp) * density(food);
  return { food, grams, unit: 'ml', spooned: true, count: quarters / 4, text: `${quarters / 4} tsp ${food.id}` };
}

const sizes: Partial<Record<Food['role'], { from: number; to: number; step: number; spoons?: boolean }>> = {
  flour: { from: 120, to: 500, step: 5 },
  liquid: { from: 60, to: 400, step: 10 },
  sugar: { from: 20, to: 300, step: 5 },
  fat: { from: 15, to: 250, step: 5 },
  leavening: { from: 2, to: 10, step: 1, spoons: true },
  salt: { from: 2, to: 10, step: 1, spoons: true },
  seasoning: { from: 2, to: 10, step: 1, spoons: true },
  gelling: { from: 5, to: 20, step: 1 },
};

function usesWhole(food: Food, kitchen: Kitchen): boolean {
  const packs = soldFor(food, kitchen.id)?.packs ?? [];
  return packs.length > 0 && packs.every(({ whole }) => whole !== 'no');
}

function usualEgg({ eggs }: Kitchen): Exact {
  return eggs.sizes.find(({ name }) => name === eggs.usual)?.edibleGrams ?? new Exact(50);
}

function pieceOf({ pieces }: Food): number {
  return Number(pieces.find(({ unit, size }) => unit === 'count' && size === null)?.grams);
}

function density({ densities }: Food): number {
  return Number((densities.find(({ form }) => form === null) ?? densities[0])?.gramsPerMl);
}

/** The recipe as the project holds it: each line read from its words, its food known. */
export function recipeOf({ native, wanted }: SmallRecipe, kitchen: Kitchen): Recipe {
  const lines = wanted.map(({ text, food }, at): Line => {
    const reading = readLine(text, { kitchen: kitchen.units });
    return { key: `l${at}`, text, reading, food, name: null };
  });
  const part = { key: 'p', kitchen: native, id: null, label: null, lines, cooked: null, from: null };
  return {
    kitchen: native,
    makes: null,
    anchor: null,
    preserve: null,
    parts: [{ native: part, authored: [] }],
    steps: [],
  };
}
