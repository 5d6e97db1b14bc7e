import type { Exact, Kitchen, Marks, MeasureSet } from '@retare/core';
import { exactOf } from '../schema/exact-number.js';
import type { KitchenEntry, KitchenYaml } from '../schema/kitchen-schema.js';

type Written = number | string;

/** Millilitres of a kitchen's own volume units. */
export function buildUnits(units: NonNullable<KitchenEntry['units']>): Kitchen['units'] {
  const sizes = Object.entries(units).flatMap(([unit, sized]) => (sized ? [[unit, exactOf(sized.ml)] as const] : []));
  return Object.fromEntries(sizes);
}

/** The spoon sets. */
export function buildSpoons({ tsp, tbsp }: KitchenYaml['spoons']): Kitchen['spoons'] {
  return { tsp: measureSet(tsp), tbsp: measureSet(tbsp) };
}

/** The cup set, null for `none`. */
export function buildCups(cups: KitchenYaml['cups']): Kitchen['cups'] {
  return cups === 'none' ? null : { ...measureSet(cups), plusTablespoons: cups['plus-tablespoons'] };
}

/** The marks of a jug or the steps of a scale, null for `none`. */
export function buildMarks<Unit>(
  tool: 'none' | { unit: Unit; marks: readonly { from: Written; to: Written; step: Written }[] },
): { unit: Unit; marks: Marks[] } | null {
  if (tool === 'none') return null;
  const marks = tool.marks.map(({ from, to, step }) => ({ from: exactOf(from), to: exactOf(to), step: exactOf(step) }));
  return { unit: tool.unit, marks };
}

function measureSet({ wholes, fractions }: { wholes: number; fractions: readonly Written[] }): MeasureSet {
  return { wholes, fractions: fractions.map(exactOf).sort((one: Exact, other: Exact) => one.comparedTo(other)) };
}
