import type { Version, VersionMention, VersionSteps } from '@retare/core';
import type { Nodes, PhrasingContent } from 'mdast';
import type { TextDirective } from 'mdast-util-directive';
import { visit } from 'unist-util-visit';
import type { RecipeReading } from '../read/reading.js';
import { isAnnotation } from '../syntax/names.js';
import { words } from './element.js';
import { copyOf } from './splice-words.js';
import { merged, sideBySide } from './variants.js';

/** A method in one version. */
export interface PlacedSteps {
  version: Version;
  steps: VersionSteps;
}

/** What each annotation reads in every kitchen, side by side. */
export type Readings = ReadonlyMap<TextDirective, PhrasingContent[]>;

/** The readings of one method's annotations. */
export function annotationReadings(all: readonly PlacedSteps[], native: string, reading: RecipeReading): Readings {
  const byNode = new Map<TextDirective, PhrasingContent[]>();
  const byKey = all.map(({ version }) => ({ version, mentions: mentionsOf(version) }));
  for (const { mention } of all[0]?.steps.mentions ?? []) {
    const node = reading.mentions.get(mention.key)?.node;
    if (node === undefined) continue;
    const readings = byKey.flatMap(({ version, mentions }) => {
      const own = mentions.get(mention.key);
      return own === undefined ? [] : [{ kitchen: version.kitchen.id, ...annotationWords(own, version, node) }];
    });
    byNode.set(node, sideBySide(merged(readings), native));
  }
  return byNode;
}

function annotationWords(
  own: VersionMention,
  version: Version,
  node: TextDirective,
): { same: string; children: () => PhrasingContent[] } {
  const same = readAs(own, version);
  // What reads as written keeps the author's markup.
  return { same, children: () => (same === own.mention.text ? copyOf(node.children) : [words(same)]) };
}

/** An annotation's words in a version, with the hold or rest that goes with a core temperature of another kitchen. */
export function readAs({ text, hold }: VersionMention, { kitchen, recipe }: Version): string {
  return hold === '' || kitchen.id === recipe.kitchen ? text : `${text} (${hold})`;
}

const known = new WeakMap<Version, ReadonlyMap<string, VersionMention>>();

/** A version's annotations by their keys. */
export function mentionsOf(version: Version): ReadonlyMap<string, VersionMention> {
  const found =
    known.get(version) ??
    new Map(version.steps.flatMap(({ mentions }) => mentions.map((each) => [each.mention.key, each] as const)));
  known.set(version, found);
  return found;
}

/** The words of an annotation that has no reading: its label, or all of it where it has none. */
export function wordsInstead(node: TextDirective, source: string): PhrasingContent[] {
  if (node.children.length > 0) return node.children;
  const start = node.position?.start.offset;
  return [words(start === undefined ? `:${node.name}` : source.slice(start, node.position?.end.offset))];
}

/** Annotations of ours in a tree give way to their readings; one that could not be read to its words. */
export function replaceAnnotations(tree: Nodes, readings: Readings, source: string): void {
  visit(tree, 'textDirective', (node: TextDirective, index, parent) => {
    if (parent === undefined || index === undefined || !isAnnotation(node.type, node.name)) return;
    const content = readings.get(node) ?? wordsInstead(node, source);
    parent.children.splice(index, 1, ...content);
    return readings.has(node) ? index + content.length : index;
  });
}
