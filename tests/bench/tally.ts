import {
  dimensionOf,
  Exact,
  foodsIn,
  isUseWhole,
  type Kitchen,
  type RatioReport,
  remainderOf,
  shopFor,
  soldIn,
  type Version,
  type VersionLine,
} from '@retare/core';
import { leastLeft } from './least-left.ts';

/** What one way of making versions comes to, over many recipes and kitchens. */
export interface Tally {
  versions: number;
  /** Lines that state an amount of a food that is sold there or has a stand-in. */
  lines: number;
  goodLines: number;
  wholeVersions: number;
  notSold: number;
  allLines: number;
  drifts: number[];
  ratios: number;
  brokenRatios: number;
  /** Left of food that stands in the fridge, bought in packs or weighed off. */
  freshLeftoverGrams: number;
  /** Left of opened packs of food that a cook uses whole. */
  wholeLeftoverGrams: number;
  /** Left of packs that a cook uses whole, and of others what spoils or is too little to keep. */
  wastedGrams: number;
  /** Left of packs in the fridge that are kept and used: half a carton of milk. */
  keptGrams: number;
  /** Of these what keeps under a fortnight once opened: milk and cream, no mayonnaise. */
  keptShortlyGrams: number;
  /** What would be left of all of these if each amount could be bent towards its packs. */
  leastLeftGrams: number;
}

/** Nothing counted yet. */
export function emptyTally(): Tally {
  return {
    versions: 0,
    lines: 0,
    goodLines: 0,
    wholeVersions: 0,
    notSold: 0,
    allLines: 0,
    drifts: [],
    ratios: 0,
    brokenRatios: 0,
    freshLeftoverGrams: 0,
    wholeLeftoverGrams: 0,
    wastedGrams: 0,
    keptGrams: 0,
    keptShortlyGrams: 0,
    leastLeftGrams: 0,
  };
}

/** A version with what it is measured against. */
export interface Measured {
  version: Version;
  native: Version;
  ratios: readonly RatioReport[];
  /** Lines whose leftovers are counted. */
  comparable: readonly boolean[];
}

/** Counts one version. */
export function count(tally: Tally, { version, native, ratios, comparable }: Measured): void {
  tally.versions += 1;
  const lines = version.parts.flatMap((part) => part.lines);
  const natives = native.parts.flatMap((part) => part.lines);
  let [good, notSold] = [0, 0];
  lines.forEach((line, index) => {
    if (isNotSold(line)) notSold += 1;
    else if (isCookable(line)) good += 1;
    const drift = driftOf(line, natives[index], version.batchFactor);
    if (drift !== null) tally.drifts.push(Math.abs(drift));
    if (comparable[index] === true) addLeftover(tally, leftOf(line, version.kitchen));
  });
  tally.allLines += lines.length;
  tally.lines += lines.length - notSold;
  tally.notSold += notSold;
  tally.goodLines += good;
  if (good === lines.length) tally.wholeVersions += 1;
  tally.ratios += ratios.length;
  tally.brokenRatios += ratios.filter(isBroken).length;
}

/** Whether nothing stands in the way of measuring and buying a line. */
export function isCookable({ problems }: VersionLine): boolean {
  return problems.every(({ problem }) => problem.rule !== 'unmeasurable' && problem.rule !== 'unbuyable');
}

/** Whether a line's food is not sold there and nothing takes its place. */
export function isNotSold({ problems }: VersionLine): boolean {
  return problems.some(({ problem }) => problem.rule === 'unbuyable' && problem.reason === 'not-sold');
}

/** Whether a ratio is outside its limit. */
export function isBroken({ native, version, limit }: RatioReport): boolean {
  return Math.abs(version / native - 1) > limit + 1e-6;
}

/**
 * Whether a line, with those that are bought with it, asks for more than what is bought for it holds, by labels in its own kind of unit;
 * half a per cent is no more.
 *
 * @param all All lines of the version, what they count beside their first food among them.
 */
