import { writeTerm } from '@retare/core';
import type { Rule } from '../rule.js';

/** A core temperature below the minimum that the kitchen's authority publishes. */
export const underdone: Rule<'underdone'> = {
  name: 'underdone',
  severity: 'error',
  joins: 'and',
  describe({ text, minimum, write }) {
    const least = writeTerm({ low: minimum.temperature, high: null, unit: minimum.unit });
    const hold = minimum.hold === '' ? '' : ` (${minimum.hold})`;
    return {
      text: `\`${text}\` is below the ${least}${hold} that ${minimum.authority} gives for ${minimum.name}. Write \`${write}\`; readers should follow their own food-safety authority`,
      actual: text,
      expected: [write],
      note: minimum.source,
    };
  },
};
