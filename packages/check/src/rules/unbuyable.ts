import { type Kitchen, oneOf, type Problem, writeTerm } from '@retare/core';
import type { Rule, RuleWords } from '../rule.js';
import { foodName, packWords, writeInstead, writtenFor } from './words.js';

type Unbuyable = Extract<Problem, { rule: 'unbuyable' }>;

/** An amount that no shop of the kitchen sells. */
export const unbuyable: Rule<'unbuyable'> = {
  name: 'unbuyable',
  severity: 'error',
  joins: 'and',
  describe(problem, kitchen) {
    const expected = expectedOf(problem, kitchen);
    return { actual: problem.text, expected, ...words(problem, kitchen, expected) };
  },
};

function expectedOf(problem: Unbuyable, kitchen: Kitchen): string[] {
  if (problem.reason === 'not-sold') return [];
  return problem.reason === 'egg-size' ? problem.sizes : writtenFor(kitchen, problem.nearest);
}

function words(problem: Unbuyable, kitchen: Kitchen, expected: string[]): Pick<RuleWords, 'text' | 'note'> {
  const name = foodName(problem.food, kitchen);
  const shops = `${kitchen.adjective} shops`;
  switch (problem.reason) {
    case 'not-sold': {
      const instead = standIns(problem);
      const write = instead === '' ? 'Leave it out there, or re-author the line' : `Re-author the line with ${instead}`;
      return { text: `${shops} do not sell ${name}, so \`${problem.text}\` cannot be bought. ${write}` };
    }
    case 'pack-size':
      return {
        text: `${shops} sell ${name} in ${packWords(problem.packs)}, so \`${problem.text}\` cannot be bought. ${writeInstead(expected, 'Re-author the line')}`,
      };
    case 'part-of-pack':
      return {
        text: `${shops} sell ${name} in ${packWords(problem.packs)}, which a cook uses whole, so \`${problem.text}\` cannot be bought. ${writeInstead(expected, 'Re-author the line')}, or make ${name} the anchor`,
        note: 'What is opened and not used up is a remainder that a recipe should not ask for.',
      };
    case 'egg-size':
      return {
        text: `${shops} sell no \`${problem.text}\` ${name}, so nobody there knows what one weighs. Write ${oneOf(expected)}`,
      };
    case 'part-of-piece':
      return {
        text: `${shops} sell ${name} whole, so \`${problem.text}\` of them cannot be bought. ${writeInstead(expected, 'Re-author the line')}`,
      };
    case 'counter-step': {
      const { step: low, unit } = kitchen.counter;
      const step = writeTerm({ low, high: null, unit });
      return {
        text: `${shops} weigh off ${name} in steps of ${step}, so \`${problem.text}\` cannot be bought. ${writeInstead(expected, 'Re-author the line')}`,
      };
    }
  }
}

function standIns(problem: Extract<Unbuyable, { reason: 'not-sold' }>): string {
  return problem.standIns
    .map((parts) =>
      parts
        .map(({ food, share }) => (parts.length === 1 ? food : `${share.times(100)} % ${food}`).replaceAll('-', ' '))
        .join(' and '),
    )
    .join(', or with ');
}
