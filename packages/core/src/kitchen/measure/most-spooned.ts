import { Exact } from '../../exact.js';
import type { Kitchen } from '../kitchen.js';

/** Millilitres up to which spoons are counted out: half way from 3½ tablespoons to four, which nobody counts. */
export function mostSpooned({ units }: Kitchen): Exact {
  return (units.tbsp ?? new Exact(15)).times('3.75');
}
