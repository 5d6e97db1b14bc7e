import type { TemperatureReading } from '../reading.js';
import type { Tokens } from '../token/token.js';
import { tokenize } from '../token/tokenize.js';
import { likelyUnit, readDegrees } from './degrees.js';

/**
 * Reads the temperatures that a label states: `165°F`, `74 °C`, `165°F (74°C)`, `110 to 115°F`, `-18 °C`.
 *
 * A lone number is a temperature without a letter; beside other words a number needs a degree sign or a letter.
 *
 * @returns In the order of the text; empty where none is stated. With `impliedUnit`, `unit` is a guess that a kitchen has to settle.
 */
export function readTemperature(text: string): TemperatureReading[] {
  const tokens = tokenize(text);
  const readings: TemperatureReading[] = [];
  let at = 0;
  while (at < tokens.length) {
    const degrees = readDegrees(tokens, at);
    if (degrees === null || !(degrees.signed || isLone(tokens, degrees.first, degrees.next))) {
      at += 1;
      continue;
    }
    const span = tokens.span(degrees.first, degrees.next);
    const unit = degrees.unit ?? likelyUnit(degrees.low);
    readings.push({ low: degrees.low, high: degrees.high, unit, impliedUnit: degrees.unit === null, span });
    at = degrees.next;
  }
  return readings;
}

function isLone(tokens: Tokens, first: number, next: number): boolean {
  return first === 0 && next === tokens.length;
}
