import { gramsIn, isMassUnit, isVolumeUnit, type KitchenUnits, millilitresIn } from '../amount/size.js';
import type { CountUnit, UnitId } from '../amount/unit.js';
import type { Exact } from '../exact.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Food } from './food.js';
import { saidIn } from './said-in.js';

/** How much of a food there is: each null where it is not known. */
export interface Weighed {
  grams: Exact | null;
  millilitres: Exact | null;
}

/** Nothing is known of it. */
export const unweighed: Weighed = { grams: null, millilitres: null };

/** What a recipe itself says about its foods, in second statements of an amount. */
export interface StatedWeights {
  /** Grams per millilitre, by food id. */
  perMillilitre: ReadonlyMap<string, Exact>;
  /** Grams of one piece, by `pieceKey`. */
  perPiece: ReadonlyMap<string, Exact>;
  /** One egg, white or yolk by food id: of the shops where the recipe was written. */
  eggs: ReadonlyMap<string, StatedEgg>;
}

/** What an author says that an egg, or its white or yolk, weighs: of one size, as one kitchen's shops sell it. */
export interface StatedEgg {
  kitchen: Kitchen;
  size: string;
  grams: Exact;
}

/** A recipe that says nothing. */
export const nothingStated: StatedWeights = { perMillilitre: new Map(), perPiece: new Map(), eggs: new Map() };

/** The key of a food's pieces in one counting unit: an onion, a slice of it. */
export function pieceKey(foodId: string, unit: UnitId): string {
  return `${foodId} ${unit}`;
}

/** What is needed beside the number itself to weigh an amount. */
export interface Scales {
  units: KitchenUnits;
  /** The line's preparation: it chooses between forms (`grated`, `packed`). */
  prep: string;
  stated: StatedWeights;
}

/**
 * Grams and millilitres of a number of units of a food.
 *
 * @returns Both where the food's density is known, one for a plain weight or volume, neither for a count of unknown weight.
 */
export function weigh(value: Exact, unit: UnitId, food: Food | null, scales: Scales): Weighed {
  if (isMassUnit(unit)) return fromGrams(value.times(gramsIn(unit)), food, scales);
  if (isVolumeUnit(unit)) {
    const each = millilitresIn(unit, scales.units);
    return each === null ? unweighed : fromMillilitres(value.times(each), food, scales);
  }
  const own = food === null ? undefined : scales.stated.perPiece.get(pieceKey(food.id, unit));
  const piece = own ?? (food === null ? null : pieceGrams(food, unit as CountUnit, scales.prep));
  return piece === null ? unweighed : fromGrams(value.times(piece), food, scales);
}

/** A weight of a food, with its volume where the density is known. */
export function fromGrams(grams: Exact, food: Food | null, scales: Scales): Weighed {
  const density = densityOf(food, scales);
  return { grams, millilitres: density === null ? null : grams.dividedBy(density) };
}

/** A volume of a food, with its weight where the density is known. */
function fromMillilitres(millilitres: Exact, food: Food | null, scales: Scales): Weighed {
  const density = densityOf(food, scales);
  return { grams: density === null ? null : millilitres.times(density), millilitres };
}

/** A share of a weight, of a food that may be another than was weighed. */
export function shareByWeight({ grams }: Weighed, share: Exact, food: Food | null, scales: Scales): Weighed {
  return grams === null ? unweighed : fromGrams(grams.times(share), food, scales);
}

/** So many times an amount. */
export function timesWeighed({ grams, millilitres }: Weighed, factor: Exact): Weighed {
  return { grams: grams?.times(factor) ?? null, millilitres: millilitres?.times(factor) ?? null };
}

/** Two amounts together: what is not known of one is not known of both. */
export function addWeighed(one: Weighed, other: Weighed): Weighed {
  const plus = (a: Exact | null, b: Exact | null): Exact | null => (a === null || b === null ? null : a.plus(b));
  return { grams: plus(one.grams, other.grams), millilitres: plus(one.millilitres, other.millilitres) };
}

/** Grams per millilitre: the recipe's own word first, then the form that the preparation names, then the food as it usually comes. */
export function densityOf(food: Food | null, scales: Scales): Exact | null {
  if (food === null) return null;
  const own = scales.stated.perMillilitre.get(food.id);
  if (own !== undefined) return own;
  const form = saidIn(scales.prep, food.densities, (density) => density.form);
  const chosen = form ?? food.densities.find((density) => density.form === null) ?? food.densities[0];
  return chosen?.gramsPerMl ?? null;
}

/** Grams of one piece in that counting unit; null when the larder does not say. */
export function pieceGrams(food: Food, unit: CountUnit, size: string): Exact | null {
  const ofUnit = food.pieces.filter((piece) => piece.unit === unit);
  const sized = saidIn(size, ofUnit, (piece) => piece.size);
  const usual = ofUnit.find((piece) => piece.size === null) ?? ofUnit.find((piece) => piece.size === 'medium');
  return (sized ?? usual ?? ofUnit[0])?.grams ?? null;
}
