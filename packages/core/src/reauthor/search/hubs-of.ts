import type { Constraint } from '../ratio/constraint.js';
import type { Share } from './open-demand.js';

/**
 * Demands that others depend on, as flour that everything is held to, or salt that is held to the whole: once they are chosen, what is
 * left is coupled loosely.
 */
export function hubsOf(shares: readonly Share[][], limits: readonly Constraint[]): ReadonlySet<number> {
  const counts = shares.map(({ length }) => length).sort((a, b) => a - b);
  const usual = counts[counts.length >> 1] ?? 0;
  const largest = limits.map(({ coefficients }) => Math.max(...coefficients.map(Math.abs)));
  const isWide = limits.map(({ coefficients }) => coefficients.filter((each) => each !== 0).length > shares.length / 2);
  return new Set(
    shares.flatMap((own, at) => {
      const leads = own.some(
        ({ limit, coefficient }) => isWide[limit] && Math.abs(coefficient) > (largest[limit] ?? 0) / 2,
      );
      return leads || own.length > 2 * usual ? [at] : [];
    }),
  );
}
