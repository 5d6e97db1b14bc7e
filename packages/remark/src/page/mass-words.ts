import { Exact, gramsIn, type Kitchen, writeTerm } from '@retare/core';

/** A remainder as a cook there would say it: to the gram, or to the quarter ounce. */
export function massWords(grams: Exact, kitchen: Kitchen): string {
  if (kitchen.writes.mass.includes('g')) return writeTerm({ low: Exact.max(grams.round(), 1), high: null, unit: 'g' });
  const ounces = Exact.max(grams.dividedBy(gramsIn('oz')).times(4).round().dividedBy(4), '0.25');
  return writeTerm({ low: ounces, high: null, unit: 'oz' });
}
