import { type Edit, overlap, type Version, type VersionLine, type VersionMention } from '@retare/core';
import type { RecipeReading } from '../read/reading.js';
import { mentionsOf } from './annotation-readings.js';

/**
 * Edits of the annotations within a line's words, lengths and temperatures, that none of its own edits touches.
 *
 * @param textOf What an annotation becomes.
 */
export function annotationEdits(
  { line, edits }: VersionLine,
  version: Version,
  reading: RecipeReading,
  textOf: (mention: VersionMention) => string,
): Edit[] {
  const directives = reading.lines.get(line.key)?.words.directives ?? [];
  return directives.flatMap(({ node, start, end }): Edit[] => {
    const own = mentionsOf(version).get(reading.mentionKeys.get(node) ?? '');
    if (own === undefined || edits.some((edit) => overlap(edit, { start, end }))) return [];
    const text = textOf(own);
    return text === own.mention.text ? [] : [{ start, end, text }];
  });
}
