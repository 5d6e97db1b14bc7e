import type { Larder, Settings } from '@retare/larder';
import type { Root } from 'mdast';
import type { VFile } from 'vfile';
import { readFrontMatter } from './front-matter.js';
import { readRecipe } from './read-recipe.js';
import type { RecipeReading } from './reading.js';
import { dissolveUnclosed } from './unclosed.js';

/**
 * A post as the page and the check both read it.
 *
 * @param matter Its front matter, already parsed.
 * @returns Null where the post has no annotation of ours.
 */
export function readPost(
  tree: Root,
  file: VFile,
  matter: unknown,
  larder: Larder,
  settings: Settings,
): RecipeReading | null {
  const { frontMatter } = readFrontMatter(matter, [...larder.kitchens.keys()]);
  const faults = dissolveUnclosed(tree, file);
  const context = { foods: larder.foods, kitchens: larder.kitchens, native: settings.kitchen, frontMatter };
  const reading = readRecipe(tree, context) ?? (faults.length > 0 ? nothingBut(settings.kitchen) : null);
  reading?.faults.unshift(...faults);
  return reading;
}

/** A post in which every block was left open. */
function nothingBut(kitchen: string): RecipeReading {
  const recipe = { kitchen, makes: null, anchor: null, preserve: null, parts: [], steps: [] };
  return { recipe, faults: [], lines: new Map(), mentions: new Map(), blocks: new Map(), markers: [] };
}
