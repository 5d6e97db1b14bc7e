import { anchorSpan, type BatchSpan, measureSpan, packSpan } from '../weights.js';
import type { Choice, Demand } from './demand.js';

/** A batch factor that is worth trying, and the demand whose whole packs or pieces set it. */
export interface BatchFactor {
  factor: number;
  /** Null at 1, where nothing sets it. */
  anchor: Demand | null;
  /** What the anchor comes to at this factor, and so what is chosen of it; null where any of its choices may be. */
  choice: Choice | null;
}

/** The native size. */
export const native: BatchFactor = { factor: 1, anchor: null, choice: null };

/** The factors that put a use-whole food on whole packs or pieces, and 1. */
export function wholeFactors(demands: readonly Demand[]): BatchFactor[] {
  const whole = demands.filter(({ wholes, weight }) => wholes.length > 0 && weight > 0);
  const others = whole.flatMap((demand) => factorsOf(demand, packSpan));
  return nearestFirst([native, ...others.filter(({ factor }) => !isSameFactor(factor, 1))]);
}

/** The factors that an explicit anchor allows: its packs or pieces over its native amount, any number of them. */
export function anchorFactors(anchor: Demand): BatchFactor[] {
  return nearestFirst(factorsOf(anchor, anchorSpan));
}

/** Whether a factor is one that the batch may also take by itself, from ¾ to 1⅓. */
export function isNear({ factor }: BatchFactor): boolean {
  return isWithin(factor, packSpan);
}

/** With no use-whole food: the factors that put a line on a measure, at most 15 % from 1, for where 1 breaks a limit. */
export function measuredFactors(demands: readonly Demand[]): BatchFactor[] {
  const factors = demands.filter(({ weight }) => weight > 0).flatMap((demand) => factorsOf(demand, measureSpan));
  return distinct(factors.map((each) => ({ ...each, choice: null })));
}

/** Factors nearer than this are the same: three eggs of four are three quarters, whatever the last digit. */
const sameFactor = 1e-9;

/** Whether two factors are the same. */
export function isSameFactor(one: number, other: number): boolean {
  return Math.abs(one - other) <= sameFactor;
}

function factorsOf(anchor: Demand, span: BatchSpan): BatchFactor[] {
  return anchor.choices
    .map((choice) => ({ factor: choice.size / anchor.quantity, anchor, choice }))
    .filter(({ factor }) => isWithin(factor, span));
}

function isWithin(factor: number, { least, most }: BatchSpan): boolean {
  return factor >= least - sameFactor && factor <= most + sameFactor;
}

/** Each factor once, nearest to 1 first; of a factor that several foods set, the first line is the anchor. */
function distinct(factors: readonly BatchFactor[]): BatchFactor[] {
  const kept: BatchFactor[] = [];
  for (const each of [...factors].sort((a, b) => a.factor - b.factor)) {
    const last = kept.at(-1);
    if (last === undefined || !isSameFactor(each.factor, last.factor)) kept.push(each);
  }
  return nearestFirst(kept);
}

function nearestFirst(factors: readonly BatchFactor[]): BatchFactor[] {
  const far = ({ factor }: BatchFactor): number => Math.abs(Math.log(factor));
  // Of a factor that several foods set, the first line is the anchor.
  return [...factors].sort((a, b) => (isSameFactor(a.factor, b.factor) ? 0 : far(a) - far(b) || a.factor - b.factor));
}
