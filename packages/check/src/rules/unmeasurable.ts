import type { Kitchen, Problem } from '@retare/core';
import type { Rule } from '../rule.js';
import { aKitchen, foodName, writeInstead, writtenFor } from './words.js';

/** An amount that no tool of the kitchen measures. */
export const unmeasurable: Rule<'unmeasurable'> = {
  name: 'unmeasurable',
  severity: 'error',
  joins: 'or',
  describe(problem, kitchen) {
    const expected = writtenFor(kitchen, problem.nearest);
    const instead = writeInstead(expected, 'Give it in a unit that a cook there can measure');
    return { actual: problem.text, expected, text: `${because(problem, kitchen)}. ${instead}` };
  },
};

function because(problem: Extract<Problem, { rule: 'unmeasurable' }>, kitchen: Kitchen): string {
  const of = problem.food === null ? '' : ` of ${foodName(problem.food, kitchen)}`;
  switch (problem.reason) {
    case 'no-tool':
      return `${aKitchen(kitchen, 'start')} kitchen has no scale to weigh \`${problem.text}\`${of}`;
    case 'no-unit':
      return `${aKitchen(kitchen, 'start')} kitchen has no measure for \`${problem.text}\`${of}`;
    case 'below-smallest':
      return `\`${problem.text}\`${of} is less than anything in ${aKitchen(kitchen, 'middle')} kitchen measures`;
    case 'between-measures':
      return `No spoon, cup, jug or scale of ${aKitchen(kitchen, 'middle')} kitchen holds \`${problem.text}\`${of}`;
  }
}
