import {
  amountAsWritten,
  type Kitchen,
  listed,
  type PlacedProblem,
  type Version,
  type VersionLine,
  type VersionMention,
} from '@retare/core';
import type { Settings } from '@retare/larder';
import { placeOf, type RecipeReading, type Words } from 'remark-retare';
import type { Position } from 'unist';
import type { Finding, FindingSeverity } from './finding.js';
import type { Rule } from './rule.js';
import { ruleFor } from './rules/index.js';
import { severityOf } from './severity-of.js';

/** Rules about the words alone: they are the same in every kitchen, so only the author's own version tells them. */
const aboutWords: ReadonlySet<string> = new Set([
  'unknown-food',
  'unreadable-amount',
  'which-salt',
  'curing-salt',
  'underdone',
  'oven-disagrees',
]);

/** A problem that counts, before it is put in words. */
interface Counted {
  problem: PlacedProblem['problem'];
  rule: Rule;
  severity: FindingSeverity;
  place: Position | undefined;
  kitchen: Kitchen;
  /** The author's own words, where what is read in the kitchen was worked out from them. */
  written: string | null;
}

/** What stands in the way of cooking versions. What is the same in several kitchens is one finding that names them. */
export function findingsOf(versions: readonly Version[], reading: RecipeReading, settings: Settings): Finding[] {
  const alike = new Map<string, Counted[]>();
  for (const each of versions.flatMap((version) => countedIn(version, reading, settings))) {
    const key = keyOf(each);
    alike.set(key, [...(alike.get(key) ?? []), each]);
  }
  return [...alike.values()].map(inWords);
}

/** Equal for problems that read the same but for the kitchen's name. */
function keyOf({ problem, rule, severity, place, kitchen }: Counted): string {
  const { text } = rule.describe(problem, { ...kitchen, adjective: '' });
  return [rule.name, severity, place?.start.offset, place?.end.offset, text].join(' ');
}

function inWords(alike: readonly Counted[]): Finding {
  const [first] = alike;
  if (first === undefined) throw new RangeError('A finding has a problem.');
  const { problem, rule, severity, place, kitchen, written } = first;
  const kitchens = [...new Map(alike.map((each) => [each.kitchen.id, each.kitchen.adjective]))];
  const adjective = listed(
    kitchens.map(([, each]) => each),
    rule.joins,
  );
  const { text: said, actual, expected, note = null } = rule.describe(problem, { ...kitchen, adjective });
  // An author looks for the words that stand there.
  const text = written === null ? said : said.replace(`\`${actual}\``, (found) => `${found} (your \`${written}\`)`);
  return { rule: rule.name, severity, kitchens: kitchens.map(([id]) => id), text, actual, expected, note, place };
}

function countedIn(version: Version, reading: RecipeReading, settings: Settings): Counted[] {
  const { kitchen } = version;
  const lines = version.parts.flatMap((part) => {
    const converted = part.standing === 'converted' ? kitchen.id : null;
    return part.lines.flatMap((line) => ofLine(line, converted, version, reading, settings));
  });
  const mentions = version.steps.flatMap((steps) => {
    const converted = steps.from === kitchen.id ? null : kitchen.id;
    return steps.mentions.flatMap((each) => ofMention(each, converted, version, reading, settings));
  });
  return [...lines, ...mentions];
}

function ofLine(
  line: VersionLine,
  converted: string | null,
  { kitchen }: Version,
  reading: RecipeReading,
  settings: Settings,
): Counted[] {
  const at = reading.lines.get(line.line.key);
  const told = line.problems.filter(
    ({ problem }) => (converted === null || !aboutWords.has(problem.rule)) && !touchesCure(line, problem.rule),
  );
  return told.flatMap((placed) => {
    const place = wordsAt(placed, at?.words, reading.source, at?.paragraph.position);
    const there = line.line.text.slice(placed.span.start, placed.span.end).trim();
    // The second food of `1 cup each flour and sugar` has the amount of the first.
    const words = there === '' ? (amountAsWritten(line.line.reading) ?? '') : there;
    const written = converted === null || words === placed.problem.text ? null : words;
    return counted(placed, kitchen, place, severity(placed, converted, settings), written);
  });
}

/** A cure is shown as written: to say what else could be measured or bought would be dangerous. */
function touchesCure({ line }: VersionLine, rule: string): boolean {
  return line.food?.role === 'cure' && (rule === 'unmeasurable' || rule === 'unbuyable' || rule === 'awkward-leftover');
}

function ofMention(
  { mention, problems }: VersionMention,
  converted: string | null,
  { kitchen }: Version,
  reading: RecipeReading,
  settings: Settings,
): Counted[] {
  const at = reading.mentions.get(mention.key);
  // A shared method is the native kitchen's own words.
  const told = problems.filter(({ problem }) => converted === null || !aboutWords.has(problem.rule));
  return told.flatMap((placed) => {
    const place = wordsAt(placed, at?.words, reading.source, at?.node.position);
    return counted(placed, kitchen, place, severity(placed, converted, settings), null);
  });
}

function severity({ problem }: PlacedProblem, converted: string | null, settings: Settings): FindingSeverity | 'off' {
  const rule = ruleFor(problem);
  return severityOf(rule.name, rule.severity, converted, settings);
}

function counted(
  { problem }: PlacedProblem,
  kitchen: Kitchen,
  place: Position | undefined,
  severity: FindingSeverity | 'off',
  written: string | null,
): Counted[] {
  return severity === 'off' ? [] : [{ problem, rule: ruleFor(problem), severity, place, kitchen, written }];
}

function wordsAt(
  { span }: PlacedProblem,
  words: Words | undefined,
  source: string,
  fallback: Position | undefined,
): Position | undefined {
  return words === undefined ? fallback : placeOf(words, span.start, span.end, source, fallback);
}
