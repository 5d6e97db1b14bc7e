import type { Line, Recipe } from './recipe.js';

/** All lines that were written for a kitchen, native or re-authored, in every part. */
export function linesFor({ parts }: Pick<Recipe, 'parts'>, kitchen: string): Line[] {
  const blocks = parts.flatMap(({ native, authored }) => [native, ...authored]);
  return blocks.filter((block) => block.kitchen === kitchen).flatMap(({ lines }) => lines);
}
