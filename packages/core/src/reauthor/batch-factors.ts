import type { Demand } from './demand.js';
import { batchRange } from './weights.js';

/** A batch factor that is worth trying, and the demand whose whole packs or pieces set it. */
export interface BatchFactor {
  factor: number;
  /** Null at 1, where nothing sets it. */
  anchor: Demand | null;
}

/**
 * The factors that put a use-whole food on whole packs or pieces, and 1.
 *
 * @param anchor An explicit anchor: then only its own whole numbers count, however far from 1.
 */
export function wholeFactors(demands: readonly Demand[], anchor: Demand | null): BatchFactor[] {
  if (anchor !== null) {
    const sizes = anchor.wholes.length > 0 ? anchor.choices.map(({ size }) => size) : packSizes(anchor);
    return distinct(sizes.map((size) => ({ factor: size / anchor.quantity, anchor })));
  }
  const factors = demands
    .filter(({ wholes, weight }) => wholes.length > 0 && weight > 0)
    .flatMap((demand) => demand.choices.map(({ size }) => ({ factor: size / demand.quantity, anchor: demand })))
    .filter(({ factor }) => factor >= batchRange.least && factor <= batchRange.most);
  return distinct([{ factor: 1, anchor: null }, ...factors]);
}

/** A fluid anchor has no packs to be used whole: any amount of it that can be measured may set the batch. */
function packSizes(anchor: Demand): number[] {
  return anchor.choices.map(({ size }) => size);
}

/** With no use-whole food: the factors that put a line on a measure, at most 15 % from 1, for where 1 breaks a limit. */
export function measuredFactors(demands: readonly Demand[]): BatchFactor[] {
  const factors = demands
    .filter(({ weight }) => weight > 0)
    .flatMap((demand) => demand.choices.map(({ size }) => ({ factor: size / demand.quantity, anchor: demand })))
    .filter(({ factor }) => factor >= batchRange.leastWithoutPacks && factor <= batchRange.mostWithoutPacks);
  return distinct(factors);
}

/** Each factor once, nearest to 1 first. */
function distinct(factors: readonly BatchFactor[]): BatchFactor[] {
  const sorted = [...factors].sort(
    (a, b) => Math.abs(Math.log(a.factor)) - Math.abs(Math.log(b.factor)) || a.factor - b.factor,
  );
  return sorted.filter(
    ({ factor }, index) => index === 0 || Math.abs(factor - (sorted[index - 1]?.factor ?? 0)) > 1e-9,
  );
}
