/**
 * The word among `words` that `written` is a slip of: two letters away at most, hyphens and case aside; else undefined.
 *
 * Of a word of two letters another letter makes another word: `cl` is no slip of `ml`, though `usa` is one of `us`.
 */
export function near(written: string, words: readonly string[]): string | undefined {
  // A value of many letters is no slip of a word.
  if (written.length > 40) return undefined;
  const slip = plain(written);
  return words
    .map((word) => ({ word, off: distance(slip, plain(word)) }))
    .filter(
      ({ word, off }) =>
        off <= 2 && off * 2 <= word.length && (off === 0 || word.length > 2 || word.length !== slip.length),
    )
    .sort((one, other) => one.off - other.off)[0]?.word;
}

const plain = (word: string): string => word.toLowerCase().replaceAll('_', '-').replaceAll(' ', '-');

/** Levenshtein distance, row by row. */
function distance(from: string, to: string): number {
  let above = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (const [row, letter] of [...from].entries()) {
    const current = [row + 1];
    for (const [column, other] of [...to].entries()) {
      const changed = (above[column] ?? 0) + (letter === other ? 0 : 1);
      current.push(Math.min(changed, (above[column + 1] ?? 0) + 1, (current[column] ?? 0) + 1));
    }
    above = current;
  }
  return above.at(-1) ?? 0;
}
