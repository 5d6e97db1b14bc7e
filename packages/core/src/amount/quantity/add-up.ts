import { Exact } from '../../exact.js';
import {
  centimetresIn,
  dimensionOf,
  gramsIn,
  isLengthUnit,
  isMassUnit,
  isVolumeUnit,
  type KitchenUnits,
  millilitresIn,
} from '../size.js';
import type { Dimension, KitchenVolumeUnit, UnitId } from '../unit.js';

/** US customary sizes, in millilitres (NIST Handbook 44, appendix C: a gallon is 231 in³), for a line whose kitchen is not named. */
const usVolumes: Readonly<Record<KitchenVolumeUnit, Exact>> = {
  tsp: new Exact('4.92892159375'),
  tbsp: new Exact('14.78676478125'),
  floz: new Exact('29.5735295625'),
  cup: new Exact('236.5882365'),
  pint: new Exact('473.176473'),
  quart: new Exact('946.352946'),
  gallon: new Exact('3785.411784'),
};

/** What a unit measures, and how much of it, in millilitres, grams or centimetres; `null` for a unit that counts. */
function sizeOf(unit: UnitId, kitchen: KitchenUnits): { dimension: Dimension; size: Exact } | null {
  const dimension = dimensionOf(unit);
  if (isMassUnit(unit)) return { dimension, size: gramsIn(unit) };
  if (isLengthUnit(unit)) return { dimension, size: centimetresIn(unit) };
  const size = isVolumeUnit(unit) ? millilitresIn(unit, { ...usVolumes, ...kitchen }) : null;
  return size === null ? null : { dimension, size };
}

/** A number or range of a unit. */
export interface Measure {
  low: Exact;
  high: Exact | null;
  unit: UnitId;
  /** Of a sum the larger unit, which its words name beside `unit`. */
  beside?: UnitId;
}

/** Both in the smaller of two units, exact; `null` where the units do not measure the same. */
export function inSmallerUnit(one: Measure, other: Measure, kitchen: KitchenUnits): [Measure, Measure] | null {
  if (one.unit === other.unit) return [one, other];
  const [first, second] = [sizeOf(one.unit, kitchen), sizeOf(other.unit, kitchen)];
  if (first === null || second === null || first.dimension !== second.dimension) return null;
  if (first.size.gte(second.size)) return [times(one, first.size.div(second.size), other.unit), other];
  return [one, times(other, second.size.div(first.size), one.unit)];
}

function times({ low, high }: Measure, factor: Exact, unit: UnitId): Measure {
  return { low: low.times(factor), high: high?.times(factor) ?? null, unit };
}

/** A stick of butter has eight tablespoons marked on its wrapper; any other measure stays. */
export function inTablespoons({ low, high, unit, beside }: Measure): Measure {
  if (unit === 'stick') return { low: low.times(8), high: high?.times(8) ?? null, unit: 'tbsp' };
  return beside === undefined ? { low, high, unit } : { low, high, unit, beside };
}

/**
 * Adds up an amount in two parts (`1 cup plus 2 tbsp`), in the smaller of the two units, exact.
 *
 * @param kitchen Millilitres in the kitchen's own units; US sizes for those it does not name.
 * @returns `null` where the units do not measure the same.
 */
export function addUp(one: Measure, other: Measure, kitchen: KitchenUnits): Measure | null {
  const both = inSmallerUnit(one, other, kitchen);
  if (both === null) return null;
  const [a, b] = both;
  const high = a.high === null && b.high === null ? null : (a.high ?? a.low).plus(b.high ?? b.low);
  const sum: Measure = { low: a.low.plus(b.low), high, unit: a.unit };
  const beside = [one.beside, other.beside, one.unit, other.unit].find((unit) => unit !== undefined && unit !== a.unit);
  return beside === undefined ? sum : { ...sum, beside };
}
