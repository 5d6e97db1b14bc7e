import type { Caution, Version, VersionSteps } from '@retare/core';
import type { RootContent } from 'mdast';
import { cautionWords } from '../page/words.js';
import type { RecipeReading } from '../read/reading.js';
import { annotationReadings, type PlacedSteps, replaceAnnotations } from './annotation-readings.js';
import { type BlockLabel, contentOf, partLabel } from './block-content.js';
import { blockElement, words, wordsElement } from './element.js';
import { marks, merged, sideBySide } from './variants.js';

/**
 * One method for every kitchen: the native one with each annotation's readings side by side, and the author's own for the kitchens that
 * have one. Cautions on core temperatures follow it.
 */
export function placeMethod(
  index: number,
  versions: readonly Version[],
  native: string,
  reading: RecipeReading,
): RootContent | null {
  const all = versions.flatMap((version): PlacedSteps[] => {
    const steps = version.steps[index];
    return steps === undefined ? [] : [{ version, steps }];
  });
  const first = all[0];
  const block = first === undefined ? undefined : reading.blocks.get(first.steps.steps.native.key);
  if (first === undefined || block === undefined) return null;
  const shared = all.filter(({ steps }) => steps.from === steps.steps.native.kitchen);
  replaceAnnotations(block, annotationReadings(shared, native, reading), reading.source);
  const own = all.filter(({ steps }) => steps.from !== steps.steps.native.kitchen);
  const content = contentOf(block);
  const children: RootContent[] =
    own.length === 0
      ? content
      : [
          blockElement(
            'div',
            marks(
              shared.map(({ version }) => version.kitchen.id),
              native,
            ),
            content,
          ),
        ];
  for (const { version, steps } of own) children.push(authoredMethod(steps, version, native, reading));
  return blockElement('div', { className: ['retare-method'] }, [
    ...partLabel(labelsOf(all, reading), native),
    ...children,
    ...cautions(all, native),
  ]);
}

function labelsOf(all: readonly PlacedSteps[], reading: RecipeReading): BlockLabel[] {
  return all.map(({ version, steps: { steps, from } }) => ({
    kitchen: version.kitchen.id,
    own: reading.blocks.get([steps.native, ...steps.authored].find(({ kitchen }) => kitchen === from)?.key ?? ''),
    native: reading.blocks.get(steps.native.key),
  }));
}

/** The author's own method for a kitchen, word for word. */
function authoredMethod(steps: VersionSteps, version: Version, native: string, reading: RecipeReading): RootContent {
  const method = steps.steps.authored.find(({ kitchen }) => kitchen === version.kitchen.id);
  const block = method === undefined ? undefined : reading.blocks.get(method.key);
  if (block === undefined) return blockElement('div', marks([version.kitchen.id], native), []);
  replaceAnnotations(block, annotationReadings([{ version, steps }], native, reading), reading.source);
  return blockElement('div', marks([version.kitchen.id], native), contentOf(block));
}

/** The annotation that a caution belongs to. */
const toldWith = { 'core-temperature': 'core', oven: 'oven', bake: 'pan' } as const;

/** Cautions that belong to the steps, each a paragraph: on core temperatures where one is named, on ovens, on time where a pan is. */
function cautions(all: readonly PlacedSteps[], native: string): RootContent[] {
  return (['core-temperature', 'oven', 'bake'] as const).flatMap((kind) => {
    const told = all.flatMap(({ version, steps }) => {
      const named = steps.mentions.filter(({ mention }) => mention.kind === toldWith[kind]);
      // Of several ovens each method tells its own.
      const isOwn = (each: Caution): boolean =>
        each.kind === kind && named.some(({ mention }) => each.kind !== 'oven' || mention.text === each.text);
      const text = version.cautions.filter(isOwn).map(cautionWords).join(' ');
      if (text === '') return [];
      return [{ kitchen: version.kitchen.id, same: text, children: () => [words(text)] }];
    });
    if (told.length === 0) return [];
    return [cautionParagraph(told, all.length, native)];
  });
}

/** What only some kitchens are told is marked for them, the same words for all or not. */
function cautionParagraph(told: Parameters<typeof merged>[0], kitchens: number, native: string): RootContent {
  const variants = merged(told);
  const [only] = variants;
  if (only !== undefined && variants.length === 1 && told.length < kitchens) {
    const { dataRetare, className = [] } = marks(only.kitchens, native);
    return wordsElement('p', { dataRetare, className: ['retare-caution', ...className] }, only.children);
  }
  return wordsElement('p', { className: ['retare-caution'] }, sideBySide(variants, native));
}
