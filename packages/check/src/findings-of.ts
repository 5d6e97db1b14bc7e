import type { PlacedProblem, Version, VersionLine } from '@retare/core';
import type { Settings } from '@retare/larder';
import { placeOf, type RecipeReading, type Words } from 'remark-retare';
import type { Position } from 'unist';
import type { Finding } from './finding.js';
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

/**
 * What stands in the way of cooking a version.
 */
export function findingsOf(version: Version, reading: RecipeReading, settings: Settings): Finding[] {
  const kitchen = version.kitchen.id;
  const lines = version.parts.flatMap((part) =>
    part.lines.flatMap((line) =>
      lineFindings(line, part.standing === 'converted' ? kitchen : null, version, reading, settings),
    ),
  );
  const mentions = version.steps.flatMap(({ from, mentions: each }) =>
    each.flatMap(({ mention, problems }) => {
      // A shared method is the native kitchen's own words.
      if (from !== kitchen) return [];
      const place = reading.mentions.get(mention.key);
      return problems.flatMap((problem) =>
        finding(problem, null, version, settings, wordsAt(problem, place?.words, place?.node.position)),
      );
    }),
  );
  return [...lines, ...mentions];
}

function lineFindings(
  line: VersionLine,
  converted: string | null,
  version: Version,
  reading: RecipeReading,
  settings: Settings,
): Finding[] {
  const place = reading.lines.get(line.line.key);
  return line.problems.flatMap((problem) => {
    if (converted !== null && aboutWords.has(problem.problem.rule)) return [];
    return finding(problem, converted, version, settings, wordsAt(problem, place?.words, place?.paragraph.position));
  });
}

function wordsAt(
  { span }: PlacedProblem,
  words: Words | undefined,
  fallback: Position | undefined,
): Position | undefined {
  return words === undefined ? fallback : placeOf(words, span.start, span.end, fallback);
}

function finding(
  { problem }: PlacedProblem,
  converted: string | null,
  version: Version,
  settings: Settings,
  place: Position | undefined,
): Finding[] {
  const rule = ruleFor(problem);
  const severity = severityOf(rule.name, rule.severity, converted, settings);
  if (severity === 'off') return [];
  const { text, actual, expected, note } = rule.describe(problem, version.kitchen);
  return [
    { rule: rule.name, severity, kitchen: version.kitchen.id, text, actual, expected, note: note ?? null, place },
  ];
}
