import type { Foods } from '../food/find.js';
import type { Role } from '../food/food.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { measuresBy } from '../kitchen/measure.js';
import type { Line, Recipe } from '../recipe/recipe.js';
import type { GuardedRatio } from './constraint.js';
import { contentsOf } from './contents.js';
import type { Demand } from './demand.js';
import { standsOutside } from './outside.js';
import type { Weights } from './weights.js';

/** Flour ratios hold only where flour is at least this share of a part's mass. */
const leastFlour = 0.15;
/** A line under this share of the flour may drift further. */
const smallLine = 0.1;
const tiny = 1e-9;

/** Grams of every native line, as floats, by line. */
export type NativeGrams = ReadonlyMap<Line, number>;

/** What ratios are drawn from. */
export interface RatioContext {
  recipe: Recipe;
  kitchen: Kitchen;
  foods: Foods;
  weights: Weights;
  grams: NativeGrams;
}

/** The ratios that make a part of the dish work, over its demands. */
export function guardedRatios(
  lines: readonly Line[],
  demands: readonly Demand[],
  context: RatioContext,
): GuardedRatio[] {
  const inside = lines.filter((line) => !standsOutside(line, context.recipe));
  const flour = side(inside, demands, context, (role) => role === 'flour');
  const liquid = side(inside, demands, context, (role) => role === 'liquid');
  const whole = side(lines, demands, context, () => true);
  const total = whole.native;
  const hasFlour = total > 0 && flour.native >= leastFlour * total;
  const ratios = [
    ...(hasFlour ? flourRatios(inside, demands, flour, context) : []),
    ...wholeRatios(lines, demands, whole, context),
    ...gellingRatios(lines, demands, liquid, context),
  ];
  return ratios.filter(({ native, nativeNumerator }) => Number.isFinite(native) && nativeNumerator > tiny);
}

interface Side {
  /** Share of each demand's grams that counts. */
  shares: Float64Array;
  /** Grams in the native part. */
  native: number;
}

function side(
  lines: readonly Line[],
  demands: readonly Demand[],
  { foods, grams }: RatioContext,
  counts: (role: Role, food: string) => boolean,
): Side {
  const shares = new Float64Array(demands.length);
  demands.forEach((demand, at) => {
    if (!demand.lines.some((line) => lines.includes(line))) return;
    shares[at] = demand.contents.reduce((sum, { role, food, share }) => sum + (counts(role, food) ? share : 0), 0);
  });
  let native = 0;
  for (const line of lines) {
    const own = line.food === null ? [] : contentsOf(line.food, foods);
    const counted = own.reduce((sum, { role, food, share }) => sum + (counts(role, food) ? share : 0), 0);
    native += counted * (grams.get(line) ?? 0);
  }
  return { shares, native };
}

function flourRatios(
  lines: readonly Line[],
  demands: readonly Demand[],
  flour: Side,
  context: RatioContext,
): GuardedRatio[] {
  const { limits } = context.weights;
  const leavenings = new Set(
    demands.flatMap(({ contents }) => contents.filter(({ role }) => role === 'leavening').map(({ food }) => food)),
  );
  const risen = [...leavenings].map((id) =>
    ratio(
      `${words(id)} : flour`,
      side(lines, demands, context, (_, food) => food === id),
      flour,
      limits.leavening,
      demands,
      context,
    ),
  );
  const egg = ratio(
    'egg : flour',
    side(lines, demands, context, (role) => role === 'egg'),
    flour,
    limits.egg,
    demands,
    context,
  );
  return [...risen, egg, ...bakingRatios(lines, demands, flour, context)];
}

/** Liquid, sugar and fat to flour, line by line; lines that a stand-in ties together count as one. */
function bakingRatios(
  lines: readonly Line[],
  demands: readonly Demand[],
  flour: Side,
  context: RatioContext,
): GuardedRatio[] {
  const { limits } = context.weights;
  const wide = context.kitchen.scale === null ? limits.bakingByVolume : limits.baking;
  return groupsOf(lines, demands).flatMap((group) => {
    const role = group[0]?.food?.role;
    if (role !== 'liquid' && role !== 'sugar' && role !== 'fat') return [];
    const own = side(group, demands, context, (each) => each !== 'leavening' && each !== 'salt');
    const small = own.native < smallLine * flour.native;
    const name = `${group[0]?.food === undefined ? '' : words(group[0]?.food?.id ?? '')} : flour`;
    return [ratio(name, own, flour, small ? limits.bakingSmall : wide, demands, context)];
  });
}

function wholeRatios(
  lines: readonly Line[],
  demands: readonly Demand[],
  whole: Side,
  context: RatioContext,
): GuardedRatio[] {
  const { limits } = context.weights;
  const salt = ratio(
    'salt : whole',
    side(lines, demands, context, (role) => role === 'salt'),
    whole,
    limits.salt,
    demands,
    context,
  );
  const seasonings = groupsOf(lines, demands)
    .filter((group) => group[0]?.food?.role === 'seasoning' && isMeasured(group, demands))
    .map((group) => {
      const name = `${words(group[0]?.food?.id ?? '')} : whole`;
      return ratio(
        name,
        side(group, demands, context, () => true),
        whole,
        limits.seasoning,
        demands,
        context,
      );
    });
  return [salt, ...seasonings];
}

/** Cloves and sprigs are counted, and nobody counts out nine tenths of one. */
function isMeasured(group: readonly Line[], demands: readonly Demand[]): boolean {
  return demands.some(
    ({ lines, base, wholes, reading }) =>
      lines.some((line) => group.includes(line)) &&
      base === 'g' &&
      wholes.length === 0 &&
      reading.amounts[0]?.unit !== 'count',
  );
}

function gellingRatios(
  lines: readonly Line[],
  demands: readonly Demand[],
  liquid: Side,
  context: RatioContext,
): GuardedRatio[] {
  if (liquid.native < tiny) return [];
  const gelling = side(lines, demands, context, (role) => role === 'gelling');
  return [ratio('gelling agent : liquid', gelling, liquid, context.weights.limits.gelling, demands, context)];
}

/** Lines that share a demand, each line once. */
function groupsOf(lines: readonly Line[], demands: readonly Demand[]): Line[][] {
  const groups: Line[][] = [];
  for (const line of lines) {
    if (groups.some((group) => group.includes(line))) continue;
    const tied = demands.filter((demand) => demand.lines.includes(line)).flatMap((demand) => demand.lines);
    groups.push([...new Set([line, ...tied.filter((each) => lines.includes(each))])]);
  }
  return groups;
}

function ratio(
  name: string,
  above: Side,
  below: Side,
  limit: number,
  demands: readonly Demand[],
  { kitchen }: RatioContext,
): GuardedRatio {
  return {
    name,
    numerator: above.shares,
    denominator: below.shares,
    native: above.native / below.native,
    limit,
    halfStep: halfStepOf(above, demands, kitchen),
    nativeNumerator: above.native,
  };
}

/** Half the smallest spoon, in grams of what the numerator is measured of. */
function halfStepOf({ shares }: Side, demands: readonly Demand[], kitchen: Kitchen): number {
  const spoon = measuresBy(kitchen, 'spoon')[0]?.near ?? 0;
  const steps = demands.flatMap(({ need }, at) => {
    const share = shares[at] ?? 0;
    if (share === 0 || need.grams === null || need.millilitres === null || need.millilitres.isZero()) return [];
    return [(need.grams.toNumber() / need.millilitres.toNumber()) * spoon * share];
  });
  return steps.length === 0 ? 0 : Math.max(...steps) / 2;
}

function words(id: string): string {
  return id.replaceAll('-', ' ');
}
