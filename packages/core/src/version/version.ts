import type { Span } from '../amount/reading.js';
import type { Stated, Term } from '../amount/stated.js';
import type { Exact } from '../exact.js';
import type { Food } from '../food/food.js';
import type { Weighed } from '../food/weigh.js';
import type { BeyondDial } from '../kitchen/heat/oven.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Bought } from '../kitchen/shop/buy.js';
import type { Ingredients, Line, Mention, Part, Recipe, Steps } from '../recipe/recipe.js';
import type { Problem } from './problem.js';

/** Where a version comes from. */
export type Standing = 'native' | 'converted' | 're-authored' | 'cooked';

/** A stretch of a line or label to be replaced; an empty `text` takes it away. */
export interface Edit extends Span {
  text: string;
}

/** A finding's place inside its line: the smallest stretch that an author would edit. */
export interface PlacedProblem {
  problem: Problem;
  span: Span;
}

/** One food that a line has in a version, with its amount. */
export interface VersionFood {
  /** A stand-in where the line's own food is not sold, null where it is not known. */
  food: Food | null;
  /** What the version calls a stand-in, in the form that the line asks for: `crushed digestive biscuits`; null for the line's own food. */
  name: string | null;
  /** The amount of this version; null where none is stated, or where another line's amount holds it. */
  stated: Stated | null;
  /**
   * What the native line asks of it; of all lines that the amount serves, where lines are merged. Where drained weights were compared,
   * what packs there weigh net that drain to as much.
   */
  native: Weighed;
  /** Where drained weights were compared, how much of that net weight is left when drained, as a fraction; else null. */
  drains: Exact | null;
  /** What this version's amount weighs. */
  chosen: Weighed;
  /** How much of `chosen` is this line's own: all of it, unless the amount serves other lines too. */
  portion: Weighed;
  /** Chosen over native, less one; null where either is not known. */
  drift: Exact | null;
  /** What to buy, for all lines that ask for the food; null where nothing is known of it. */
  bought: Bought | null;
  /** The line whose purchase holds this amount too, so that nothing more is bought for it; else null. */
  boughtWith: Line | null;
}

/** A further food of a line, for lists that give it a line of its own. */
export interface FurtherFood extends VersionFood {
  /** What to replace in the line's words so that they state this food by itself. */
  alone: Edit[];
}

/** One ingredient line of a version. */
export interface VersionLine extends VersionFood {
  line: Line;
  /** What to replace in the line's words, so that they state all its foods; empty for a line that reads as it was written. */
  edits: Edit[];
  /** The same with its first food only. */
  alone: Edit[];
  /** The other foods of a stand-in, in the larder's order. */
  also: FurtherFood[];
  problems: PlacedProblem[];
  /** Allergens that a stand-in adds. */
  notes: LineNote[];
  /** What else the line's words count; its edits, problems and notes are among the line's own. */
  plus?: VersionLine;
}

/** A short note that the page shows with a line. */
export type LineNote =
  | { kind: 'lighter-kosher' }
  | { kind: 'as-written' }
  | { kind: 'stand-in'; food: string; kitchen: string; allergens: string[] };

/** One part of a version: the native lines re-stated, or the author's own block. */
export interface VersionPart {
  part: Part;
  ingredients: Ingredients;
  standing: Standing;
  lines: VersionLine[];
}

/** One annotation of a version. */
export interface VersionMention {
  mention: Mention;
  /** What is read in this version. */
  text: string;
  /** The same by food, where several take the place of the one that it is a share of; otherwise empty. */
  foods: { text: string; name: string }[];
  /** A hold or rest that belongs to a core temperature. */
  hold: string;
  /** Of a pan, how many are used, and the rim of the one that takes its place; null for all else. */
  pan: { count: number; rim: Term | null } | null;
  /** Base area of a pan over the written one's, less one; null for all else, and where it is not known. */
  areaDrift: Exact | null;
  problems: PlacedProblem[];
}

/** One method of a version. */
export interface VersionSteps {
  steps: Steps;
  /** The kitchen whose method is shown. */
  from: string;
  mentions: VersionMention[];
}

/** What a cook is told beside the amounts. */
export type Caution =
  | { kind: 'core-temperature'; authority: string }
  | { kind: 'preserve' }
  | { kind: 'cure' }
  | { kind: 'raw-egg' }
  | { kind: 'oven' /** As the author wrote it. */; text: string; beyond: BeyondDial }
  | {
      kind: 'bake';
      changed: 'depth' | 'batch' /** More or less than the native one, as a signed fraction. */;
      drift: Exact;
    };

/** The recipe for one kitchen. Page and check both read this and compute nothing of their own. */
export interface Version {
  recipe: Recipe;
  kitchen: Kitchen;
  /** The least finished of its parts: a converted line makes a converted version. */
  standing: Standing;
  cooked: string | null;
  /** Version's size over native size: 1 until a version is re-authored by the anchor. */
  batchFactor: Exact;
  parts: VersionPart[];
  steps: VersionSteps[];
  cautions: Caution[];
}
