/** Units with one size everywhere, weight. */
export type MassUnit = 'g' | 'kg' | 'mg' | 'oz' | 'lb';
/** Units of volume. Metric ones have one size everywhere, the others belong to a kitchen. */
export type VolumeUnit = 'ml' | 'cl' | 'dl' | 'l' | KitchenVolumeUnit;
/** Units of volume whose size differs by country, so that only a kitchen can say how much they hold. */
export type KitchenVolumeUnit = 'tsp' | 'tbsp' | 'cup' | 'floz' | 'pint' | 'quart' | 'gallon';
/** Units of length. */
export type LengthUnit = 'in' | 'cm' | 'mm';
/** Degrees, and the gas mark. */
export type TemperatureUnit = 'C' | 'F' | 'gas';
/** Words that count things: shop containers, natural pieces and gestures with a number. `count` is no unit at all. */
export type CountUnit =
  | 'count'
  | 'pinch'
  | 'dash'
  | 'clove'
  | 'slice'
  | 'bunch'
  | 'sprig'
  | 'head'
  | 'stick'
  | 'can'
  | 'tin'
  | 'packet'
  | 'piece'
  | 'handful';

/** Every unit that an ingredient line or an annotation can hold. */
export type UnitId = MassUnit | VolumeUnit | LengthUnit | TemperatureUnit | CountUnit;

/** What a unit measures. */
export type Dimension = 'mass' | 'volume' | 'length' | 'temperature' | 'count';
