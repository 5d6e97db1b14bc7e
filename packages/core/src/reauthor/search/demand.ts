import type { Stated } from '../../amount/stated.js';
import type { Food } from '../../food/food.js';
import type { Weighed } from '../../food/weigh.js';
import type { Line } from '../../recipe/recipe.js';
import type { WeighedAmount } from '../../version/weigh/weighing.js';
import type { Content } from '../ratio/contents.js';

/** A choice of amount for a demand. */
export interface Choice {
  /** In the demand's base; the geometric mean of a range. */
  size: number;
  /** Natural logarithm of the size. */
  log: number;
  /** What it adds to the part's mass, grams; 0 where it is not known. */
  grams: number;
  /** Cost that does not depend on the batch: awkwardness and leftover. */
  fixed: number;
  /** Its place among all choices of the demand: breaks ties. */
  index: number;
}

/** What a kitchen offers for a demand: choices by size, ascending, and the words that they stand for. */
export interface Offer {
  choices: Choice[];
  /** The amount that a choice stands for; made when asked for, since few are. */
  state(index: number): Stated;
  /** Sizes of one whole (or half) pack or piece, in the base: the batch may be set by them. Empty for a fluid food. */
  wholes: number[];
  /** Smallest step of the tools that measure it, grams; 0 where it is bought whole or its weight is not known. */
  stepGrams: number;
}

/** One food that a version needs an amount of: a native line, or part of a stand-in, with the lines that were merged into it. */
export interface Demand extends Offer {
  /** Native lines that it serves. */
  lines: Line[];
  /** What each of them asks of it at batch factor 1, in their order. */
  portions: Weighed[];
  food: Food | null;
  /** How the native amount was measured: the same kind of unit is kept. */
  reading: Line['reading'];
  /** Native need at batch factor 1, exact: the geometric mean of a range, and its lower end. */
  need: Weighed;
  low: Weighed;
  /** How the native line was weighed. */
  weighed: WeighedAmount;
  /** The need as a float, in grams where they are known, else millilitres, else a count. */
  base: 'g' | 'ml' | 'count';
  quantity: number;
  /** Upper end over lower end of a range; 1 for a single amount. */
  spread: number;
  /** Weight of its squared drift. */
  weight: number;
  /** How far a choice may be from what is wanted, as the logarithm of the ratio. */
  widest: number;
  /** Eggs that are counted out whatever they weigh: one to glaze with, one for each plate. */
  loose: boolean;
  /** Nothing of what is loose: it is no part of the dough. */
  contents: Content[];
}
