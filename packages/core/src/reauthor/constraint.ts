import type { Demand } from './demand.js';
import type { RatioLimits } from './weights.js';

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

/** The limit of a ratio in a batch: half a step weighs less in a larger one. */
export function limitAt({ limit, halfStep, nativeNumerator }: GuardedRatio, batch: number): number {
  return nativeNumerator === 0 ? limit : Math.max(limit, halfStep / (nativeNumerator * batch));
}

/** A ratio's two sides as linear limits on the grams chosen. */
export function constraintsOf(ratios: readonly GuardedRatio[], batch: number): Constraint[] {
  return ratios.flatMap((ratio, index) => {
    const limit = limitAt(ratio, batch);
    return [1, -1].map((side): Constraint => {
      const factor = ratio.native * (1 + side * limit);
      const coefficients = ratio.numerator.map((share, at) => side * (share - factor * (ratio.denominator[at] ?? 0)));
      return { coefficients, bound: slack(ratio), ratio: index };
    });
  });
}

/** Floats in the search must not refuse what is exactly on the limit. */
function slack({ nativeNumerator }: GuardedRatio): number {
  return 1e-9 * Math.max(nativeNumerator, 1);
}

/** Numerator over denominator for grams chosen; null where there is no denominator. */
export function ratioOf({ numerator, denominator }: GuardedRatio, grams: ArrayLike<number>): number | null {
  let above = 0;
  let below = 0;
  for (let at = 0; at < grams.length; at++) {
    above += (numerator[at] ?? 0) * (grams[at] ?? 0);
    below += (denominator[at] ?? 0) * (grams[at] ?? 0);
  }
  return below === 0 ? null : above / below;
}
