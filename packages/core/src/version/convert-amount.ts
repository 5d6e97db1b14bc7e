import type { LineReading } from '../amount/reading.js';
import { dimensionOf, isLengthUnit } from '../amount/size.js';
import { type Stated, statedIn, type Term } from '../amount/stated.js';
import type { Dimension } from '../amount/unit.js';
import { Exact } from '../exact.js';
import type { Foods } from '../food/find.js';
import type { Food, Sold } from '../food/food.js';
import { pieceGrams, type StatedWeights, type Weighed } from '../food/weigh.js';
import { isUseWhole, soldIn } from '../kitchen/buy.js';
import { eggsOfSize, partOfEgg, wholeEggsFor } from '../kitchen/egg.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { lengthFor } from '../kitchen/length.js';
import { measuresBy, nearestOf } from '../kitchen/measure.js';
import { marksOn } from '../kitchen/wrapper.js';
import { mayBeCured } from '../recipe/has-cure.js';
import type { EggsThere } from './egg-lines.js';
import { land, type Need, stateMeasure, unlanded } from './land.js';
import { landRange, stateRange } from './land-range.js';
import { ownMeasure } from './own-measure.js';
import { isSizedPieces, pieceSizeIn } from './sized-pieces.js';
import { isContainer, type WeighedAmount, weighingOf, weighNeed } from './weigh-line.js';
import { type PackNeed, packsForEnds, samePack, wholeLimit } from './whole-packs.js';

/** Whose amount goes where. */
export interface Conversion {
  native: Kitchen;
  kitchen: Kitchen;
  ownWeights: StatedWeights;
  /** By which the food of a further quantity is found (`or ¾ cup oil`); it is taken for the line's own without. */
  foods?: Foods;
  /** Whether a cure stands among the lines: of what it is measured for there must be no less. */
  besideCure?: boolean;
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
  if (isSizedPieces(stated, food, kitchen)) return { ...unweighed(stated), pack: pieceSizeIn(stated, kitchen) };
  const weighed = weighNeed(reading, weighingOf(reading, food, native, ownWeights), kitchen);
  if (weighed === null) return stated;
  const part = partOfEgg(food);
  if (part !== null && weighed.dimension === 'count') {
    if (conversion.eggs?.loose.has(reading)) return looseEggs(stated, reading, conversion);
    return convertEggs(stated, weighed, part, conversion);
  }
  if (isCounted(stated, food)) return { ...stated, statements: stated.statements.slice(0, 1) };
  if (mustNotShrink(food, conversion) && weighed.high !== null) return unweighed(stated);
  return inPacks(stated, weighed, food, conversion) ?? byMeasure(stated, weighed, food, conversion);
}

/** Less meat for as much of a cure is more of it in the meat. */
function mustNotShrink(food: Food | null, { besideCure }: Conversion): boolean {
  return besideCure === true && mayBeCured(food);
}

/** A piece by its length (`3-inch piece of ginger`), or pieces of a length each; null where no length is stated. */
export function byLength(stated: Stated, kitchen: Kitchen): Stated | null {
  const term = stated.statements[0]?.[0];
  if (stated.pack !== null && isLengthUnit(stated.pack.unit)) {
    const { low, unit } = lengthFor(stated.pack.size, stated.pack.unit, kitchen);
    // A piece has no container word of its own, and its amount's stretch took the word in.
    const word = term?.unit === 'piece' ? 'piece' : stated.pack.word;
    return { ...stated, statements: stated.statements.slice(0, 1), pack: { size: low, unit, word } };
  }
  if (stated.pack !== null || term === undefined || !isLengthUnit(term.unit)) return null;
  const from = lengthFor(term.low, term.unit, kitchen);
  const to = term.high === null ? null : lengthFor(term.high, term.unit, kitchen);
  return { ...stated, statements: [[{ ...from, high: to?.unit === from.unit ? to.low : null }]] };
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
  const dimension = written?.pack == null ? dimensionOf(unit) : 'mass';
  const pieces = dimension === 'count' ? inPieces(ends, food, stated.approx) : null;
  if (pieces !== null) return pieces;
  const amount: WeighedAmount = { ...ends, dimension, drainedGrams: null, pack: null, count: null };
  return inPacks(stated, amount, food, conversion) ?? byMeasure(stated, amount, food, conversion);
}

