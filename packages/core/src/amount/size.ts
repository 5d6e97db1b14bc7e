import { Exact } from '../exact.js';
import type { CountUnit, Dimension, KitchenVolumeUnit, LengthUnit, MassUnit, UnitId, VolumeUnit } from './unit.js';

/** Millilitres that a kitchen's own volume units hold. */
export type KitchenUnits = Readonly<Partial<Record<KitchenVolumeUnit, Exact>>>;

/** Grams in each unit of weight. The pound is exactly 0.45359237 kg (international yard and pound agreement, 1959). */
const grams: Readonly<Record<MassUnit, Exact>> = {
  mg: new Exact('0.001'),
  g: new Exact(1),
  kg: new Exact(1000),
  oz: new Exact('28.349523125'),
  lb: new Exact('453.59237'),
};

const metricMillilitres: Readonly<Record<'ml' | 'cl' | 'dl' | 'l', Exact>> = {
  ml: new Exact(1),
  cl: new Exact(10),
  dl: new Exact(100),
  l: new Exact(1000),
};

/** Centimetres in each unit of length. The inch is exactly 2.54 cm (the same agreement). */
const centimetres: Readonly<Record<LengthUnit, Exact>> = {
  mm: new Exact('0.1'),
  cm: new Exact(1),
  in: new Exact('2.54'),
};

const kitchenVolumes: ReadonlySet<string> = new Set(['tsp', 'tbsp', 'cup', 'floz', 'pint', 'quart', 'gallon']);
const countUnits: ReadonlySet<string> = new Set<CountUnit>([
  'count',
  'pinch',
  'dash',
  'clove',
  'slice',
  'bunch',
  'sprig',
  'head',
  'stick',
  'can',
  'tin',
  'packet',
  'piece',
  'handful',
]);

/** What a unit measures. */
export function dimensionOf(unit: UnitId): Dimension {
  if (isMassUnit(unit)) return 'mass';
  if (isVolumeUnit(unit)) return 'volume';
  if (unit in centimetres) return 'length';
  return countUnits.has(unit) ? 'count' : 'temperature';
}

/** Whether a unit is one of weight. */
export function isMassUnit(unit: UnitId): unit is MassUnit {
  return unit in grams;
}

/** Whether a unit is one of volume. */
export function isVolumeUnit(unit: UnitId): unit is VolumeUnit {
  return unit in metricMillilitres || kitchenVolumes.has(unit);
}

/** Whether a unit is one of length. */
export function isLengthUnit(unit: UnitId): unit is LengthUnit {
  return unit in centimetres;
}

/** Grams in one of a unit of weight, exact. */
export function gramsIn(unit: MassUnit): Exact {
  return grams[unit];
}

/** Centimetres in one of a unit of length, exact. */
export function centimetresIn(unit: LengthUnit): Exact {
  return centimetres[unit];
}

/** Millilitres in one of a unit of volume, exact; null when the kitchen has no such unit (a UK kitchen's `cup`). */
export function millilitresIn(unit: VolumeUnit, units: KitchenUnits): Exact | null {
  if (unit in metricMillilitres) return metricMillilitres[unit as 'ml'];
  return units[unit as KitchenVolumeUnit] ?? null;
}
