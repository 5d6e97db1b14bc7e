import type { Rule } from '../rule.js';

/** Settings of one oven that are not the same heat. */
export const ovenDisagrees: Rule<'oven-disagrees'> = {
  name: 'oven-disagrees',
  severity: 'warning',
  joins: 'and',
  describe({ text, first, second }) {
    return {
      text: `\`${first}\` and \`${second}\` are more than a dial step apart. Correct one of them; the conventional heat is what other kitchens get`,
      actual: text,
      expected: [],
    };
  },
};
