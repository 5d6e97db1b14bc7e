import type { Kitchen, Problem, ProblemRule } from '@retare/core';
import type { Severity } from '@retare/larder';

/** A finding's words, and its values for tools. */
export interface RuleWords {
  /** Two sentences: what a cook there would meet, then what to write. */
  text: string;
  /** What was read. */
  actual: string;
  /** What would do. */
  expected: string[];
  /** The reason in a sentence, where it adds to the text. */
  note?: string;
}

/** A rule about what a version asks of a kitchen. The core finds the problem; the rule says it. */
export interface Rule<Name extends ProblemRule = ProblemRule> {
  name: Name;
  /** Severity in a native or re-authored version, unless the site's settings say otherwise. */
  severity: Severity;
  /** How several kitchens are named where one sentence speaks for them: `UK and EU shops`, `a UK or EU kitchen`. */
  joins: 'and' | 'or';
  /** @param kitchen Its adjective may name several, whose words are the same. */
  describe(problem: Extract<Problem, { rule: Name }>, kitchen: Kitchen): RuleWords;
}
