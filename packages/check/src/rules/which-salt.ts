import type { Rule } from '../rule.js';

/** Kosher salt by volume without its weight. */
export const whichSalt: Rule<'which-salt'> = {
  name: 'which-salt',
  severity: 'warning',
  joins: 'and',
  describe({ text, grams }) {
    const [light, heavy] = grams.map((each) => each.toDecimalPlaces(1).toString());
    return {
      text: `A teaspoon of kosher salt weighs ${light} g in flakes and ${heavy} g in coarse grains, so \`${text}\` may be nearly twice the salt. Give the grams in brackets; until then the lighter grain is taken`,
      actual: text,
      expected: [`${text} (… g)`],
    };
  },
};
