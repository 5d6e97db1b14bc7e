import { isFeasible, type Searched, type SearchInput, searchRecipe } from '../search/search-recipe.js';
import type { Candidate } from './candidate-change.js';
import type { Change } from './change.js';
import { without } from './changed-input.js';
import { candidatesFor, type InTheWay } from './possible-changes.js';

/** No version is worth more searches than this. */
const mostTried = 120;

/**
 * The least that an author could change so that there is a version: every change is tried, the least first, and the first that helps is
 * it. Where several lines stand in the way, a change for each.
 *
 * @returns Empty where nothing of the kind helps.
 */
export function leastChange(searched: Searched, inTheWay: InTheWay): Change[] {
  const { input } = searched;
  const all = candidatesFor(searched, inTheWay);
  const one = firstThatHelps(all, input);
  if (one !== null) return [one.change];
  if (inTheWay.lines.length < 2) return [];
  const each = inTheWay.lines.map((line) => {
    const others = inTheWay.lines.filter((other) => other !== line);
    const own = all.filter(({ change }) => 'line' in change && change.line === line);
    return firstThatHelps(own, without(input, others));
  });
  const found = each.flatMap((candidate) => candidate ?? []);
  const helps = found.length === each.length && helpsWith(found.reduce((made, { make }) => make(made), input));
  return helps ? found.map(({ change }) => change) : [];
}

function firstThatHelps(candidates: readonly Candidate[], input: SearchInput): Candidate | null {
  const sorted = [...candidates].sort((a, b) => a.asks - b.asks);
  // What is left to write by hand is tried however many were.
  const tried = [
    ...sorted.slice(0, mostTried),
    ...sorted.slice(mostTried).filter(({ change }) => change.kind === 'own-version'),
  ];
  return tried.find(({ make }) => helpsWith(make(input))) ?? null;
}

function helpsWith(input: SearchInput): boolean {
  const searched = searchRecipe(input);
  return searched !== null && isFeasible(searched);
}
