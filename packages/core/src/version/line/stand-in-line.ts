import { dimensionOf } from '../../amount/size.js';
import { firstStatement, type Stated, statedIn } from '../../amount/stated.js';
import type { Exact } from '../../exact.js';
import { allergensAdded } from '../../food/allergens.js';
import type { Foods } from '../../food/find/find.js';
import type { Food } from '../../food/food.js';
import { nameIn } from '../../food/name.js';
import { shareByWeight, type Weighed } from '../../food/weigh.js';
import { type StandInFood, standInOf } from '../../kitchen/shop/stand-in.js';
import type { Line } from '../../recipe/recipe.js';
import { type Conversion, convertWeighed } from '../convert/convert-amount.js';
import { judgeLine } from '../judge/judge-line.js';
import type { FurtherFood, LineNote, VersionLine } from '../version.js';
import { weighStated } from '../weigh/weigh-line.js';
import type { WeighedAmount } from '../weigh/weighing.js';
import { problemsOfWords } from '../words/about-words.js';
import { furtherInWords } from '../words/further-in-words.js';
import { standInEdits, withFurther } from '../words/stand-in-words.js';
import { driftOf } from './drift-of.js';

/** One food of a stand-in with its amount. */
interface StandInPart {
  food: Food;
  stated: Stated;
  /** What is asked of it, and what the amount weighs. */
  need: Weighed;
  weighed: Weighed;
}

/**
 * A line whose food is not sold in the kitchen, with what takes its place by weight.
 *
 * @returns Null where the food is sold, where nothing takes its place, or where its weight is not known.
 */
export function standInLine(
  line: Line,
  amount: WeighedAmount | null,
  conversion: Conversion,
  tolerance: Exact,
  foods: Foods,
): VersionLine | null {
  const { kitchen } = conversion;
  const parts = amount === null || line.name === null ? [] : standInFor(line, amount, conversion, foods);
  const first = parts[0];
  if (first === undefined || amount === null || line.food === null) return null;
  const judged = parts.map((part) => judgeLine(line, part, kitchen, tolerance));
  const { together, alone, names } = standInEdits(line, parts, kitchen);
  const further = furtherInWords(line, conversion);
  const [own, ...also] = parts.map(
    ({ food, stated, need, weighed }, at): FurtherFood => ({
      food,
      name: names[at] ?? null,
      stated,
      native: need,
      chosen: weighed,
      drains: null,
      boughtWith: null,
      portion: weighed,
      drift: driftOf(need, weighed),
      bought: judged[at]?.bought ?? null,
      alone: withFurther(alone[at] ?? [], further),
    }),
  );
  if (own === undefined) return null;
  return {
    line,
    ...own,
    edits: [...together, ...further],
    also,
    problems: [...problemsOfWords(line, conversion.native), ...judged.flatMap(({ problems }) => problems)],
    notes: [
      standInNote(
        line.food,
        parts.map(({ food }) => food),
        conversion,
        foods,
      ),
    ],
  };
}

/** What takes the place of a food that is not sold, by weight; empty where the food is sold, or nothing does. */
export function standInFor(
  { food: own, reading }: Pick<Line, 'food' | 'reading'>,
  { low, high }: WeighedAmount,
  conversion: Conversion,
  foods: Foods,
): StandInPart[] {
  const { kitchen, ownWeights } = conversion;
  const standIn = (own === null ? null : standInOf(own, kitchen, foods)) ?? [];
  if (low.grams === null) return countAgain(reading, standIn, low);
  return standIn.map(({ food, share }) => {
    const weighing = { food, kitchen, prep: '', sizeWord: '', container: null, ownWeights };
    const scales = { units: kitchen.units, prep: '', stated: ownWeights };
    const shareOf = (end: Weighed): Weighed => shareByWeight(end, share, food, scales);
    const ends = { low: shareOf(low), high: high === null ? null : shareOf(high) };
    const stated = convertWeighed(reading, ends, food, conversion);
    return { food, stated, need: ends.low, weighed: weighStated(stated, weighing)?.low ?? ends.low };
  });
}

/** A pinch of one salt is a pinch of another, and a slice a slice, where nobody knows what it weighs. */
function countAgain(reading: Line['reading'], [only, ...others]: readonly StandInFood[], low: Weighed): StandInPart[] {
  const written = statedIn(reading);
  const unit = written?.statements[0]?.[0]?.unit;
  const isCounted = written?.pack === null && unit !== undefined && dimensionOf(unit) === 'count';
  if (only === undefined || others.length > 0 || written === null || !isCounted) return [];
  return [{ food: only.food, stated: firstStatement(written), need: low, weighed: low }];
}

/** What it stands in for, and the allergens that it adds. */
export function standInNote(
  food: Food,
  standIns: readonly Food[],
  { native, kitchen }: Pick<Conversion, 'native' | 'kitchen'>,
  foods: Foods,
): LineNote {
  const allergens = allergensAdded(food, standIns, foods);
  return { kind: 'stand-in', food: nameIn(food, native.id).many, kitchen: kitchen.name, allergens };
}
