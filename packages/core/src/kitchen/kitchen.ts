import type { KitchenVolumeUnit, LengthUnit, MassUnit, VolumeUnit } from '../amount/unit.js';
import type { Exact } from '../exact.js';

/** A spoon or cup set: how many of it a cook counts out, and which parts of one it has. */
export interface MeasureSet {
  /** Most wholes that a cook would count: 3 tablespoons, 8 cups. */
  wholes: number;
  /** Fractions of one, ascending, as exact decimals (⅓ to 40 digits). */
  fractions: readonly Exact[];
}

/** Evenly spaced marks or scale steps: every `step` from `from` up to and including `to`. */
export interface Marks {
  from: Exact;
  to: Exact;
  step: Exact;
}

/** A usual pan. Inside base measures. */
export interface Pan {
  /** What a cook there calls it, size left out: `loaf tin`; a muffin pan with its number of holes: `12-hole muffin tin`. */
  name: string;
  /** The name alone says the size: `half sheet pan`. */
  byName: boolean;
  shape: 'round' | 'square' | 'rectangle' | 'loaf' | 'muffin';
  /** One diameter or side, or two sides, shorter first. */
  sides: readonly Exact[];
  depth: Exact | null;
  unit: LengthUnit;
  /** Trade sizes that mean this pan: `2 lb`, `900 g`. */
  tradeSizes: readonly { size: Exact; unit: MassUnit | VolumeUnit }[];
  /** Capacity in millilitres, where the pan is known by it. */
  millilitres: Exact | null;
}

/** A size class of hens' eggs. Edible weight is 0.88 of the typical weight in the shell. */
export interface EggSize {
  name: string;
  /** Other words for it in recipes there: `large` for eggs of a 600 g carton. */
  also: readonly string[];
  /** Grams in the shell that are typical of the class: see `eggs.typical`. */
  typicalGrams: Exact;
  edibleGrams: Exact;
  /** Sold, but not on every shelf. */
  seldom: boolean;
}

/** The least core temperature that a kitchen's authority publishes for a class of food. */
export interface SafeTemperature {
  class: string;
  /** Words for the class: `poultry`, `minced meat, burgers and sausages`. */
  name: string;
  temperature: Exact;
  unit: 'C' | 'F';
  /** `hold 2 min` or `rest 3 min`, empty when reached is enough. */
  hold: string;
  /** Who publishes it, short, for a message: `USDA`, `the UK Food Standards Agency`. */
  authority: string;
  source: string;
}

/** Ways of measuring, in the words of the kitchen's data. */
export type Way = 'spoon' | 'cup' | 'jug' | 'scale';

/** Where a version is cooked: the units, measuring tools, oven, pans and shops of one country. */
export interface Kitchen {
  id: string;
  /** `United States` */
  name: string;
  /** `US`, as in "a US kitchen". */
  adjective: string;
  /** ISO 3166-1 alpha-2 regions whose browsers are first offered this kitchen. */
  regions: readonly string[];
  /** Millilitres in this kitchen's own volume units, exact. */
  units: Readonly<Partial<Record<KitchenVolumeUnit, Exact>>>;
  /** Spelling and style of written amounts. */
  writes: {
    /** Units that a cook there reads off a label, tool or counter. */
    mass: readonly MassUnit[];
    volume: readonly VolumeUnit[];
    length: 'in' | 'cm';
    temperature: 'C' | 'F';
    /** `2 (15-oz) cans` or `2 × 400 g tins`. */
    packs: 'brackets' | 'times';
  };
  spoons: { tsp: MeasureSet; tbsp: MeasureSet };
  cups: (MeasureSet & { plusTablespoons: number }) | null;
  jug: { unit: 'ml' | 'floz'; marks: readonly Marks[] } | null;
  scale: { unit: 'g' | 'oz'; marks: readonly Marks[] } | null;
  /** How a cup is filled, as a phrase: `spooned and levelled`. */
  fill: string;
  /** How amounts over a spoonful are measured, first choice first. */
  measures: { pours: readonly Way[]; dry: readonly Way[] };
  /** What the shop's counter weighs off: every step of its unit. */
  counter: { unit: 'g' | 'lb'; step: Exact };
  oven: {
    unit: 'C' | 'F';
    min: Exact;
    max: Exact;
    step: Exact;
    /** Degrees of `unit` that a fan oven is set lower. */
    fanDifference: Exact;
    /** Gas marks of that country with their dial temperature in °C, or none. */
    gas: readonly { mark: string; celsius: Exact }[];
    /** Settings that a recipe there states, in that order. */
    states: readonly ('conventional' | 'fan' | 'gas')[];
  };
  pans: readonly Pan[];
  eggs: { usual: string; typical: 'middle-of-band' | 'class-minimum'; sizes: readonly EggSize[] };
  safe: readonly SafeTemperature[];
}
