import type { CountUnit, MassUnit, VolumeUnit } from '../amount/unit.js';
import type { Exact } from '../exact.js';

/** What a food does in a dish: guarded ratios are drawn between roles. */
export type Role =
  | 'flour'
  | 'liquid'
  | 'fat'
  | 'sugar'
  | 'egg'
  | 'leavening'
  | 'salt'
  | 'gelling'
  | 'cure'
  | 'acid'
  | 'bulk'
  | 'seasoning';

/** Singular and plural; the same word twice where the food is not counted (`flour`). */
export interface FoodName {
  one: string;
  many: string;
}

/** Weight of a volume of the food, in one form (chopped, grated, packed) or, with `form` null, as it usually comes. */
export interface Density {
  form: string | null;
  gramsPerMl: Exact;
  source: string;
  /** Why another table has another figure. */
  note?: string;
}

/** Edible weight of one piece; `unit` is `count` for the whole thing, or `clove`, `slice`, `stick` … of it. */
export interface Piece {
  unit: CountUnit;
  /** `small`, `medium`, `large`, or null for the usual size. */
  size: string | null;
  grams: Exact;
  source: string;
}

/** How the food keeps once its pack is open. */
export interface Keeping {
  where: 'cupboard' | 'fridge' | 'freezer';
  /** Days once opened; null where it outlasts any plan. */
  days: number | null;
  freezes: boolean;
  /** Grams below which a remainder is not worth keeping. */
  leastGrams: Exact;
  source: string;
}

/** Whether a cook uses a pack up: `yes` whole packs only, `half` halves too, `no` any part. */
export type UseWhole = 'yes' | 'half' | 'no';

/** A size in which a kitchen's shops sell a food. */
export interface Pack {
  size: Exact;
  /** Unit on the label. `count` for packs of pieces (a dozen eggs). */
  unit: MassUnit | VolumeUnit | 'count';
  /** Container word of that kitchen: can, tin, carton, block, stick, sachet. */
  word: string;
  /** Net weight of the contents. */
  grams: Exact;
  /** Weight once drained, where a source gives it. */
  drainedGrams: Exact | null;
  whole: UseWhole;
  /** Of several sizes in one container the one that `1 can` of it means. */
  usual: boolean;
  /** Marks on the wrapper: a cut every `grams`, which a cook there reads as `size` `unit`. */
  marks: { size: Exact; unit: MassUnit | VolumeUnit; grams: Exact } | null;
}

/** What takes the food's place where it is not sold: `share` of the mass each; several make one food together. */
export interface StandIn {
  parts: { food: string; share: Exact }[];
  source: string;
}

/** How one kitchen's shops sell a food. */
export interface Sold {
  /** False: not to be had there; then `standIns` may help. */
  sold: boolean;
  /** Smallest first. */
  packs: Pack[];
  /** Weighed off by the shop. */
  loose: boolean;
  /** Sold by the piece. */
  singly: boolean;
  /** From the tap. */
  tap: boolean;
  standIns: StandIn[];
  source: string;
}

/** One larder entry. */
export interface Food {
  id: string;
  /** Names by kitchen id; `any` holds those understood everywhere. The first of a list is the one to show. */
  names: Readonly<Record<string, readonly FoodName[]>>;
  role: Role;
  /** What a cook should know of it, such as how it differs between kitchens. */
  note?: string;
  /** The food that a spoon of it means where nothing says fresh: the dried herb, the ground spice, the juice. */
  spooned?: string;
  /** The food that a cup of it means where nothing says a can: diced tomatoes are then fresh ones. */
  cupped?: string;
  /** Measured like a liquid: by jug, cup or spoon, never by the piece. */
  pours: boolean;
  /**
   * Whether parts of a pack are taken by eye where there is no scale (half a box of spaghetti): `only` where nobody fills a cup with the
   * food, `also` where a cup does as well.
   */
  byEye: 'only' | 'also' | null;
  densities: readonly Density[];
  pieces: readonly Piece[];
  keeps: Keeping;
  /** Safe-temperature class (`poultry`, `ground-meat` …) when it must be cooked through. */
  coreClass: string | null;
  allergens: readonly string[];
  /** Those of them that only a site's larder file lists; absent where it says nothing of what the food is made of, or has the food alone. */
  allergensBySite?: readonly string[];
  /** Composed foods: share of the mass that is really another food. */
  contains: readonly { food: string; share: Exact; source?: string }[];
  /** By kitchen id; `any` is the rule where a kitchen says nothing else. */
  sold: Readonly<Record<string, Sold>>;
}
