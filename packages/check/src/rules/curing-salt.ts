import type { Rule } from '../rule.js';

/** A cure that is not given by weight. */
export const curingSalt: Rule<'curing-salt'> = {
  name: 'curing-salt',
  severity: 'error',
  joins: 'and',
  describe({ text }) {
    return {
      text: `Curing salt is dangerous by the spoon, and \`${text}\` gives no weight. Write it in grams, from a tested recipe; readers should follow their own food-safety authority`,
      actual: text,
      expected: ['grams'],
    };
  },
};
