import { type Kitchen, nameIn, type Problem } from '@retare/core';
import type { Rule } from '../rule.js';
import { article, writeInstead, writtenFor } from './words.js';

/** An amount that no tool of the kitchen measures. */
export const unmeasurable: Rule<'unmeasurable'> = {
  name: 'unmeasurable',
  severity: 'error',
  describe(problem, kitchen) {
    const expected = writtenFor(kitchen, problem.nearest);
    const instead = writeInstead(expected, 'Give it in a unit that a cook there can measure');
    return { actual: problem.text, expected, text: `${because(problem, kitchen)}. ${instead}` };
  },
};

function because(problem: Extract<Problem, { rule: 'unmeasurable' }>, kitchen: Kitchen): string {
  const of = problem.food === null ? '' : ` of ${nameIn(problem.food, kitchen.id).many}`;
  const a = `${article(kitchen.adjective)} ${kitchen.adjective} kitchen`;
  switch (problem.reason) {
    case 'no-tool':
      return `${capital(a)} has no scale to weigh \`${problem.text}\`${of}`;
    case 'no-unit':
      return `${capital(a)} has no measure for \`${problem.text}\`${of}`;
    case 'below-smallest':
      return `\`${problem.text}\`${of} is less than anything in ${a} measures`;
    case 'between-measures':
      return `No spoon, cup, jug or scale of ${a} holds \`${problem.text}\`${of}`;
  }
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
