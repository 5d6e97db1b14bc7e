import type { Version, VersionPart } from '@retare/core';
import type { RootContent } from 'mdast';
import type { ContainerDirective } from 'mdast-util-directive';
import type { RecipeReading } from '../read/reading.js';
import { type Readings, replaceAnnotations } from './annotation-readings.js';
import { type BlockLabel, contentOf, partLabel } from './block-content.js';
import { blockElement } from './element.js';
import { lineWords } from './line-words.js';
import { marks, merged, sideBySide } from './variants.js';
import { working } from './working.js';

/**
 * One part of the recipe for every kitchen: the native list with each line's readings side by side, and the author's own lists for the
 * kitchens that have one.
 *
 * @param index Which part of the versions.
 * @param prose Readings of annotations in what is no line.
 */
export function placeIngredients(
  index: number,
  versions: readonly Version[],
  native: string,
  reading: RecipeReading,
  prose: Readings,
): RootContent | null {
  const parts = versions.flatMap((version) => {
    const part = version.parts[index];
    return part === undefined ? [] : [{ version, part }];
  });
  const first = parts[0];
  const block = first === undefined ? undefined : reading.blocks.get(first.part.part.native.key);
  if (first === undefined || block === undefined) return null;
  const onNative = parts.filter(({ part }) => part.ingredients === part.part.native);
  placeLines(onNative, native, reading);
  replaceAnnotations(block, prose, reading.source);
  const own = parts.filter(({ part }) => part.ingredients !== part.part.native);
  const authored = own.map(({ version, part }) => authoredList(part, version, native, reading));
  const children: RootContent[] = [
    ...partLabel(labelsOf(parts, reading), native),
    ...nativeList(block, onNative, own.length > 0, native),
    ...authored,
  ];
  if (first.version.recipe.preserve !== true) {
    for (const { version, part } of parts) {
      const details = version.kitchen.id === native ? null : working(part, version, native);
      if (details !== null) children.push(details);
    }
  }
  return blockElement('div', { className: ['retare-ingredients'] }, children);
}

interface PlacedPart {
  version: Version;
  part: VersionPart;
}

function labelsOf(parts: readonly PlacedPart[], reading: RecipeReading): BlockLabel[] {
  return parts.map(({ version, part }) => ({
    kitchen: version.kitchen.id,
    own: reading.blocks.get(part.ingredients.key),
    native: reading.blocks.get(part.part.native.key),
  }));
}

function placeLines(parts: readonly PlacedPart[], native: string, reading: RecipeReading): void {
  const count = parts[0]?.part.lines.length ?? 0;
  for (let at = 0; at < count; at++) {
    const readings = parts.flatMap(({ version, part }) => {
      const line = part.lines[at];
      return line === undefined ? [] : [{ kitchen: version.kitchen.id, line, ...lineWords(line, version, reading) }];
    });
    const place = reading.lines.get(readings[0]?.line.line.key ?? '');
    if (place !== undefined) place.paragraph.children = sideBySide(merged(readings), native);
  }
}

function nativeList(
  block: ContainerDirective,
  parts: readonly PlacedPart[],
  wrap: boolean,
  native: string,
): RootContent[] {
  const content = contentOf(block);
  if (!wrap) return content;
  return [
    blockElement(
      'div',
      marks(
        parts.map(({ version }) => version.kitchen.id),
        native,
      ),
      content,
    ),
  ];
}

/** The author's own list for a kitchen, word for word. */
function authoredList(part: VersionPart, version: Version, native: string, reading: RecipeReading): RootContent {
  const block = reading.blocks.get(part.ingredients.key);
  if (block !== undefined) replaceAnnotations(block, new Map(), reading.source);
  return blockElement('div', marks([version.kitchen.id], native), block === undefined ? [] : contentOf(block));
}