/** What was counted is counted again, in pieces or halves of the other food, where they come near: no two carrots weigh the same. */
function inPieces({ low, high }: { low: Weighed; high: Weighed | null }, food: Food, approx: boolean): Stated | null {
  // A lime is a piece, its juice is not.
  const each = food.pours ? null : pieceGrams(food, 'count', '');
  if (each === null || low.grams === null) return null;
  const counts = [low, high].flatMap((end) => end?.grams?.dividedBy(each) ?? []);
  const step = counts.some((count) => count.lessThan('2.5')) ? '0.5' : '1';
  const landed = counts.map((count) => count.dividedBy(step).round().times(step));
  const near = landed.every((count, at) =>
    count
      .dividedBy(counts[at] ?? 1)
      .minus(1)
      .abs()
      .lessThanOrEqualTo(pieceLimit),
  );
  const first = landed[0];
  if (!near || first === undefined) return null;
  return { statements: [[rangeOf(first, landed[1] ?? null)]], pack: null, eggSize: null, approx };
}

/** Pieces of food differ by as much. Common practice, no source. */
const pieceLimit = new Exact('0.25');

/** Pieces and gestures are the same everywhere; a stick of butter is a weight. */
function isCounted(stated: Stated, food: Food | null): boolean {
  const unit = stated.statements[0]?.[0]?.unit;
  if (stated.pack !== null || unit === undefined || dimensionOf(unit) !== 'count') return false;
  if (unit === 'stick') return food?.role !== 'fat';
  return !isContainer(unit);
}

/** As many as the author counts, of the size that the others are, where one is named at all. */
function looseEggs(stated: Stated, { size }: LineReading, { kitchen, eggs }: Conversion): Stated {
  const other = eggs?.size ?? null;
  const eggSize = size === null || other === null || other.name === kitchen.eggs.usual ? null : other.name;
  return { ...stated, statements: stated.statements.slice(0, 1), eggSize };
}

/** @param part What is used of each egg. */
function convertEggs(stated: Stated, weighed: WeighedAmount, part: Exact, { kitchen, eggs: all }: Conversion): Stated {
  const needs = endsOf(weighed).flatMap(({ grams }) => grams?.dividedBy(part) ?? []);
  const together = all?.size == null ? null : eggsOfSize(all.size, needs, wholeLimit);
  const [eggs, more] = together ?? wholeEggsFor(kitchen, needs, wholeLimit) ?? [];
  if (eggs === undefined) return { ...(unlanded(weighed.low, kitchen) ?? stated), approx: stated.approx };
  const usual = eggs.size.name === kitchen.eggs.usual;
  return {
    statements: [[rangeOf(eggs.count, more?.count ?? null)]],
    pack: null,
    eggSize: usual ? null : eggs.size.name,
    approx: stated.approx,
  };
}

/** One end, or both of a range. */
function endsOf({ low, high }: WeighedAmount): Weighed[] {
  return high === null ? [low] : [low, high];
}

function rangeOf(low: Exact, high: Exact | null): Term {
  return { low, high: high?.greaterThan(low) ? high : null, unit: 'count' };
}

/** Whole packs of a use-whole food, or the same pack where the shops sell an equal one. */
function inPacks(stated: Stated, weighed: WeighedAmount, food: Food | null, conversion: Conversion): Stated | null {
  const { kitchen } = conversion;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  const grams = weighed.low.grams;
  if (food === null || sold === null || grams === null) return null;
  if (isUseWhole(sold))
    return (
      inWholePacks(stated, weighed, food, sold, mustNotShrink(food, conversion)) ??
      massOf(weighed, kitchen, stated.approx)
    );
  if (weighed.count === null || weighed.count.isZero() || stated.pack?.word === '') return null;
  const same = samePack(grams.dividedBy(weighed.count), sold);
  if (same === null) return null;
  return packsStated(rangeOf(weighed.count, stated.statements[0]?.[0]?.high ?? null), same, stated.approx);
}

