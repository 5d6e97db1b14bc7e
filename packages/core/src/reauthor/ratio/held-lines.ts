import { statedIn } from '../../amount/stated.js';
import type { Ingredients, Line, Part } from '../../recipe/recipe.js';
import { withPlus } from '../../recipe/with-plus.js';
import { type EggLines, isLooseLine } from '../../version/egg/egg-lines.js';
import { weighReading } from '../../version/weigh/weigh-line.js';
import { middle } from '../../version/weigh/weighed-ends.js';
import { type WeighedAmount, weighingOf } from '../../version/weigh/weighing.js';
import type { Demand } from '../search/demand.js';
import type { DemandContext } from '../search/demands-of.js';
import { exactShare } from '../search/exact-share.js';
import type { Mass } from './constraint.js';
import { contentsOf } from './contents.js';
import { matchLines } from './match-lines.js';

/** A line of the version, as what it counts as in a ratio. */
export interface Held extends Mass {
  line: Line;
  /** The native line that it is held against. */
  native: Line | null;
  weighed: WeighedAmount | null;
  /** A range by its geometric mean; 0 where they are not known. */
  grams: number;
}

/** What lines of a version are weighed by. */
interface HeldContext extends DemandContext {
  /** Eggs that no ratio counts. */
  loose: EggLines['loose'];
}

/** The lines of a version, each with the native line that it is held against and its grams in a ratio. */
export function heldLines(part: Part, authored: Ingredients, demands: readonly Demand[], context: HeldContext): Held[] {
  const { kitchen, foods, ownWeights, loose } = context;
  const all = withPlus(authored.lines);
  const written = new Set(all.map((line) => line.food));
  const isInParts = (native: Line): boolean => {
    const serving = demands.filter(({ lines }) => lines.includes(native));
    return serving.length > 1 && serving.some((demand) => written.has(demand.food));
  };
  const matched = matchLines(withPlus(part.native.lines), all, isInParts);
  return all.map((line) => {
    const { food, reading } = line;
    const native = matched.get(line) ?? null;
    const weighed = weighReading(reading, weighingOf(reading, food, kitchen, ownWeights));
    const isLoose = native === null ? isLooseLine(line) : loose.has(native.reading);
    const contents = food === null || isLoose ? [] : contentsOf(food, foods);
    // A stand-in may be in the amount of a native line of its own food.
    const serving = demands.find(
      (demand) => food !== null && demand.food === food && (native === null || demand.lines.includes(native)),
    );
    const lines = serving?.lines ?? [native ?? line];
    const grams = drainedAsNative(line, native, weighed, demands, context) ?? middleGrams(weighed);
    return { line, native, weighed, grams: isLoose ? 0 : grams, lines, food, contents };
  });
}

/** What comes drained is held against the native line's own drained weight; null where net weights count. */
function drainedAsNative(
  line: Line,
  native: Line | null,
  weighed: WeighedAmount | null,
  demands: readonly Demand[],
  context: DemandContext,
): number | null {
  const stated = statedIn(line.reading);
  const demand = demands.find(({ lines, food }) => lines.length === 1 && lines[0] === native && food === line.food);
  if (demand === undefined || stated === null || weighed?.pack?.drainedGrams == null) return null;
  const share = exactShare(demand, stated, weighed, context)?.toNumber();
  return share === undefined ? null : share * gramsOf(demand);
}

/** Grams of an amount, a range by its geometric mean; 0 where they are not known. */
export function middleGrams(weighed: WeighedAmount | null): number {
  return weighed === null ? 0 : (middle(weighed).grams?.toNumber() ?? 0);
}

/** Grams of a native need in a ratio: 0 where they are not known, and of eggs that no ratio counts. */
export function gramsOf({ base, quantity, loose }: Demand): number {
  return base === 'g' && !loose ? quantity : 0;
}

/**
 * Of a pair with one weight only nothing can be said; nor of native lines without a pair, where the version has an amount that cannot be
 * weighed: it may be one of them.
 */
export function blindLines(held: readonly Held[], demands: readonly Demand[]): ReadonlySet<Line> {
  const weighedNative = new Set(demands.filter((demand) => gramsOf(demand) > 0).flatMap(({ lines }) => lines));
  const pairs = held.flatMap(({ line, native, lines, grams }) => {
    // What takes another food's place is paired with the lines that it serves.
    const own = native === null ? lines.filter((each) => each !== line) : [native];
    return own.length > 0 && grams > 0 !== own.some((each) => weighedNative.has(each)) ? [line, ...own] : [];
  });
  const kept = new Set(held.flatMap(({ lines }) => lines));
  const isPuzzling = held.some(
    ({ line, lines, grams }) => lines[0] === line && grams === 0 && line.reading.amounts.length > 0,
  );
  const alone = isPuzzling ? demands.filter(({ lines }) => !lines.some((line) => kept.has(line))) : [];
  return new Set([...pairs, ...alone.flatMap(({ lines }) => lines)]);
}
