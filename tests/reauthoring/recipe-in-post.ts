import { parsePost } from '@retare/check';
import type { Recipe } from '@retare/core';
import { builtInLarder, defaultSettings } from '@retare/larder';
import { matterOf, readPost } from 'remark-retare';
import { VFile } from 'vfile';

/** The recipe of a post, read as the check reads it. */
export function recipeInPost(text: string): Recipe {
  const file = new VFile({ value: text, path: 'post.md' });
  const tree = parsePost(file);
  const reading = readPost(tree, file, matterOf(tree, file), builtInLarder(), defaultSettings);
  if (reading === null) throw new RangeError('The post has no annotation.');
  return reading.recipe;
}
