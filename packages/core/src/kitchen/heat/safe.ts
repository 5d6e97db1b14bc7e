import { Exact } from '../../exact.js';
import type { Kitchen, SafeTemperature } from '../kitchen.js';
import { celsiusOf, fahrenheitOf } from './oven.js';

/** A core temperature for a reader's kitchen: never below what the author wrote, nor below what the kitchen's authority publishes. */
export interface CoreTemperature {
  value: Exact;
  unit: 'C' | 'F';
  /** `hold 2 min`, empty when reached is enough or no class is known. */
  hold: string;
  /** The kitchen's published minimum, where the class is known. */
  minimum: SafeTemperature | null;
}

/** The minimum that a kitchen's authority publishes for a class of food, such as `poultry`; null where it publishes none. */
export function safeMinimum(kitchen: Kitchen, foodClass: string): SafeTemperature | null {
  return kitchen.safe.find((safe) => safe.class === foodClass) ?? null;
}

/**
 * Whether a stated core temperature is below the minimum. The minimum in the other scale is rounded as its authority prints it in
 * whole degrees upward, so 73 °C is under 165 °F (73.9 °C) and 74 °C is not.
 */
export function isUnderdone(value: Exact, unit: 'C' | 'F', minimum: SafeTemperature): boolean {
  return celsiusOf(value, unit).lessThan(celsiusOf(minimum.temperature, minimum.unit));
}

/**
 * The core temperature to print for a kitchen.
 *
 * The author's value in the kitchen's scale is rounded up to the next whole degree; the kitchen's minimum stands where that is higher.
 * Rounding is always up: 160 °F is 71.1 °C, and 71 °C would be under the stated minimum.
 */
export function coreFor(value: Exact, unit: 'C' | 'F', kitchen: Kitchen, foodClass: string | null): CoreTemperature {
  const scale = kitchen.writes.temperature;
  const own = inScaleUp(value, unit, scale);
  const minimum = foodClass === null ? null : safeMinimum(kitchen, foodClass);
  if (minimum === null) return { value: own, unit: scale, hold: '', minimum };
  const least = inScaleUp(minimum.temperature, minimum.unit, scale);
  return { value: Exact.max(own, least), unit: scale, hold: minimum.hold, minimum };
}

function inScaleUp(value: Exact, from: 'C' | 'F', to: 'C' | 'F'): Exact {
  return inScale(value, from, to).ceil();
}

/** A temperature in one scale or the other, exactly. */
export function inScale(value: Exact, from: 'C' | 'F', to: 'C' | 'F'): Exact {
  return to === 'C' ? celsiusOf(value, from) : fahrenheitOf(value, from);
}
