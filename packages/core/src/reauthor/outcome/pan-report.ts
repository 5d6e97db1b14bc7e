import { Exact } from '../../exact.js';
import { depthCaution } from '../../version/cautions.js';
import type { Caution } from '../../version/version.js';
import { depthDriftOf } from '../pans-of.js';
import type { Solution } from '../search/solve.js';
import { farBatch } from '../weights.js';

/** A pan before and after. */
export interface PanReport {
  native: string;
  version: string;
  count: number;
  /** Another number than the author's, since with that the batter would be over a tenth deeper or shallower; null where it is kept. */
  changed: { from: number; because: 'depth' } | null;
  /** Depth of the batter over the native depth, less one. */
  depthDrift: number;
  caution: boolean;
}

/** The pans that were chosen, each beside the author's. */
export function panReports({ pans, batch }: Solution): PanReport[] {
  return pans.map((chosen) => {
    const { demand, offer, count } = chosen;
    const depthDrift = depthDriftOf(chosen, batch.factor);
    const caution = Math.abs(depthDrift) > depthCaution || Math.abs(batch.factor - 1) > farBatch;
    const changed = count === demand.count ? null : { from: demand.count, because: 'depth' as const };
    return {
      native: demand.mention.text,
      version: offer.size,
      count,
      changed,
      depthDrift,
      caution,
    };
  });
}

/** A deeper or larger bake takes another time: the depth is named, else the batch. */
export function timeCaution(pans: readonly PanReport[], batch: Exact): Caution[] {
  const depth = pans.find(({ depthDrift }) => Math.abs(depthDrift) > depthCaution);
  if (depth !== undefined) return [{ kind: 'bake', changed: 'depth', drift: new Exact(depth.depthDrift) }];
  const drift = batch.minus(1);
  return drift.abs().greaterThan(farBatch) ? [{ kind: 'bake', changed: 'batch', drift }] : [];
}
