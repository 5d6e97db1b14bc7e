import { Exact, inScale, writeTerm } from '@retare/core';
import type { Rule } from '../rule.js';

/** A core temperature below the minimum that the kitchen's authority publishes. */
export const underdone: Rule<'underdone'> = {
  name: 'underdone',
  severity: 'error',
  joins: 'and',
  describe({ text, unit, minimum, write }) {
    const published = writeTerm({ low: minimum.temperature, high: null, unit: minimum.unit });
    // Rounded up: 160 °F are 71.1 °C, and 71 °C is less.
    const here = inScale(minimum.temperature, minimum.unit, unit).toDecimalPlaces(1, Exact.ROUND_UP);
    const least = unit === minimum.unit ? published : `${published} (${here}°${unit})`;
    const hold = minimum.hold === '' ? '' : ` (${minimum.hold})`;
    return {
      text: `\`${text}\` is below the ${least}${hold} that ${minimum.authority} gives for ${minimum.name}. Write \`${write}\`; readers should follow their own food-safety authority`,
      actual: text,
      expected: [write],
      note: minimum.source,
    };
  },
};
