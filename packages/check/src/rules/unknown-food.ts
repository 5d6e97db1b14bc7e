import type { Rule } from '../rule.js';

/** A food that the larder does not know. */
export const unknownFood: Rule<'unknown-food'> = {
  name: 'unknown-food',
  severity: 'warning',
  joins: 'and',
  describe({ text }) {
    return {
      text: `The larder has no \`${text.trim()}\`, so it can be neither weighed nor checked. Use a name that the larder knows, or add the food to your larder file`,
      actual: text.trim(),
      expected: [],
    };
  },
};
