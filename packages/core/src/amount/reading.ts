import type { Exact } from '../exact.js';
import type { LengthUnit, MassUnit, TemperatureUnit, UnitId, VolumeUnit } from './unit.js';

/** A stretch of the text that was read: UTF-16 offsets, `end` exclusive. */
export interface Span {
  start: number;
  end: number;
}

/** A number or a range of numbers with its unit, and where it stands. */
export interface Quantity {
  low: Exact;
  /** Upper end of a range, `null` when a single number was written. */
  high: Exact | null;
  unit: UnitId;
  /** The writer said about, roughly, or so, up to … */
  approx: boolean;
  /** Number and unit, without the words for about. */
  span: Span;
  /** How full the spoon or cup is, where that stands apart: `3 tbsp flour, heaped`. */
  fill?: string;
  /** Of a sum the larger unit that its words name: `tbsp` in `1 tbsp + 1 tsp`, which is 4 `tsp`. */
  beside?: UnitId;
}

/** The size of each thing counted: the `15-oz` of `2 (15-oz) cans`. */
export interface PackSize {
  /** How many, `null` where the count is unwritten (`28 oz can chickpeas`) and so 1. */
  count: Exact | null;
  size: Exact;
  /** Upper end where the size is a range (`2-3 pound pieces`). */
  sizeHigh: Exact | null;
  unit: UnitId;
  /** Container word, singular, lower case, abbreviation spelt out; empty when the thing is a piece. */
  word: string;
  span: Span;
}

/** Why an amount is left unread rather than guessed. */
export interface Doubt {
  /** The text that may be read in more than one way, or in none. */
  text: string;
  span: Span;
  /** One sentence for the writer: what is unclear. */
  because: string;
  /** One sentence for the writer: what to write instead. */
  instead: string;
}

/** What an ingredient line says, as written: no kitchen's sizes are applied but to add up a two-part amount. */
export interface LineReading {
  text: string;
  kind: 'amount' | 'no-amount' | 'not-an-ingredient';
  /** First statement first; the others state the same quantity again. */
  amounts: Quantity[];
  pack: PackSize | null;
  /**
   * Stretches that state the amount: number, unit, pack, further statements with their brackets. A rewritten amount takes the
   * place of the first, and the others fall away. The word for a size (`large`) of a counted food is not among them.
   * Words for about are, as is the `of` behind a unit, and a unit word behind its food (` cloves` of `3 garlic cloves`), since a
   * rewritten amount names its unit. A further statement takes the blank before it along.
   */
  amountSpans: Span[];
  /** What is added to the first statement and cannot be added up with it in its unit: the `¼ cup` of `1 (14-oz) can plus ¼ cup`. */
  plus?: { amount: Quantity; pack: PackSize | null };
  /** The food's plain name as written. */
  food: { text: string; span: Span } | null;
  /** `small`, `medium`, `large`, `extra large`, `jumbo` before or behind the food; of eggs any class that shops sell: `700 g carton`. */
  size: { text: string; span: Span } | null;
  /** All that is left, joined by `; `. */
  prep: string;
  optional: boolean;
  /** Quantities in the rest of the words (`plus 1 tbsp`, `cut into 2-inch pieces`, `or 30 g lard`). */
  further: Quantity[];
  /** Set when something looks like an amount and is not sure; then `amounts` is empty and `kind` is `no-amount`. */
  doubt: Doubt | null;
}

/** An oven setting as written; one annotation may hold several of the same oven. */
export interface OvenSetting {
  low: Exact;
  high: Exact | null;
  unit: TemperatureUnit;
  /** A fan or convection setting, lower than the conventional one for the same bake. */
  fan: boolean;
  /** No letter was written: the unit is the kitchen's own. */
  impliedUnit: boolean;
  span: Span;
}

/** A temperature, as written. */
export interface TemperatureReading {
  low: Exact;
  high: Exact | null;
  unit: 'C' | 'F';
  impliedUnit: boolean;
  span: Span;
}

/** A pan size, as written. */
export interface PanReading {
  /** Sides (shorter first), or one side or diameter; empty for a size by volume or trade weight. */
  sides: Exact[];
  /** The longer side was written first (`13×9`). */
  longFirst: boolean;
  /** Rim depth when a third side is written (`9 x 13 x 2 inch`), or behind the size (`…, 6 cm deep`). */
  depth: Exact | null;
  /** Where the depth stands behind the size; null where it is a third side. */
  depthSpan: Span | null;
  /** How many, when written (`two 8-inch rounds`, `2 x 20 cm tins`). */
  count: Exact | null;
  /** Of the sides, or of the capacity: `count` is the holes of a muffin pan. */
  unit: LengthUnit | MassUnit | VolumeUnit | 'count';
  /**
   * Volume (`2-quart dish`), trade weight (`900 g loaf tin`) or number of holes (`12-cup muffin pan`); `null` when sides are given, or
   * where a muffin pan's holes are not counted.
   */
  capacity: Exact | null;
  /**
   * `pie` is a round one for pies and tarts; `tube` is a ring, whose base its diameter does not give; `sheet` is flat, and holds pieces as
   * well as a batter; `stove` is a skillet, a pot or a pizza pan, for which no baking pan stands; `deep` a basin, a bowl or a casserole,
   * known by what it holds.
   */
  shape:
    | 'round'
    | 'springform'
    | 'square'
    | 'rectangle'
    | 'loaf'
    | 'pie'
    | 'tube'
    | 'sheet'
    | 'stove'
    | 'deep'
    | 'muffin'
    | 'mini-muffin'
    | 'unknown';
  /** The words say that the rim is higher or lower than usual (`deep-dish pie plate`). */
  rim: 'deep' | 'shallow' | null;
  /** The trade name that says the size (`half sheet pan`); null where the size is written. */
  name: string | null;
  /** Number and size, with a second statement of the same size (`20 cm/8 in`, `20 cm (8 in)`). */
  span: Span;
}

/** A length, as written. */
export interface LengthReading {
  low: Exact;
  high: Exact | null;
  /** Further sides in the same unit, as written: the 4 of `1 by 4 inches`. */
  sides: { low: Exact; high: Exact | null }[];
  unit: LengthUnit;
  span: Span;
}
