import type { Caution, Kitchen, Version } from '@retare/core';
import type { Nodes, Root, RootContent } from 'mdast';
import { EXIT, SKIP, visit } from 'unist-util-visit';
import { cautionWords, cupWords, standingWords } from '../page/words.js';
import type { RecipeReading } from '../read/reading.js';
import { isAnnotation } from '../syntax/names.js';
import {
  annotationReadings,
  type PlacedSteps,
  type Readings,
  replaceAnnotations,
  wordsInstead,
} from './annotation-readings.js';
import { chooser } from './chooser.js';
import { blockElement, words, wordsElement } from './element.js';
import { placeIngredients } from './place-ingredients.js';
import { placeMethod } from './place-method.js';
import { marks, merged, sideBySide } from './variants.js';

/** What takes the place of a node that the author wrote; nothing for one that falls away. */
export type Placements = Map<Nodes, RootContent[]>;

/**
 * Works out what takes the place of a recipe's annotations.
 *
 * @param tree The post. Nothing in it changes but the insides of our own blocks.
 * @param versions One for each kitchen that is served, the native one among them.
 */
export function placementsOf(tree: Root, reading: RecipeReading, versions: readonly Version[]): Placements {
  const native = reading.recipe.kitchen;
  const placements: Placements = new Map();
  const replace = (key: string, content: RootContent[]): void => {
    const block = reading.blocks.get(key);
    if (block !== undefined) placements.set(block, content);
  };
  const prose = proseReadings(versions, native, reading);
  placeProse(tree, prose, reading, placements);
  for (const block of reading.stray) {
    replaceAnnotations(block, new Map(), reading.source);
    placements.set(block, [blockElement('div', {}, block.children)]);
  }
  reading.recipe.parts.forEach((part, index) => {
    replace(
      part.native.key,
      [placeIngredients(index, versions, native, reading, prose)].filter((placed) => placed !== null),
    );
    for (const { key } of part.authored) replace(key, []);
  });
  reading.recipe.steps.forEach((steps, index) => {
    replace(
      steps.native.key,
      [placeMethod(index, versions, native, reading)].filter((placed) => placed !== null),
    );
    for (const { key } of steps.authored) replace(key, []);
  });
  placeChooser(tree, reading, versions, native, placements);
  return placements;
}

/** Puts placements into the tree. */
export function placeInTree(tree: Root, placements: Placements): void {
  visit(tree, (node, index, parent) => {
    const content = placements.get(node);
    if (content === undefined || parent === undefined || index === undefined) return;
    parent.children.splice(index, 1, ...content);
    return index + content.length;
  });
}

/** Readings of the annotations outside methods. */
function proseReadings(versions: readonly Version[], native: string, reading: RecipeReading): Readings {
  const all = versions.flatMap((version): PlacedSteps[] => {
    const steps = version.steps.find(({ steps: each }) => each.native.key === 'prose');
    return steps === undefined ? [] : [{ version, steps }];
  });
  return annotationReadings(all, native, reading);
}

/** Annotations outside our blocks; those inside are placed with their block. */
function placeProse(tree: Root, readings: Readings, reading: RecipeReading, placements: Placements): void {
  const apart = new Set<Nodes>([...reading.blocks.values(), ...reading.stray]);
  visit(tree, (node) => {
    if (apart.has(node)) return SKIP;
    if (node.type !== 'textDirective' || !isAnnotation(node.type, node.name)) return;
    placements.set(node, readings.get(node) ?? wordsInstead(node, reading.source));
    return SKIP;
  });
}

/** At its markers, or before the first block; standing, the way of filling cups and general cautions go with it. */
function placeChooser(
  tree: Root,
  reading: RecipeReading,
  versions: readonly Version[],
  native: string,
  placements: Placements,
): void {
  const heading =
    reading.recipe.preserve === true ? [] : [...chooserFor(versions, native, false), ...standing(versions, native)];
  const before: RootContent[] = [...heading, ...cautions(versions)];
  const [marker, ...others] = reading.markers;
  if (marker !== undefined) placements.set(marker, before);
  else {
    const first = firstBlock(tree, reading, placements);
    if (first !== undefined) placements.set(first, [...before, ...(placements.get(first) ?? [])]);
  }
  for (const other of others)
    placements.set(other, reading.recipe.preserve === true ? [] : chooserFor(versions, native, true));
}

/** The first block that stays on the page, in the order of the post. */
function firstBlock(tree: Root, reading: RecipeReading, placements: Placements): Nodes | undefined {
  const blocks = new Set<Nodes>(reading.blocks.values());
  let first: Nodes | undefined;
  visit(tree, (node) => {
    if (!blocks.has(node) || placements.get(node)?.length === 0) return;
    first = node;
    return EXIT;
  });
  return first;
}

/** Nothing to choose, no control. */
function chooserFor(versions: readonly Version[], native: string, again: boolean): RootContent[] {
  const kitchens: Kitchen[] = versions.map(({ kitchen }) => kitchen);
  return kitchens.length < 2 ? [] : [chooser(kitchens, native, again)];
}

function standing(versions: readonly Version[], native: string): RootContent[] {
  const lines = versions.flatMap((version) => {
    const text = [standingWords(version), cupWords(version.kitchen)].filter((each) => each !== null).join(' ');
    return text === '' ? [] : [{ kitchen: version.kitchen.id, same: text, children: () => [words(text)] }];
  });
  if (lines.length === 0) return [];
  const variants = merged(lines);
  // One kitchen's words alone still have to hide from the others.
  const only = variants.length === 1 && lines.length < versions.length;
  const first = variants[0];
  if (only && first !== undefined) {
    const { dataRetare, className = [] } = marks(first.kitchens, native);
    return [wordsElement('p', { dataRetare, className: ['retare-standing', ...className] }, first.children)];
  }
  return [wordsElement('p', { className: ['retare-standing'] }, sideBySide(variants, native))];
}

function cautions(versions: readonly Version[]): RootContent[] {
  const kinds: Caution['kind'][] = ['preserve', 'cure', 'raw-egg'];
  return kinds.flatMap((kind) => {
    const caution = versions.flatMap((version) => version.cautions).find((each) => each.kind === kind);
    return caution === undefined
      ? []
      : [wordsElement('p', { className: ['retare-caution'] }, [words(cautionWords(caution))])];
  });
}
