import type { Demand } from './demand.js';
import { anchorSpan, type BatchSpan, measureSpan, packSpan } from './weights.js';

/** A batch factor that is worth trying, and the demand whose whole packs or pieces set it. */
export interface BatchFactor {
  factor: number;
  /** Null at 1, where nothing sets it. */
  anchor: Demand | null;
}

/** The factors that put a use-whole food on whole packs or pieces, and 1. */
export function wholeFactors(demands: readonly Demand[]): BatchFactor[] {
  const whole = demands.filter(({ wholes, weight }) => wholes.length > 0 && weight > 0);
  return distinct([{ factor: 1, anchor: null }, ...whole.flatMap((demand) => factorsOf(demand, packSpan))]);
}

/** The factors that an explicit anchor allows: its packs or pieces over its native amount, any number of them. */
export function anchorFactors(anchor: Demand): BatchFactor[] {
  return distinct(factorsOf(anchor, anchorSpan));
}

/** Whether a factor is one that the batch may also take by itself, from ¾ to 1⅓. */
export function isNear({ factor }: BatchFactor): boolean {
  return isWithin(factor, packSpan);
}

/** With no use-whole food: the factors that put a line on a measure, at most 15 % from 1, for where 1 breaks a limit. */
export function measuredFactors(demands: readonly Demand[]): BatchFactor[] {
  return distinct(demands.filter(({ weight }) => weight > 0).flatMap((demand) => factorsOf(demand, measureSpan)));
}

/** Factors nearer than this are the same: three eggs of four are three quarters, whatever the last digit. */
const sameFactor = 1e-9;

function factorsOf(anchor: Demand, span: BatchSpan): BatchFactor[] {
  return anchor.choices
    .map(({ size }) => ({ factor: size / anchor.quantity, anchor }))
    .filter(({ factor }) => isWithin(factor, span));
}

function isWithin(factor: number, { least, most }: BatchSpan): boolean {
  return factor >= least - sameFactor && factor <= most + sameFactor;
}

/** Each factor once, nearest to 1 first; of a factor that several foods set, the first line is the anchor. */
function distinct(factors: readonly BatchFactor[]): BatchFactor[] {
  const far = ({ factor }: BatchFactor): number => Math.abs(Math.log(factor));
  const kept: BatchFactor[] = [];
  for (const each of [...factors].sort((a, b) => a.factor - b.factor)) {
    const last = kept.at(-1);
    if (last === undefined || each.factor - last.factor > sameFactor) kept.push(each);
    else if (each.anchor === null) kept[kept.length - 1] = each;
  }
  return kept.sort((a, b) => far(a) - far(b) || a.factor - b.factor);
}
