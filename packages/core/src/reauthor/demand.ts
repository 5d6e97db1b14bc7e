import type { Food } from '../food/food.js';
import type { Weighed } from '../food/weigh.js';
import type { Line } from '../recipe/recipe.js';
import type { Content } from './contents.js';

/** A choice of amount for a demand. */
export interface Choice {
  /** In the demand's base. */
  size: number;
  /** What it adds to the part's mass, grams; 0 where it is not known. */
  grams: number;
  /** Cost that does not depend on the batch: awkwardness and leftover. */
  fixed: number;
  /** Which of the demand's `stated` it is. */
  index: number;
}

/** One food that a version needs an amount of: a native line, or part of a stand-in, with the lines that were merged into it. */
export interface Demand {
  /** Native lines that it serves. */
  lines: Line[];
  food: Food | null;
  /** How the native amount was measured: the same kind of unit is kept. */
  reading: Line['reading'];
  /** Native need at batch factor 1, exact. */
  need: Weighed;
  /** The same as a float, in grams where they are known, else millilitres, else a count. */
  base: 'g' | 'ml' | 'count';
  quantity: number;
  /** Grams per unit of the base; 0 where they are not known. */
  gramsPerBase: number;
  /** Weight of its squared drift. */
  weight: number;
  contents: Content[];
  /** Whole packs or pieces that set the batch, by size; empty for a fluid food. */
  wholes: number[];
  choices: Choice[];
}
