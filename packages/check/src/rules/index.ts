import type { Problem, ProblemRule } from '@retare/core';
import type { Rule } from '../rule.js';
import { awkwardLeftover } from './awkward-leftover.js';
import { curingSalt } from './curing-salt.js';
import { ovenBeyondDial } from './oven-beyond-dial.js';
import { ovenDisagrees } from './oven-disagrees.js';
import { unbuyable } from './unbuyable.js';
import { underdone } from './underdone.js';
import { unknownFood } from './unknown-food.js';
import { unmeasurable } from './unmeasurable.js';
import { unreadableAmount } from './unreadable-amount.js';
import { whichSalt } from './which-salt.js';

const rules: { [Name in ProblemRule]: Rule<Name> } = {
  unbuyable,
  unmeasurable,
  underdone,
  'curing-salt': curingSalt,
  'which-salt': whichSalt,
  'unreadable-amount': unreadableAmount,
  'unknown-food': unknownFood,
  'awkward-leftover': awkwardLeftover,
  'oven-disagrees': ovenDisagrees,
  'oven-beyond-dial': ovenBeyondDial,
};

/** The rule that speaks for a problem. */
export function ruleFor(problem: Problem): Rule {
  // The type of the table holds a problem and its rule together; a type of one entry cannot.
  return rules[problem.rule] as Rule;
}
