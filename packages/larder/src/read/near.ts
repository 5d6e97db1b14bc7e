/** The word among `words` that `written` is a slip of: two letters away at most, hyphens and case aside; else undefined. */
export function near(written: string, words: readonly string[]): string | undefined {
  // A value of thousands of letters is no slip of a word.
  if (written.length > 40) return undefined;
  const ranked = words
    .map((word) => ({ word, distance: distance(plain(written), plain(word)) }))
    .filter(({ word, distance }) => distance <= 2 && distance < word.length / 2)
    .sort((one, other) => one.distance - other.distance);
  return ranked[0]?.word;
}

const plain = (word: string): string => word.toLowerCase().replaceAll('_', '-').replaceAll(' ', '-');

/** Levenshtein distance, row by row. */
function distance(from: string, to: string): number {
  let above = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (const [row, letter] of [...from].entries()) {
    const current = [row + 1];
    for (const [column, other] of [...to].entries()) {
      const swapped = (above[column] ?? 0) + (letter === other ? 0 : 1);
      current.push(Math.min(swapped, (above[column + 1] ?? 0) + 1, (current[column] ?? 0) + 1));
    }
    above = current;
  }
  return above.at(-1) ?? 0;
}
