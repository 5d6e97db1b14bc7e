import type { Rule } from '../rule.js';

/** Something that looks like an amount and can be read in more than one way. */
export const unreadableAmount: Rule<'unreadable-amount'> = {
  name: 'unreadable-amount',
  severity: 'error',
  joins: 'and',
  describe({ text, because, instead }) {
    return { text: `${because} ${instead}`, actual: text, expected: [] };
  },
};
