import { Exact } from '../exact.js';
import { isVolumeUnit } from './size.js';
import type { UnitId } from './unit.js';

/** How full a spoon or cup is, where it is not level: the author's own word. */
export type Fill = string;

/**
 * Level spoons or cups that one of each holds. Common practice, no source: cooks differ by as much again, so that a word is kept where the
 * spoon is the same, and only turned into level measures where it is another.
 */
const factors: ReadonlyMap<string, { spoon: string; cup: string }> = new Map([
  ['heaped', { spoon: '2', cup: '1.25' }],
  ['heaping', { spoon: '2', cup: '1.25' }],
  ['rounded', { spoon: '1.5', cup: '1.1' }],
  ['generous', { spoon: '1.1', cup: '1.1' }],
  ['scant', { spoon: '0.9', cup: '0.9' }],
]);

/** The word for how full a measure is among the words of an amount (`2 heaped tbsp`); null for a level one. */
export function fillIn(words: string, unit: UnitId): Fill | null {
  if (!isVolumeUnit(unit)) return null;
  return (
    words
      .toLowerCase()
      .split(/[\s,-]+/u)
      .find((word) => factors.has(word)) ?? null
  );
}

/** How much of a level measure it holds. */
export function fillFactor(fill: Fill | null | undefined, unit: UnitId): Exact {
  const factor = fill == null ? undefined : factors.get(fill);
  return new Exact((unit === 'tsp' || unit === 'tbsp' ? factor?.spoon : factor?.cup) ?? 1);
}
