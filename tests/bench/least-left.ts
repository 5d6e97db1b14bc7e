/**
 * Grams left of the packs bought where an amount may be bent up or down to use them up: nothing where packs come to it, else what is over
 * at its upper end.
 *
 * @param need Grams.
 * @param share How far the amount may be bent, as a fraction.
 * @param sizes Grams of the packs that are sold.
 */
export function leastLeft(need: number, share: number, sizes: readonly number[]): number {
  const total = leastTotal(
    need * (1 - share),
    [...sizes].sort((a, b) => b - a),
  );
  return Math.max(0, total - need * (1 + share));
}

/** The least that whole packs come to that hold as much as is needed. */
function leastTotal(need: number, sizes: readonly number[], total = 0, at = 0): number {
  const size = sizes[at];
  if (total >= need) return total;
  if (size === undefined) return Number.POSITIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  for (let count = 0; count <= Math.ceil((need - total) / size); count++)
    least = Math.min(least, leastTotal(need, sizes, total + count * size, at + 1));
  return least;
}
