import type { Demand } from '../search/demand.js';
import type { RatioLimits } from '../weights.js';

/** A limit that couples demands: `Σ coefficient × grams ≤ bound`. */
export interface Constraint {
  coefficients: Float64Array;
  bound: number;
  /** Which guarded ratio it belongs to. */
  ratio: number;
}

/** What a food in a part counts as: a demand, or a line of a version. */
export type Mass = Pick<Demand, 'lines' | 'food' | 'contents'>;

/** How much of each gram of a food counts on one side of a ratio. */
export type Side = (mass: Mass) => number;

/** A guarded ratio of a part: the grams of some contents over the grams of others. */
export interface GuardedRatio {
  /** `salt : whole`, `water : flour` */
  name: string;
  above: Side;
  below: Side;
  /** Grams of numerator and denominator in each gram of a demand's choice. */
  numerator: Float64Array;
  denominator: Float64Array;
  native: number;
  /** Which of the settings' limits holds it. */
  key: keyof RatioLimits;
  /** Largest drift, as a fraction; half a step of the tool counts where that is larger. */
  limit: number;
  /** Half the smallest step of the tools that measure the numerator, grams; 0 where only the limit counts. */
  halfStep: number;
  /** Grams of the numerator in the native part. */
  nativeNumerator: number;
  /** Over the part's whole mass: its lines are no more guarded than others. */
  ofWhole: boolean;
}

/** Whether a ratio guards what stands at an index: above, or below where that is not the whole part. */
export function guards({ numerator, denominator, ofWhole }: GuardedRatio, at: number): boolean {
  return (numerator[at] ?? 0) > 0 || (!ofWhole && (denominator[at] ?? 0) > 0);
}

/**
 * The limit of a ratio in a version: half a step of a tool is a larger share of a little than of a lot.
 *
 * @param below Grams of the denominator in the version.
 */
export function limitAt({ limit, halfStep, native }: GuardedRatio, below: number): number {
  const wanted = native * below;
  return wanted === 0 ? limit : Math.max(limit, halfStep / wanted);
}

/** Whether a ratio drifts beyond its limit: floats must not refuse what is exactly on it. */
export function isBent({ drift, limit }: { drift: number; limit: number }): boolean {
  return Math.abs(drift) > limit + 1e-9;
}

/** A ratio's two sides as linear limits on the grams chosen. */
export function constraintsOf(ratios: readonly GuardedRatio[], batch: number): Constraint[] {
  return ratios.flatMap((ratio, index) => {
    const { native, limit, halfStep, nativeNumerator } = ratio;
    // Where half a step is more than the limit, it is half a step from what the denominator that is chosen asks for.
    const isByStep = halfStep > limit * nativeNumerator * batch;
    return [1, -1].map((side): Constraint => {
      const factor = isByStep ? native : native * (1 + side * limit);
      const coefficients = ratio.numerator.map((share, at) => side * (share - factor * (ratio.denominator[at] ?? 0)));
      return { coefficients, bound: (isByStep ? halfStep : 0) + slack(ratio), ratio: index };
    });
  });
}

/** Floats in the search must not refuse what is exactly on the limit. */
function slack({ nativeNumerator }: GuardedRatio): number {
  return 1e-9 * Math.max(nativeNumerator, 1);
}

/** A ratio in grams that were chosen. */
export interface RatioIn {
  /** Null where there is no denominator. */
  value: number | null;
  limit: number;
}

/** Numerator over denominator for grams chosen, and the limit there. */
export function ratioIn(ratio: GuardedRatio, grams: ArrayLike<number>): RatioIn {
  let above = 0;
  let below = 0;
  for (let at = 0; at < grams.length; at++) {
    above += (ratio.numerator[at] ?? 0) * (grams[at] ?? 0);
    below += (ratio.denominator[at] ?? 0) * (grams[at] ?? 0);
  }
  return { value: below === 0 ? null : above / below, limit: limitAt(ratio, below) };
}