function inWholePacks(stated: Stated, weighed: WeighedAmount, food: Food, sold: Sold, atLeast: boolean): Stated | null {
  const { low, drainedGrams } = weighed;
  const needs = endsOf(weighed).flatMap(({ grams }): PackNeed[] => {
    if (grams === null || low.grams === null) return [];
    return [{ grams, drainedGrams: drainedGrams?.times(grams).dividedBy(low.grams) ?? null }];
  });
  const packs = packsForEnds(needs, food, sold);
  const [first, more] = packs ?? [];
  if (
    first === undefined ||
    packs?.some(({ drift }) => drift.abs().greaterThan(wholeLimit) || (atLeast && drift.isNegative()))
  )
    return null;
  return packsStated(rangeOf(first.count, more?.count ?? null), first.pack, stated.approx);
}

/** What no whole packs come near is stated by weight, with a finding: a volume of a drained food would be another amount. */
function massOf(weighed: WeighedAmount, kitchen: Kitchen, approx: boolean): Stated | null {
  const ends = endsOf(weighed).map(({ grams }) =>
    grams === null ? null : nearestOf(measuresBy(kitchen, 'scale'), grams),
  );
  const [low, high] = ends;
  if (low == null) return unlandedEnds(weighed, kitchen);
  return high == null ? stateMeasure(low.measure, approx) : stateRange(low.measure, high.measure, approx);
}

function unlandedEnds({ low, high }: WeighedAmount, kitchen: Kitchen): Stated | null {
  const stated = unlanded(low, kitchen);
  const [from, to] = [stated, high === null ? null : unlanded(high, kitchen)].map((end) => end?.statements[0]?.[0]);
  if (stated === null || from === undefined || to === undefined || !to.low.greaterThan(from.low)) return stated;
  return { ...stated, statements: [[{ ...from, high: to.low }]] };
}

function packsStated(counted: Term, pack: { size: Exact; unit: Term['unit']; word: string }, approx: boolean): Stated {
  return {
    statements: [[counted]],
    pack: { size: pack.size, unit: pack.unit, word: pack.word },
    eggSize: null,
    approx,
  };
}

function byMeasure(stated: Stated, weighed: WeighedAmount, food: Food | null, conversion: Conversion): Stated {
  const { native, kitchen } = conversion;
  if (weighed.low.grams === null && weighed.low.millilitres === null) return unweighed(stated);
  const byWrapper = marksOn(food, native) !== null;
  const dimension = measuredAs(stated, weighed, food);
  const atLeast = mustNotShrink(food, conversion);
  const need: Need = { weighed: middle(weighed), dimension, food, byWrapper, atLeast };
  const landed = land(need, kitchen);
  if (landed === null) return unlanded(weighed.low, kitchen) ?? unweighed(stated);
  if (ownMeasure(stated, conversion) !== null) return unweighed(stated);
  const spread = spreadOf(weighed);
  const range = weighed.high === null ? null : landRange(weighed.low, weighed.high, { ...need, spread }, kitchen);
  if (range === null) return stateMeasure(landed.measure, stated.approx);
  return stateRange(range.low, range.high, stated.approx);
}

function spreadOf({ low, high }: WeighedAmount): number {
  const [from, to] = [low.millilitres ?? low.grams, high?.millilitres ?? high?.grams];
  return from === null || to == null || from.isZero() ? 1 : to.dividedBy(from).toNumber();
}

/** Packs and pieces are weighed, unless what is in them pours. */
function measuredAs(stated: Stated, { dimension }: WeighedAmount, food: Food | null): Dimension {
  if (stated.pack === null && dimension !== 'count') return dimension;
  return food?.pours ? 'volume' : 'mass';
}

/** Only the first statement is kept, container words in the reader's sense are the author's own. */
function unweighed(stated: Stated): Stated {
  return { ...stated, statements: stated.statements.slice(0, 1) };
}

/** A range counts by its geometric mean. */
function middle({ low, high }: WeighedAmount): Weighed {
  if (high === null) return low;
  const mean = (a: Exact | null, b: Exact | null): Exact | null =>
    a === null || b === null ? null : a.times(b).sqrt();
  return { grams: mean(low.grams, high.grams), millilitres: mean(low.millilitres, high.millilitres) };
}
