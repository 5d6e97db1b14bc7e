import type { Food, Role } from '../../food/food.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { isOptional } from '../../recipe/is-optional.js';
import type { Line, Recipe } from '../../recipe/recipe.js';
import type { Demand } from '../search/demand.js';
import type { RatioLimits, Weights } from '../weights.js';
import type { GuardedRatio, Mass, Side } from './constraint.js';
import { standsOutside } from './outside.js';

/** Flour ratios hold only where flour is at least this share of a part's mass. */
const leastFlour = 0.15;
/** A line under this share of the flour may drift further. */
const smallLine = 0.1;
const tiny = 1e-9;

/** What ratios are drawn from. */
export interface RatioContext {
  recipe: Recipe;
  kitchen: Kitchen;
  weights: Weights;
}

/**
 * The ratios that make a part of the dish work, over its demands. What the larder lets stand in for a food counts as that food: its
 * contents are the native ones.
 */
export function guardedRatios(demands: readonly Demand[], context: RatioContext): GuardedRatio[] {
  const draw = new Drawing(demands, context);
  return [...draw.flourRatios(), ...draw.wholeRatios(), ...draw.gellingRatios()].filter(
    ({ native, nativeNumerator }) => Number.isFinite(native) && nativeNumerator > tiny,
  );
}

class Drawing {
  private readonly demands: readonly Demand[];
  private readonly context: RatioContext;
  /** Grams of every native line. */
  private readonly grams: number[];
  private readonly inside: (mass: Mass) => boolean;
  /** What is optional, or served beside the dish, is no part of it. */
  private readonly whole: Side;
  private readonly flour: Side;

  constructor(demands: readonly Demand[], context: RatioContext) {
    this.demands = demands;
    this.context = context;
    this.grams = demands.map(({ base, quantity }) => (base === 'g' ? quantity : 0));
    const isBeside = remembered(isOptional);
    const isOutside = remembered((line) => isBeside(line) || standsOutside(line, context.recipe));
    this.inside = ({ lines }) => lines.some((line) => !isOutside(line));
    this.whole = ({ lines, contents }) => (contents.length === 0 || lines.every(isBeside) ? 0 : 1);
    this.flour = this.insideOnly(ofRole('flour'));
  }

  flourRatios(): GuardedRatio[] {
    const flour = this.native(this.flour);
    if (flour < tiny || flour < leastFlour * this.native(this.whole)) return [];
    const contents = this.demands.flatMap((demand) => (this.inside(demand) ? demand.contents : []));
    const leavenings = new Set(contents.filter(({ role }) => role === 'leavening').map(({ food }) => food));
    return [
      ...[...leavenings].map((id) =>
        this.ratio(`${words(id)} : flour`, [this.insideOnly(ofFood(id)), this.flour], 'leavening', 'or half a step'),
      ),
      this.ratio('egg : flour', [this.insideOnly(ofRole('egg')), this.flour], 'egg'),
      ...this.bakingRatios(flour),
    ];
  }

  /** Liquid, sugar and fat to flour, each food by itself; foods that a stand-in mixes count as one. */
  private bakingRatios(flour: number): GuardedRatio[] {
    const wide = this.context.kitchen.scale === null ? 'bakingByVolume' : 'baking';
    return this.groups(['liquid', 'sugar', 'fat']).map(({ name, foods }) => {
      const own = this.insideOnly(served(foods));
      const small = this.native(own) < smallLine * flour;
      return this.ratio(`${name} : flour`, [own, this.flour], small ? 'bakingSmall' : wide);
    });
  }

  wholeRatios(): GuardedRatio[] {
    const seasonings = this.groups(['seasoning']).map(({ name, foods }) =>
      this.ratio(`${name} : whole`, [this.inWhole(served(foods)), this.whole], 'seasoning', 'or half a step'),
    );
    const salt = this.inWhole(ofRole('salt'));
    return [this.ratio('salt : whole', [salt, this.whole], 'salt', 'or half a step'), ...seasonings];
  }

  gellingRatios(): GuardedRatio[] {
    const liquid = this.insideOnly(ofRole('liquid'));
    if (this.native(liquid) < tiny) return [];
    return [
      this.ratio('gelling agent : liquid', [this.inWhole(ofRole('gelling')), liquid], 'gelling', 'or half a step'),
    ];
  }

  /** Foods of the native lines by role; those that share a demand belong together. */
  private groups(roles: readonly Role[]): { name: string; foods: ReadonlySet<Food> }[] {
    const groups: { name: string; foods: Set<Food> }[] = [];
    for (const { lines } of this.demands) {
      const foods = lines.flatMap(({ food }) => (food !== null && roles.includes(food.role) ? [food] : []));
      const first = foods[0];
      if (first === undefined) continue;
      const tied = groups.filter((group) => foods.some((food) => group.foods.has(food)));
      const into = tied[0] ?? { name: words(first.id), foods: new Set<Food>() };
      if (tied.length === 0) groups.push(into);
      for (const food of [...foods, ...tied.slice(1).flatMap((group) => [...group.foods])]) into.foods.add(food);
      for (const group of tied.slice(1)) groups.splice(groups.indexOf(group), 1);
    }
    return groups;
  }

  private insideOnly(side: Side): Side {
    return (mass) => (this.inside(mass) ? side(mass) : 0);
  }

  private inWhole(side: Side): Side {
    return (mass) => this.whole(mass) * side(mass);
  }

  private native(side: Side): number {
    return this.demands.reduce((sum, demand, at) => sum + side(demand) * (this.grams[at] ?? 0), 0);
  }

  private ratio(
    name: string,
    [above, below]: [Side, Side],
    key: keyof RatioLimits,
    orHalfStep?: 'or half a step',
  ): GuardedRatio {
    const numerator = Float64Array.from(this.demands, above);
    const nativeNumerator = this.native(above);
    return {
      name,
      above,
      below,
      numerator,
      denominator: Float64Array.from(this.demands, below),
      native: nativeNumerator / this.native(below),
      key,
      limit: this.context.weights.limits[key],
      halfStep: orHalfStep === undefined ? 0 : this.largestStep(numerator) / 2,
      nativeNumerator,
      ofWhole: below === this.whole,
    };
  }

  /** Of several lines above the coarsest step counts: it alone may keep the ratio from its limit. */
  private largestStep(numerator: Float64Array): number {
    return Math.max(0, ...this.demands.map(({ stepGrams }, at) => stepGrams * (numerator[at] ?? 0)));
  }
}

/** Asked of a line once, for many ratios. */
function remembered(ask: (line: Line) => boolean): (line: Line) => boolean {
  const known = new Map<Line, boolean>();
  return (line) => {
    const answer = known.get(line) ?? ask(line);
    known.set(line, answer);
    return answer;
  };
}

function ofRole(role: Role): Side {
  return ({ contents }) => contents.reduce((sum, each) => sum + (each.role === role ? each.share : 0), 0);
}

function ofFood(id: string): Side {
  return ({ contents }) => contents.reduce((sum, each) => sum + (each.food === id ? each.share : 0), 0);
}

/** All that serves some native foods, the salt and leavening in it left aside. */
function served(foods: ReadonlySet<Food>): Side {
  return ({ lines, contents }) =>
    lines.some(({ food }) => food !== null && foods.has(food))
      ? contents.reduce((sum, { role, share }) => sum + (role === 'leavening' || role === 'salt' ? 0 : share), 0)
      : 0;
}

function words(id: string): string {
  return id.replaceAll('-', ' ');
}