export function isShort({ line, food, bought, boughtWith, stated, chosen }: VersionLine, all: VersionLine[]): boolean {
  const term = stated?.statements[0]?.[0];
  if (bought === null || boughtWith !== null || term === undefined || chosen.grams === null) return false;
  const others = all.flatMap(foodsIn).filter((each) => each.food === food && each.boughtWith === line);
  const grams = others.reduce((sum, each) => sum.plus(each.chosen.grams ?? 0), chosen.grams);
  const packs = bought.packs.map(({ count: times, pack }) => ({ times, pack }));
  if (stated?.pack != null && packs.length > 0)
    return packs.every(({ times, pack }) => {
      const counts = others.map((each) => each.stated?.statements[0]?.[0]?.low ?? new Exact(0));
      const count = counts.reduce((sum, each) => sum.plus(each), term.low);
      return pack.word !== stated.pack?.word || count.gt(times);
    });
  if (packs.some(({ pack: { unit } }) => unit === 'count' || dimensionOf(unit) !== dimensionOf(term.unit)))
    return false;
  const held = packs.reduce(
    (sum, { times, pack }) => sum + times * pack.grams.toNumber(),
    bought.looseGrams?.toNumber() ?? 0,
  );
  return held < grams.toNumber() * 0.995;
}

function driftOf(line: VersionLine, native: VersionLine | undefined, batch: Exact): number | null {
  if (line.drift !== null) return line.drift.toNumber();
  if (native === undefined || line.food !== native.food) return null;
  const [chosen, asked] = [
    line.chosen.grams ?? line.chosen.millilitres,
    native.chosen.grams ?? native.chosen.millilitres,
  ];
  if (chosen === null || asked === null || asked.isZero()) return null;
  return chosen.dividedBy(asked.times(batch)).minus(1).toNumber();
}

/** What a cook would have over of what is bought for a line. */
interface Left {
  grams: number;
  /** Nothing that counts: it stands in the cupboard, comes from the tap or is bought by the piece. */
  kind: 'none' | 'of-whole-packs' | 'weighed-off' | 'wasted' | 'kept';
  /** It stands in the fridge. */
  isFresh: boolean;
  /** Kept for a fortnight or longer. */
  keepsLong: boolean;
  /** What an amount bent towards the packs would leave. */
  least: number;
}

/** As far as a line may drift at the 95th of a hundred. */
const bent = 0.08;

/**
 * What is left of a line's packs. Packs are bought whether or not the amount is one that the shop would recognise; what keeps in a cupboard
 * is no remainder. Of what is weighed off no pack is left to waste.
 *
 * @returns Null where it is not known what is bought: the food is not sold, or its amount has no known weight.
 */
function leftOf({ food, chosen, stated }: VersionLine, kitchen: Kitchen): Left | null {
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (food === null || sold === null || !sold.sold || stated === null) return null;
  const none: Left = { grams: 0, kind: 'none', isFresh: false, keepsLong: true, least: 0 };
  if (sold.tap) return none;
  if (chosen.grams === null || chosen.grams.isZero()) return null;
  const grams = shopFor(stated, chosen, food, kitchen)?.leftoverGrams.toNumber() ?? 0;
  const { where, days } = food.keeps;
  const isFresh = where === 'fridge' && days !== null;
  const keepsLong = days === null || days >= 14;
  if (isUseWhole(sold)) return { grams, kind: 'of-whole-packs', isFresh, keepsLong, least: 0 };
  if (!isFresh && sold.loose) return none;
  if (sold.loose) return { grams, kind: 'weighed-off', isFresh, keepsLong, least: 0 };
  const need = chosen.grams.toNumber();
  const sizes = sold.packs.map((pack) => (pack.drainedGrams ?? pack.grams).toNumber());
  const least = Math.min(grams, leastLeft(need, bent, sizes));
  const remainder = remainderOf(food.keeps, need + grams, grams);
  if (remainder === 'spoils' || remainder === 'too-little') return { grams, kind: 'wasted', isFresh, keepsLong, least };
  return isFresh ? { grams, kind: 'kept', isFresh, keepsLong, least } : none;
}

/** Lines of which it is known in every version what is bought: only of these can leftovers be compared. */
export function comparableLines(versions: readonly Version[]): boolean[] {
  const lefts = versions.map(({ parts, kitchen }) =>
    parts.flatMap(({ lines }) => lines.map((line) => leftOf(line, kitchen) !== null)),
  );
  return (lefts[0] ?? []).map((_, at) => lefts.every((known) => known[at] === true));
}

function addLeftover(tally: Tally, left: Left | null): void {
  if (left === null || left.kind === 'none') return;
  const { grams, kind } = left;
  tally.leastLeftGrams += left.least;
  if (kind === 'of-whole-packs') tally.wholeLeftoverGrams += grams;
  else if (left.isFresh) tally.freshLeftoverGrams += grams;
  if (kind === 'of-whole-packs' || kind === 'wasted') tally.wastedGrams += grams;
  if (kind === 'kept') tally.keptGrams += grams;
  if (kind === 'kept' && !left.keepsLong) tally.keptShortlyGrams += grams;
}

/** A percentile of values, 0 to 1; the median at 0.5. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
