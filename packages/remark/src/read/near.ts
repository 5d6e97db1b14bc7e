/** The word among `words` that `written` is a slip of: two letters away at most, and case aside; else undefined. */
export function near(written: string, words: readonly string[]): string | undefined {
  const slip = written.toLowerCase();
  // A value of many letters is no slip of a word.
  if (slip.length > 40) return undefined;
  return words
    .map((word) => ({ word, off: distance(slip, word.toLowerCase()) }))
    .filter(({ word, off }) => off <= 2 && off * 2 < word.length + 1)
    .sort((one, other) => one.off - other.off)[0]?.word;
}

/** How many letters have to be put in, taken out or changed. */
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
