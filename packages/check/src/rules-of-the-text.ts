import type { Larder, RuleName, Settings, Severity } from '@retare/larder';
import type { Paragraph, Root } from 'mdast';
import { openingLine, placeOf, type RecipeReading, wordsOf } from 'remark-retare';
import { SKIP, visit } from 'unist-util-visit';
import type { Finding } from './finding.js';
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

/** Words of preserving. Each alone is enough to ask. */
const preserving =
  /(?<![\p{L}\p{N}])(?:jars?|canning|canned it|water[ -]bath|brined?|sterili[sz](?:e|ed|ing))(?![\p{L}\p{N}])/iu;

/**
 * A post that talks of preserving and does not say whether it is a preserve. An ingredient line that is bought in a jar says nothing
 * of it.
 */
export function askPreserve(tree: Root, reading: RecipeReading, settings: Settings): Finding[] {
  const found = preservingWord(tree, reading);
  if (found === null) return [];
  const { word, place } = found;
  return told('ask-preserve', 'warning', settings, {
    text: `This post talks of \`${word}\` and does not say whether it is a preserve, whose amounts must never be changed. Write \`preserve: true\` or \`preserve: false\` under \`retare\` in its front matter`,
    actual: word,
    expected: ['preserve: true', 'preserve: false'],
    place,
  });
}

/** The first word that tells of preserving, in a post that does not say whether it is a preserve; null where none does. */
export function preservingWord(
  tree: Root,
  reading: RecipeReading,
): { word: string; place: ReturnType<typeof placeOf> } | null {
  if (reading.recipe.preserve !== null || reading.recipe.parts.length === 0) return null;
  const lines = new Set<Paragraph>([...reading.lines.values()].map(({ paragraph }) => paragraph));
  let found: ReturnType<typeof preservingWord> = null;
  visit(tree, (node) => {
    if (found !== null || (node.type === 'paragraph' && lines.has(node))) return SKIP;
    if (node.type !== 'paragraph' && node.type !== 'heading') return;
    const words = wordsOf(node.children);
    const match = preserving.exec(words.text);
    if (match !== null) {
      const [word] = match;
      const place = placeOf(words, match.index, match.index + word.length, reading.source, node.position);
      found = { word, place };
    }
    return SKIP;
  });
  return found;
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
