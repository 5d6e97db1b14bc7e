import type { Stated } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import type { StatedWeights } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { hasCure } from '../../recipe/has-cure.js';
import type { Ingredients, Line, Part, Recipe } from '../../recipe/recipe.js';
import { withPlus } from '../../recipe/with-plus.js';
import { land, stateMeasure } from '../../version/convert/land.js';
import { eggLines } from '../../version/egg/egg-lines.js';
import { kitchenOf, type Setting } from '../../version/setting.js';
import { bothStated, weightsStatedIn } from '../../version/weigh/stated-weights.js';
import { weighStated } from '../../version/weigh/weigh-line.js';
import { weighingOf } from '../../version/weigh/weighing.js';
import type { Demand } from '../search/demand.js';
import { planPart } from '../search/part-plan.js';
import { defaultWeights } from '../weights.js';
import { type GuardedRatio, isBent, limitAt, type Side } from './constraint.js';
import { blindLines, gramsOf, type Held, heldLines, middleGrams } from './held-lines.js';

/** A guarded ratio of a part, native and as an author wrote it for another kitchen. */
export interface AuthoredRatio {
  /** `salt : whole`, `water : flour` */
  name: string;
  native: number;
  version: number;
  /** Version over native, less one; −1 where the version leaves the food out. */
  drift: number;
  /** Largest drift, as a fraction. */
  limit: number;
  /** Lines of the version whose amount is above. */
  lines: Line[];
  /** Native lines whose amount is above. */
  nativeLines: Line[];
  /** What would keep the ratio, where one line can and the kitchen measures it; null otherwise. */
  instead: Stated | null;
}

/** What ratios of an author's version are drawn from. */
export interface AuthoredContext {
  recipe: Recipe;
  setting: Setting;
}

/** Both sides of the comparison, pairs left out of which one side cannot be weighed. */
interface Comparison {
  demands: Demand[];
  held: Held[];
  kitchen: Kitchen;
  ownWeights: StatedWeights;
}

/**
 * The guarded ratios of a part in a version that its author wrote. Lines are matched by food, then by what the food does in the dish; a
 * pair of which one side cannot be weighed is left out of every ratio.
 *
 * @param authored One of the part's versions.
 * @throws {RangeError} If a kitchen is not in the setting.
 */
export function ratiosOfVersion(part: Part, authored: Ingredients, context: AuthoredContext): AuthoredRatio[] {
  const { recipe, setting } = context;
  const { weights = defaultWeights } = setting;
  const [native, kitchen] = [kitchenOf(part.native.kitchen, setting), kitchenOf(authored.kitchen, setting)];
  const ownWeights = weightsStatedIn(part.native.lines, native);
  const within = { recipe, native, kitchen, foods: setting.foods, ownWeights, weights, besideCure: hasCure(recipe) };
  const plan = planPart(part, within);
  // What the native lines state of a food is as true of the version's.
  const stated = bothStated(ownWeights, weightsStatedIn(authored.lines, kitchen));
  const all = heldLines(part, authored, plan.demands, {
    ...within,
    ownWeights: stated,
    loose: eggLines(recipe).loose,
  });
  const blind = blindLines(all, plan.demands);
  const demands = plan.demands.filter(({ lines }) => !lines.some((line) => blind.has(line)));
  const held = all.filter(({ line }) => !blind.has(line));
  const comparison = { demands, held, kitchen, ownWeights: stated };
  const found = plan.ratios.flatMap((ratio) => compared(ratio, comparison) ?? []);
  const whole = wholeLines([...part.native.lines, ...authored.lines]);
  return found.map((ratio) => ({
    ...ratio,
    lines: ratio.lines.map(whole),
    nativeLines: [...new Set(ratio.nativeLines.map(whole))],
  }));
}

/** The line that an author would edit for one that is counted within it. */
function wholeLines(lines: readonly Line[]): (line: Line) => Line {
  const owners = new Map(lines.flatMap((line) => withPlus([line]).map((own) => [own, line])));
  return (line) => owners.get(line) ?? line;
}

