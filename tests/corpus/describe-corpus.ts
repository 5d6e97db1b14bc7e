import { describe, expect, test } from 'vitest';
import { corpusFolder, hasCorpus } from './corpus.ts';

/** A block of tests on the collection of real recipes: without it, CI fails, and any other run says that the block was not run. */
export function describeCorpus(name: string, tests: () => void): void {
  if (hasCorpus()) describe(name, tests);
  else if (process.env.CI === undefined)
    test.skip(`NOT RUN, no collection of recipes in ${corpusFolder()}: ${name}`, tests);
  else test(name, () => expect.unreachable(`no labels.jsonl in ${corpusFolder()}: set RETARE_CORPUS`));
}
