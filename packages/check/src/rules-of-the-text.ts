import type { RuleName, Settings, Severity } from '@retare/larder';
import type { Root } from 'mdast';
import { toString as wordsIn } from 'mdast-util-to-string';
import type { RecipeReading } from 'remark-retare';
import type { Position } from 'unist';
import type { Finding } from './finding.js';
import { severityOf } from './severity-of.js';

/** Annotations that cannot be understood. */
export function annotationFindings(reading: RecipeReading, settings: Settings): Finding[] {
  return reading.faults.flatMap(({ message, actual, expected, place }) =>
    told('annotation', 'error', settings, { text: message, actual, expected, place }),
  );
}

/** Re-authored versions that do not say what they were drawn from, so that none can tell when they are stale. */
export function missingFrom(reading: RecipeReading, settings: Settings): Finding[] {
  const authored = [
    ...reading.recipe.parts.flatMap((part) => part.authored),
    ...reading.recipe.steps.flatMap((steps) => steps.authored),
  ];
  return authored
    .filter(({ from }) => from === null)
    .flatMap(({ key, kitchen }) => {
      const block = reading.blocks.get(key);
      const text = `This version for \`${kitchen}\` does not say which native lines it was drawn from, so it cannot be told when it is stale. Give it \`from\``;
      return told('missing-from', 'warning', settings, {
        text,
        actual: kitchen,
        expected: ['from'],
        place: openingLine(block?.position),
      });
    });
}

function openingLine(position: Position | undefined): Position | undefined {
  if (position === undefined) return undefined;
  const { start } = position;
  return { start, end: { ...start, column: start.column + 3, offset: (start.offset ?? 0) + 3 } };
}

/** Words of preserving. Each alone is enough to ask. */
const preserving = [
  'jars',
  'jar',
  'canning',
  'canned it',
  'water bath',
  'brine',
  'sterilize',
  'sterilise',
  'sterilised',
  'sterilized',
];

/** A post that talks of preserving and does not say whether it is a preserve. */
export function askPreserve(tree: Root, reading: RecipeReading, settings: Settings): Finding[] {
  if (reading.recipe.preserve !== null || reading.recipe.parts.length === 0) return [];
  const words = ` ${wordsIn(tree)
    .toLowerCase()
    .replace(/[^\p{L}]+/gu, ' ')} `;
  const word = preserving.find((each) => words.includes(` ${each} `));
  if (word === undefined) return [];
  const text = `This post talks of \`${word}\`. Write \`preserve: true\` under \`retare\` in its front matter if it is a preserve, whose amounts must never be changed, or \`preserve: false\``;
  return told('ask-preserve', 'warning', settings, {
    text,
    actual: word,
    expected: ['preserve: true', 'preserve: false'],
    place: undefined,
  });
}

/** A finding about the text itself, in no kitchen. */
export function told(
  rule: RuleName,
  own: Severity,
  settings: Settings,
  words: Pick<Finding, 'text' | 'actual' | 'expected' | 'place'>,
): Finding[] {
  const severity = severityOf(rule, own, null, settings);
  return severity === 'off' ? [] : [{ rule, severity, kitchen: null, note: null, ...words }];
}
