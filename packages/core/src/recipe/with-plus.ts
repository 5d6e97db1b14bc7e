import type { Line } from './recipe.js';

/** Lines with the further ones that they count within their words. */
export function withPlus(lines: readonly Line[]): Line[] {
  return lines.flatMap((line) => (line.plus === undefined ? [line] : [line, ...withPlus([line.plus])]));
}
