import type { Version, VersionMention, VersionSteps } from '@retare/core';
import type { PhrasingContent, RootContent } from 'mdast';
import type { ContainerDirective, TextDirective } from 'mdast-util-directive';
import { visit } from 'unist-util-visit';
import { cautionWords } from '../page/words.js';
import type { RecipeReading } from '../read/reading.js';
import { isAnnotation } from '../syntax/names.js';
import { blockElement, words, wordsElement } from './element.js';
import { marks, merged, sideBySide } from './variants.js';

interface PlacedSteps {
  version: Version;
  steps: VersionSteps;
}

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
  replaceMentions(block, shared, native, reading);
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
  return blockElement('div', { className: ['retare-method'] }, [...children, ...cautions(all, native)]);
}

function contentOf(block: ContainerDirective): RootContent[] {
  return block.children.filter((child) => !(child.type === 'paragraph' && child.data?.directiveLabel === true));
}

/** Annotations in a block give way to their readings; one that could not be read to its words. */
function replaceMentions(
  block: ContainerDirective,
  all: readonly PlacedSteps[],
  native: string,
  reading: RecipeReading,
): void {
  const readings = mentionReadings(all, native, reading);
  visit(block, 'textDirective', (node: TextDirective, index, parent) => {
    if (parent === undefined || index === undefined || !isAnnotation(node.type, node.name)) return;
    const content = readings.get(node) ?? node.children;
    parent.children.splice(index, 1, ...content);
    return index + content.length;
  });
}

/** What each annotation of a method reads in every kitchen, side by side. */
export function mentionReadings(
  all: readonly PlacedSteps[],
  native: string,
  reading: RecipeReading,
): Map<TextDirective, PhrasingContent[]> {
  const byNode = new Map<TextDirective, PhrasingContent[]>();
  for (const { mention } of all[0]?.steps.mentions ?? []) {
    const node = reading.mentions.get(mention.key)?.node;
    if (node === undefined) continue;
    const readings = all.flatMap(({ version, steps }) => {
      const own = steps.mentions.find((each) => each.mention === mention);
      return own === undefined ? [] : [{ kitchen: version.kitchen.id, ...mentionWords(own, version, node) }];
    });
    byNode.set(node, sideBySide(merged(readings), native));
  }
  return byNode;
}

function mentionWords(
  { mention, text, hold }: VersionMention,
  version: Version,
  node: TextDirective,
): { same: string; children: () => PhrasingContent[] } {
  const own = version.kitchen.id === version.recipe.kitchen;
  const held = hold !== '' && !own ? ` (${hold})` : '';
  const same = `${text}${held}`;
  // What reads as written keeps the author's markup.
  return {
    same,
    children: () => (text === mention.text && held === '' ? structuredClone(node.children) : [words(same)]),
  };
}

/** The author's own method for a kitchen, word for word. */
function authoredMethod(steps: VersionSteps, version: Version, native: string, reading: RecipeReading): RootContent {
  const method = steps.steps.authored.find(({ kitchen }) => kitchen === version.kitchen.id);
  const block = method === undefined ? undefined : reading.blocks.get(method.key);
  if (block === undefined) return blockElement('div', marks([version.kitchen.id], native), []);
  replaceMentions(block, [{ version, steps }], native, reading);
  return blockElement('div', marks([version.kitchen.id], native), contentOf(block));
}

function cautions(all: readonly PlacedSteps[], native: string): RootContent[] {
  const told = all.flatMap(({ version, steps }) => {
    const core = steps.mentions.some(({ mention }) => mention.kind === 'core');
    const caution = version.cautions.find(({ kind }) => kind === 'core-temperature');
    if (!core || caution === undefined) return [];
    const text = cautionWords(caution);
    return [{ kitchen: version.kitchen.id, same: text, children: () => [words(text)] }];
  });
  if (told.length === 0) return [];
  return [wordsElement('p', { className: ['retare-caution'] }, sideBySide(merged(told), native))];
}