function compared(ratio: GuardedRatio, comparison: Comparison): AuthoredRatio | null {
  const { demands, held } = comparison;
  const native = overNative(ratio.above, demands) / overNative(ratio.below, demands);
  const version = over(ratio.above, held) / over(ratio.below, held);
  if (!Number.isFinite(native) || native === 0 || !Number.isFinite(version)) return null;
  const nativeLines = [...new Set(demands.flatMap((demand) => (ratio.above(demand) > 0 ? demand.lines : [])))];
  if (version === 0 && !isLeftOut(ratio.above, demands, held)) return null;
  const counted = held.filter((mass) => ratio.above(mass) > 0);
  const instead =
    counted.length === 1 && counted[0] !== undefined ? insteadOf(counted[0], native, ratio, comparison) : null;
  return {
    name: ratio.name,
    native,
    version,
    drift: version / native - 1,
    limit: limitAt(ratio, over(ratio.below, held)),
    lines: counted.map(({ line }) => line),
    nativeLines,
    instead,
  };
}

function over(side: Side, held: readonly Held[]): number {
  return held.reduce((sum, mass) => sum + side(mass) * mass.grams, 0);
}

function overNative(side: Side, demands: readonly Demand[]): number {
  return demands.reduce((sum, demand) => sum + side(demand) * gramsOf(demand), 0);
}

/**
 * Whether a version has nothing at all of what a ratio counts, not merely another food in its place (another yeast). Another seasoning is a
 * matter of taste.
 */
function isLeftOut(above: Side, demands: readonly Demand[], held: readonly Held[]): boolean {
  const counted = demands.filter((demand) => above(demand) > 0);
  const roles = counted.flatMap((demand) =>
    demand.contents.filter((content) => above({ ...demand, contents: [content] }) > 0).map(({ role }) => role),
  );
  const lines = new Set(counted.flatMap((demand) => demand.lines));
  const instead = held.filter((each) => each.lines.some((line) => lines.has(line)));
  const served = instead.some(({ contents }) => contents.some(({ role }) => roles.includes(role)));
  return !served && !roles.includes('seasoning');
}

/** The measure nearest to what would keep the ratio, if it does keep it. */
function insteadOf(held: Held, native: number, ratio: GuardedRatio, comparison: Comparison): Stated | null {
  const { kitchen, ownWeights } = comparison;
  const wanted = gramsThatKeep(held, native, ratio, comparison);
  const { weighed, line } = held;
  if (wanted === null || weighed === null || line.reading.pack !== null) return null;
  const { low, dimension } = weighed;
  if (low.grams === null || low.grams.isZero() || (dimension !== 'mass' && dimension !== 'volume')) return null;
  const grams = new Exact(wanted);
  const millilitres = low.millilitres?.times(grams).dividedBy(low.grams) ?? null;
  const landed = land({ weighed: { grams, millilitres }, dimension, food: line.food, byWrapper: false }, kitchen);
  if (landed === null) return null;
  const stated = stateMeasure(landed.measure, false);
  const again = middleGrams(weighStated(stated, weighingOf(line.reading, line.food, kitchen, ownWeights)));
  const changed = comparison.held.map((each) => (each === held ? { ...each, grams: again } : each));
  const below = over(ratio.below, changed);
  const drift = over(ratio.above, changed) / below / native - 1;
  return isBent({ drift, limit: limitAt(ratio, below) }) ? null : stated;
}

/** Grams of one line at which the ratio is the native one, all others as they are; null where none would do. */
function gramsThatKeep(
  held: Held,
  native: number,
  { above, below }: GuardedRatio,
  comparison: Comparison,
): number | null {
  const others = comparison.held.filter((each) => each !== held);
  const grams = (native * over(below, others)) / (above(held) - native * below(held));
  return Number.isFinite(grams) && grams > 0 ? grams : null;
}
