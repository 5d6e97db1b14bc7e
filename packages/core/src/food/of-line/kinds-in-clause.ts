import { nameWords } from '../find/name-words.js';
import type { Clause } from './clauses-behind.js';

/** What says that a kind follows: `preferably penne`. */
const plainLeads: ReadonlySet<string> = new Set('preferably ideally'.split(' '));
const leads: ReadonlySet<string> = new Set([
  ...plainLeads,
  ...'any either about a an the some your which are is should be kind type of variety other'.split(' '),
]);
/** What says that an example follows, which is but one of the foods that would do: `e.g. cheddar`, `I use tilapia`. */
const exampleLeads: ReadonlySet<string> = new Set('e g eg ex i such as like we use try usually'.split(' '));
/** What comes after an example: `lard is fine`. */
const exampleTrails: ReadonlySet<string> = new Set('best works well acceptable fine ok okay good etc'.split(' '));
/** What comes after a kind: `red preferred`, `3.25% if possible`. */
const trails: ReadonlySet<string> = new Set([
  ...exampleTrails,
  ...'if possible preferred recommended kind kinds type variety is are only'.split(' '),
]);
/** Clauses that begin so name no kind of the food. */
const others: ReadonlySet<string> = new Set(
  'or and plus not no for to with without if in at but you from on see optional divided more until into'.split(' '),
);
/** Longer alternatives are sentences. */
const mostWords = 4;

/** The kinds that a clause may name, none if it speaks of something else. */
export interface Kinds {
  /** The words of each, mark-up and lead taken off. */
  alternatives: string[][];
  /** It says that a kind follows. */
  led: boolean;
  areExamples: boolean;
}

/** The kinds that a clause behind a food names. */
export function kindsIn({ text }: Clause): Kinds {
  const words = nameWords(text.replaceAll(',', ' / ')).map((word) => word.text);
  const start = words.findIndex((word) => !leads.has(word) && !exampleLeads.has(word));
  const before = words.slice(0, Math.max(0, start));
  const led = before.some((word) => plainLeads.has(word));
  const none = { alternatives: [], led: false, areExamples: false };
  if (start < 0 || others.has(words[start] ?? '') || words.includes('and')) return none;
  const parts: string[][] = [[]];
  for (const word of words.slice(start)) {
    if (word === '/' || word === 'or') parts.push([]);
    else parts.at(-1)?.push(word);
  }
  const alternatives = parts.map(withoutTrail).filter(({ length }) => length > 0);
  const areKinds = alternatives.every((kind) => kind.length <= mostWords);
  const areExamples = exampleTrails.has(words.at(-1) ?? '') || before.some((word) => exampleLeads.has(word));
  return areKinds ? { alternatives, led, areExamples } : none;
}

function withoutTrail(words: readonly string[]): string[] {
  const start = words.findIndex((word) => !leads.has(word));
  const end = words.findLastIndex((word) => !trails.has(word)) + 1;
  return words.slice(Math.max(0, start), end);
}
