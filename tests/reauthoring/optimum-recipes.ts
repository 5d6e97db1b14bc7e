import { Exact, type Food, type Kitchen, type Line, type Recipe, readLine, readPanIn } from '@retare/core';
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
  /** Which part of the recipe it stands in. */
  part: number;
}

/** A recipe of a few lines. */
export interface SmallRecipe {
  native: string;
  wanted: Wanted[];
  /** Diameter of the round pan that it is baked in, one of the native kitchen's; null where no pan is named. */
  pan: Exact | null;
  /** The food that is to set the batch; null where the batch is chosen. */
  anchor: Food | null;
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
  liquid: ['milk', 'water', 'buttermilk', 'thin-soup', 'long-soup'],
  sugar: ['caster-sugar', 'granulated-sugar', 'honey'],
  fat: ['unsalted-butter', 'olive-oil', 'block-fat', 'hard-fat', 'soft-block'],
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
  const potful = !batter && random() < 0.8;
  const wanted = [...new Set<string>(ids)].map((id) => line(id, choosing, potful));
  const last = wanted.at(-1);
  if (last !== undefined && wanted.length > 2 && random() < 0.1) {
    last.beside = true;
    last.text += pick(random, [', to serve', ' (optional)', ', for serving']);
  }
  if (wanted.length > 3 && random() < 0.15) for (const own of wanted.slice(random() < 0.5 ? -1 : -2)) own.part = 1;
  const rounds = native.pans.filter(({ shape, name }) => shape === 'round' && !/pie|tart|flan|quiche/.test(name));
  const pan = random() < 0.15 ? (pick(random, rounds).sides[0] ?? null) : null;
  const setters = wanted.filter(({ food, beside }) => !beside && mayAnchor(food, native));
  const anchor = setters.length > 0 && random() < 0.15 ? pick(random, setters).food : null;
  return { native: native.id, wanted, pan, anchor };
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
  return { ...inDish(id, choosing, potful), beside: false, part: 0 };
}

const counted: ReadonlySet<string> = new Set(['onion', 'carrot', 'bun']);
/** Foods that are weighed even where there is no scale. */
const weighed: ReadonlySet<string> = new Set(['unsalted-butter', 'block-fat', 'hard-fat', 'loose-mince', 'loose-root']);

function inDish(id: string, { random, kitchen, foods }: Choosing, potful: boolean): Omit<Wanted, 'beside' | 'part'> {
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

function inPieces(food: Food, count: number, each: number, word: string): Omit<Wanted, 'beside' | 'part'> {
  return { food, grams: count * each, unit: 'count', count, text: `${count} ${word}` };
}

function inSpoons(food: Food, kitchen: Kitchen, random: () => number): Omit<Wanted, 'beside' | 'part'> {
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

/** What comes in packs, used whole or not. */
function mayAnchor(food: Food, kitchen: Kitchen): boolean {
  return usesWhole(food, kitchen) || food.id === 'thin-soup' || food.id === 'block-fat';
}

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
export function recipeOf({ native, wanted, pan, anchor }: SmallRecipe, kitchen: Kitchen): Recipe {
  const lines = wanted.map(({ text, food, part }, at) => {
    const reading = readLine(text, { kitchen: kitchen.units });
    const line: Line = { key: `l${at}`, text, reading, food, name: null };
    return { line, part };
  });
  const parts = [0, 1].flatMap((part) => {
    const own = lines.filter((each) => each.part === part).map(({ line }) => line);
    const block = { key: `p${part}`, kitchen: native, id: null, label: null, lines: own, cooked: null, from: null };
    return own.length === 0 ? [] : [{ native: block, authored: [] }];
  });
  return {
    kitchen: native,
    makes: null,
    anchor: anchor === null ? null : (lines.find(({ line }) => line.food === anchor)?.line.reading.food?.text ?? null),
    preserve: null,
    parts,
    steps: pan === null ? [] : [{ native: bakedIn(pan, kitchen), authored: [] }],
  };
}

function bakedIn(diameter: Exact, kitchen: Kitchen): Recipe['steps'][number]['native'] {
  const text = `${diameter} ${kitchen.writes.length} round cake pan`;
  const reading = readPanIn(text, kitchen);
  if (reading === null) throw new RangeError(text);
  const mention = { key: 'pan', text, kind: 'pan' as const, reading, depth: null, count: null };
  const prose = `Pour the batter into a ${text} and bake.`;
  return { key: 'm', kitchen: kitchen.id, id: null, mentions: [mention], prose, cooked: null, from: null };
}
