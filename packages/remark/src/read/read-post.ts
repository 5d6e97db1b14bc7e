import type { Larder, Settings } from '@retare/larder';
import type { Root } from 'mdast';
import type { VFile } from 'vfile';
import { restoreForeign } from '../syntax/restore.js';
import { readFrontMatter } from './front-matter.js';
import { brokenMatter, placedMatterFaults } from './matter-faults.js';
import { readRecipe } from './read-recipe.js';
import type { RecipeReading } from './reading.js';
import { textOf } from './text-of.js';
import { dissolveUnclosed } from './unclosed.js';
import { unlistedAnchor } from './unlisted-anchor.js';

/**
 * A post as the page and the check both read it. What a directives syntax took for a directive and is none is put back into the tree,
 * and blocks that are never closed are taken apart.
 *
 * @param matter Its front matter, already parsed; undefined for one that is no YAML.
 * @returns Null where the post has no annotation of ours and nothing under `retare` that cannot be understood.
 */
export function readPost(
  tree: Root,
  file: VFile,
  matter: unknown,
  larder: Larder,
  settings: Settings,
): RecipeReading | null {
  const { frontMatter, faults } = readFrontMatter(matter, [...larder.kitchens.keys()]);
  const reading = readRecipe(tree, {
    foods: larder.foods,
    kitchens: larder.kitchens,
    native: settings.kitchen,
    frontMatter,
    source: textOf(file),
    faults: [
      ...(matter === undefined ? brokenMatter(tree, file) : placedMatterFaults(faults, tree, file)),
      ...restoreForeign(tree, file),
      ...dissolveUnclosed(tree, file),
    ],
  });
  const anchor = frontMatter.anchor === null ? null : unlistedAnchor(frontMatter.anchor, reading);
  if (anchor !== null)
    reading.faults.unshift(...placedMatterFaults([{ key: 'anchor', on: 'value', ...anchor }], tree, file));
  return reading.blocks.size + reading.mentions.size + reading.markers.length + reading.faults.length === 0 &&
    reading.stray.length === 0
    ? null
    : reading;
}
