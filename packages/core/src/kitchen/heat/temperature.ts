import type { Exact } from '../../exact.js';
import type { Kitchen } from '../kitchen.js';
import { celsiusOf, fahrenheitOf } from './oven.js';

/** Up to this many °C a temperature chills, and must never come out warmer. */
const chillsUpToCelsius = 10;

/** A temperature in a kitchen's scale, to the nearest degree, and down where it chills. */
export function temperatureFor(value: Exact, unit: 'C' | 'F', kitchen: Kitchen): { value: Exact; unit: 'C' | 'F' } {
  const scale = kitchen.writes.temperature;
  const exact = scale === 'C' ? celsiusOf(value, unit) : fahrenheitOf(value, unit);
  const chills = celsiusOf(value, unit).lessThanOrEqualTo(chillsUpToCelsius);
  return { value: chills ? exact.floor() : exact.round(), unit: scale };
}
