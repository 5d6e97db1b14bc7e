import type { LineReading } from '../../amount/reading.js';
import { dimensionOf } from '../../amount/size.js';
import { statedIn } from '../../amount/stated.js';
import type { Exact } from '../../exact.js';
import type { StatedWeights } from '../../food/weigh.js';
import { partOfEgg, wholeEggsFor } from '../../kitchen/egg.js';
import type { EggSize, Kitchen } from '../../kitchen/kitchen.js';
import { isOptional } from '../../recipe/is-optional.js';
import type { Line, Part, Recipe } from '../../recipe/recipe.js';
import { withPlus } from '../../recipe/with-plus.js';
import { wholeLimit } from '../convert/whole-packs.js';
import { weighReading } from '../weigh/weigh-line.js';
import { weighingOf } from '../weigh/weighing.js';
import { isBrushedOn, isPartThatIsBrushedOn, isThinnedToBrush, saysThatItIsBrushedOn } from './brushed-on.js';
import { saysThatTheyStayWhole, staysWhole } from './eggs-in-one-piece.js';

/** The lines of a recipe that count eggs, whites or yolks. */
export interface EggLines {
  /** What the dish is made of: as much egg is wanted in every kitchen. */
  weighed: readonly Line[];
  /** Eggs that are counted out whatever they weigh: one to glaze with, one for each plate, boiled ones. By their reading. */
  loose: ReadonlySet<LineReading>;
}

const known = new WeakMap<Recipe, EggLines>();

/** The lines of a recipe's native parts that count eggs. */
export function eggLines(recipe: Recipe): EggLines {
  let lines = known.get(recipe);
  if (lines === undefined) {
    lines = linesIn(recipe);
    known.set(recipe, lines);
  }
  return lines;
}

function linesIn(recipe: Recipe): EggLines {
  const all = recipe.parts.flatMap((part) =>
    withPlus(part.native.lines)
      .filter(countsEggs)
      .map((line) => ({ part, line })),
  );
  // Of which of two lines the method speaks its bare word does not say.
  const alone = all.length === 1 && (isBrushedOn(recipe) || staysWhole(recipe));
  const isLoose = ({ part, line }: { part: Part; line: Line }): boolean =>
    alone || isLooseLine(line) || isThinnedToBrush(line, recipe) || isPartThatIsBrushedOn(part.native);
  return {
    weighed: all.filter((each) => !isLoose(each)).map(({ line }) => line),
    loose: new Set(all.filter(isLoose).map(({ line }) => line.reading)),
  };
}

/** Whether a line's own words say that its eggs are counted out: to glaze, to serve, boiled, optional. */
export function isLooseLine(line: Line): boolean {
  return countsEggs(line) && (isOptional(line) || saysThatItIsBrushedOn(line) || saysThatTheyStayWhole(line));
}

function countsEggs({ food, reading }: Line): boolean {
  const unit = reading.amounts[0]?.unit;
  return partOfEgg(food) !== null && unit !== undefined && dimensionOf(unit) === 'count' && reading.pack === null;
}

/** How the eggs of a recipe come out in another kitchen, line by line. */
export interface EggsThere {
  /** The one size that suits all lines: nobody buys two for one dish. Null where none does. */
  size: EggSize | null;
  loose: EggLines['loose'];
}

/** The eggs of a recipe in another kitchen. */
export function eggsThere(recipe: Recipe, native: Kitchen, kitchen: Kitchen, ownWeights: StatedWeights): EggsThere {
  const { weighed, loose } = eggLines(recipe);
  const needs = weighed.flatMap(({ reading, food }): Exact[] => {
    const amount =
      statedIn(reading) === null ? null : weighReading(reading, weighingOf(reading, food, native, ownWeights));
    return [amount?.low, amount?.high].flatMap((end) => end?.grams?.dividedBy(partOfEgg(food) ?? 1) ?? []);
  });
  return { size: needs.length === 0 ? null : (wholeEggsFor(kitchen, needs, wholeLimit)?.[0]?.size ?? null), loose };
}
