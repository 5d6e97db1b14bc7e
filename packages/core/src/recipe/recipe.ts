import type {
  LengthReading,
  LineReading,
  OvenSetting,
  PanReading,
  Span,
  TemperatureReading,
} from '../amount/reading.js';
import type { Exact } from '../exact.js';
import type { Food } from '../food/food.js';

/** One ingredient line. */
export interface Line {
  /** Unique in the recipe. */
  key: string;
  /** The line's words, markup taken off: the text that `reading` has its places in. */
  text: string;
  reading: LineReading;
  /** Larder entry, null where the words are not known. */
  food: Food | null;
  /** The words that name the food: what another kitchen's name takes the place of. */
  name: { text: string; span: Span } | null;
  /** What else its words count, as a line within it: the yolk of `2 eggs plus 1 yolk`. Its places are those of the whole text. */
  plus?: Line;
  /** The `each` between an amount and the foods of which there is as much of each; the others are within it. */
  each?: Span;
}

/** A block of lines written for one kitchen. */
export interface Ingredients {
  key: string;
  kitchen: string;
  /** `#id`, which ties the versions of a part together. */
  id: string | null;
  /** The part's name: `For the crust`. */
  label: string | null;
  lines: Line[];
  /** Date on which a re-authored version was cooked, ISO 8601. */
  cooked: string | null;
  /** Codes of the native lines that a re-authored version was drawn from; null when it has none. */
  from: string | null;
}

/** A native block and the versions that authors wrote for other kitchens. */
export interface Part {
  native: Ingredients;
  authored: Ingredients[];
}

/** An annotation in the running text. */
export type Mention = { key: string; text: string } & (
  | { kind: 'amount'; reading: LineReading; of: string | null; food: Food | null }
  | { kind: 'oven'; settings: OvenSetting[] }
  | { kind: 'core'; readings: TemperatureReading[]; of: string | null; class: string | null }
  | { kind: 'temp'; readings: TemperatureReading[] }
  | { kind: 'pan'; reading: PanReading; depth: LengthReading | null; count: Exact | null }
  | { kind: 'length'; readings: LengthReading[] }
);

/** A method block, or the prose outside blocks (`key` `prose`). */
export interface Method {
  key: string;
  /** The kitchen it was written for. */
  kitchen: string;
  id: string | null;
  mentions: Mention[];
  /** All its words, for names that the method uses. */
  prose: string;
  cooked: string | null;
  from: string | null;
}

/** A native method and the versions that authors wrote for other kitchens. */
export interface Steps {
  native: Method;
  authored: Method[];
}

/** A dish as its author wrote it, one per post. */
export interface Recipe {
  /** Native kitchen id. */
  kitchen: string;
  makes: string | null;
  anchor: string | null;
  /** True: preserving, never touched. Null: the author has not said. */
  preserve: boolean | null;
  parts: Part[];
  steps: Steps[];
}
