import type { Rule } from '../rule.js';

/** An oven setting that the kitchen's dial does not reach. */
export const ovenBeyondDial: Rule<'oven-beyond-dial'> = {
  name: 'oven-beyond-dial',
  severity: 'warning',
  joins: 'and',
  describe({ text, beyond: { end, mark, asked, unit } }, { adjective }) {
    const goes = end === 'hottest' ? 'go no higher than' : 'go no lower than';
    const more = end === 'hottest' ? 'hotter' : 'cooler';
    const heat = text.includes(asked) ? '' : `, ${asked}°${unit}`;
    return {
      text: `${adjective} ovens ${goes} ${mark}°${unit}, and \`${text}\` is ${more}${heat}. Write a \`method\` for that kitchen that says what a cook there does, or excuse the line`,
      actual: text,
      expected: [],
    };
  },
};
