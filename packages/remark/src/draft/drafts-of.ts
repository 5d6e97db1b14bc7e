import type { Reauthored, Setting } from '@retare/core';
import type { ContainerDirective } from 'mdast-util-directive';
import type { RecipeReading } from '../read/reading.js';
import { draftIngredients } from './draft-ingredients.js';
import { draftMethod, sharedLines } from './draft-method.js';

/** A block of a version, ready to be printed. */
export interface Draft {
  node: ContainerDirective;
  /** The native block that it is a version of. */
  native: ContainerDirective;
  /** Versions of it that the post has already, in its order. */
  authored: { kitchen: string; node: ContainerDirective }[];
}

/**
 * The blocks of a re-authored version: one `ingredients` block for each part, and a `method` block wherever amounts, pans or temperatures
 * differ. The tree is not changed.
 *
 * @throws {RangeError} If the native kitchen is not in the setting.
 */
export function draftsOf({ version }: Reauthored, reading: RecipeReading, setting: Setting): Draft[] {
  const native = setting.kitchens.get(reading.recipe.kitchen);
  if (native === undefined) throw new RangeError(`There is no kitchen \`${reading.recipe.kitchen}\`.`);
  const context = { version, reading, lineOf: sharedLines(version, native, setting.foods) };
  const drafts = [
    ...version.parts.map((part) => ({ pair: part.part, node: draftIngredients(part, version, reading) })),
    ...version.steps.map((steps) => ({ pair: steps.steps, node: draftMethod(steps, context) })),
  ];
  return drafts.flatMap(({ pair, node }) => {
    const own = reading.blocks.get(pair.native.key);
    if (node === null || own === undefined) return [];
    const authored = pair.authored.flatMap(({ key, kitchen }) => {
      const block = reading.blocks.get(key);
      return block === undefined ? [] : [{ kitchen, node: block }];
    });
    return [{ node, native: own, authored }];
  });
}
