import type { LineReading } from '../../amount/reading.js';
import { dimensionOf } from '../../amount/size.js';
import { firstStatement, type Stated, statedIn } from '../../amount/stated.js';
import type { Dimension } from '../../amount/unit.js';
import { isContainer } from '../../amount/unit-kind.js';
import type { Foods } from '../../food/find/find.js';
import type { Food } from '../../food/food.js';
import type { StatedWeights, Weighed } from '../../food/weigh.js';
import { partOfEgg } from '../../kitchen/egg.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { marksOn } from '../../kitchen/measure/wrapper.js';
import { convertEggs, looseEggs } from '../egg/convert-eggs.js';
import type { EggsThere } from '../egg/egg-lines.js';
import { takesPartOfEgg } from '../egg/part-of-egg.js';
import { isShopPiece, weighNeed } from '../weigh/weigh-line.js';
import { middle, spreadOf } from '../weigh/weighed-ends.js';
import { type WeighedAmount, weighingOf } from '../weigh/weighing.js';
import { byLength } from './by-length.js';
import { inPacks } from './in-packs.js';
import { inPieces } from './in-pieces.js';
import { land, stateMeasure, unlanded } from './land.js';
import { landRange, stateRange } from './land-range.js';
import { mustNotShrink } from './must-not-shrink.js';
import { ownMeasure } from './own-measure.js';
import { isSizedPieces, pieceSizeIn } from './sized-pieces.js';
import type { Need } from './tables-for.js';

/** Whose amount goes where. */
export interface Conversion {
  native: Kitchen;
  kitchen: Kitchen;
  ownWeights: StatedWeights;
  /** By which the food of a further quantity is found (`or ¾ cup oil`). */
  foods: Foods;
  /** Whether a cure stands among the lines: of what it is measured for there must be no less. */
  besideCure: boolean;
  /** What is known of all eggs of the recipe; each line is taken by itself without it. */
  eggs?: EggsThere;
}

/**
 * A line's amount in another kitchen, line by line: whole packs and pieces where a cook there uses them whole, the same kind of unit
 * where the kitchen measures the food so, by density where it does not, and always the nearest amount that can be measured.
 *
 * @returns Null for a line with no amount.
 */
export function convertAmount(reading: LineReading, food: Food | null, conversion: Conversion): Stated | null {
  const stated = statedIn(reading);
  if (stated === null || food?.role === 'cure') return stated;
  const { native, kitchen, ownWeights } = conversion;
  const long = byLength(stated, kitchen);
  if (long !== null) return long;
  if (isSizedPieces(stated, food, kitchen)) return { ...firstStatement(stated), pack: pieceSizeIn(stated, kitchen) };
  const weighed = weighNeed(reading, weighingOf(reading, food, native, ownWeights), kitchen);
  if (weighed === null) return stated;
  const part = partOfEgg(food);
  if (part !== null && weighed.dimension === 'count') {
    const { eggs } = conversion;
    if (eggs?.loose.has(reading)) return looseEggs(stated, reading, eggs.size, kitchen);
    if (takesPartOfEgg(reading, food)) return byMeasure(stated, weighed, food, conversion);
    return convertEggs(stated, weighed, part, conversion);
  }
  const isOther = weighed.low.grams !== null && isShopPiece(reading, food, kitchen);
  if (weighed.pack === null && !isOther && isCounted(stated, food)) return firstStatement(stated);
  if (mustNotShrink(food, conversion) && weighed.high !== null) return firstStatement(stated);
  return inPacks(stated, weighed, food, conversion) ?? byMeasure(stated, weighed, food, conversion);
}

/**
 * A weight of a food that takes another's place, as the kitchen measures it.
 *
 * @param reading The line whose amount it replaces: the same kind of unit is kept.
 * @param ends What is needed of the food: `high` is null where no range is.
 */
export function convertWeighed(
  reading: LineReading,
  ends: { low: Weighed; high: Weighed | null },
  food: Food,
  conversion: Conversion,
): Stated {
  const written = statedIn(reading);
  const unit = written?.statements[0]?.[0]?.unit ?? 'g';
  const stated: Stated = { statements: [], pack: null, eggSize: null, approx: written?.approx ?? false };
  const dimension = food.pours ? 'volume' : written?.pack == null ? dimensionOf(unit) : 'mass';
  const pieces = dimension === 'count' ? inPieces(ends, food, stated.approx) : null;
  if (pieces !== null) return pieces;
  const amount: WeighedAmount = { ...ends, dimension, drainedGrams: null, pack: null, count: null };
  return inPacks(stated, amount, food, conversion) ?? byMeasure(stated, amount, food, conversion);
}

/** Pieces and gestures are the same everywhere; a stick of butter is a weight. */
function isCounted(stated: Stated, food: Food | null): boolean {
  const unit = stated.statements[0]?.[0]?.unit;
  if (stated.pack !== null || unit === undefined || dimensionOf(unit) !== 'count') return false;
  if (unit === 'stick') return food?.role !== 'fat';
  return !isContainer(unit);
}

function byMeasure(stated: Stated, weighed: WeighedAmount, food: Food | null, conversion: Conversion): Stated {
  const { native, kitchen } = conversion;
  if (weighed.low.grams === null && weighed.low.millilitres === null) return firstStatement(stated);
  const byWrapper = marksOn(food, native) !== null;
  const dimension = measuredAs(stated, weighed, food);
  const atLeast = mustNotShrink(food, conversion);
  const need: Need = { weighed: middle(weighed), dimension, food, byWrapper, atLeast };
  const landed = land(need, kitchen);
  if (landed === null) return unlanded(weighed.low, kitchen, atLeast) ?? firstStatement(stated);
  const own = ownMeasure(stated, food, conversion);
  if (own !== null && !(atLeast && own.lessThan(1))) return firstStatement(stated);
  const spread = spreadOf(weighed);
  const range = weighed.high === null ? null : landRange(weighed.low, weighed.high, { ...need, spread }, kitchen);
  if (range === null) return stateMeasure(landed.measure, stated.approx);
  return stateRange(range.low, range.high, stated.approx);
}

/** Packs and pieces are weighed, unless what is in them pours. */
function measuredAs(stated: Stated, { dimension }: WeighedAmount, food: Food | null): Dimension {
  if (stated.pack === null && dimension !== 'count') return dimension;
  return food?.pours ? 'volume' : 'mass';
}
