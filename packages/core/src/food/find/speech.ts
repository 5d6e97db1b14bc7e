import type { Food } from '../food.js';
import type { Foods, ReadyIndex } from './name-index.js';
import type { NameWord } from './name-words.js';

/** A word that the way of measuring adds to a name: `canned` before what is in a can. */
export interface Affix {
  before: string;
  after: string;
  /** Only a food of this role is believed. */
  role?: Food['role'];
}

/** What the rest of a line says of the food that its words name. */
export interface Measured {
  /** Tried with every name before the name alone. */
  affixes: readonly Affix[];
  /** Names without one of them do not count. */
  onlyAffixed?: boolean;
  /** Whether a food cannot be measured so: nobody sells a fresh fish in a can. */
  refuses(food: Food): boolean;
  /** Nothing is measured: then a food's state weighs nothing. */
  unmeasured: boolean;
}

/** Words without a line around them. */
export const notMeasured: Measured = { affixes: [], refuses: () => false, unmeasured: false };

/** Where names are looked up: an index, in the language of a kitchen. */
export interface Speech {
  foods: Foods;
  index: ReadyIndex;
  kitchen: string;
  measured: Measured;
  /** Only names of the kitchen itself and those understood everywhere count. */
  ownOnly?: boolean;
}

/** A word of a phrase. */
export interface PhraseWord extends NameWord {
  /** Whether any name uses it. */
  known: boolean;
  /** Whether it may be left out. */
  plain: boolean;
  /** Whether it is written with a capital. */
  capital: boolean;
}

/** The id of a food, and the stretch of the text that names it. */
export interface Named {
  id: string;
  start: number;
  end: number;
}
