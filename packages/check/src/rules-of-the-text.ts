import type { Larder, RuleName, Settings, Severity } from '@retare/larder';
import type { Root } from 'mdast';
import { openingLine, type RecipeReading } from 'remark-retare';
import type { Finding } from './finding.js';
import { preserveQuestion } from './preserve-question.js';
import { severityOf } from './severity-of.js';

/** Annotations that cannot be understood. */
export function annotationFindings(reading: RecipeReading, settings: Settings): Finding[] {
  return reading.faults.flatMap(({ message, actual, expected, place }) =>
    told('annotation', 'error', settings, { text: message, actual, expected, place }),
  );
}

/** Re-authored versions that do not say what they were drawn from, so that none can tell when they are stale. */
export function missingFrom(reading: RecipeReading, larder: Larder, settings: Settings): Finding[] {
  const authored = [
    ...reading.recipe.parts.flatMap((part) => part.authored),
    ...reading.recipe.steps.flatMap((steps) => steps.authored),
  ];
  return authored
    .filter(({ from }) => from === null)
    .flatMap(({ key, kitchen }) => {
      const block = reading.blocks.get(key);
      const whose = larder.kitchens.get(kitchen)?.adjective ?? kitchen;
      return told('missing-from', 'warning', settings, {
        text: `This ${whose} version does not say which native lines it was drawn from, so nobody can tell when it has gone stale. Give it \`from\``,
        actual: kitchen,
        expected: ['from'],
        place: block === undefined ? undefined : openingLine(block, reading.source),
      });
    });
}

/** A post that may be a preserve and does not say. */
export function askPreserve(tree: Root, reading: RecipeReading, settings: Settings): Finding[] {
  const asked = preserveQuestion(tree, reading);
  if (asked === null) return [];
  const { word, place, ask, expected } = asked;
  return told('ask-preserve', 'warning', settings, { text: `This post ${ask}`, actual: word, expected, place });
}

/** A finding about the text itself, in no kitchen. */
export function told(
  rule: RuleName,
  own: Severity,
  settings: Settings,
  words: Pick<Finding, 'text' | 'actual' | 'expected' | 'place'>,
): Finding[] {
  const severity = severityOf(rule, own, null, settings);
  return severity === 'off' ? [] : [{ rule, severity, kitchens: [], note: null, ...words }];
}
