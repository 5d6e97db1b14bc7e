/** Words by which curing salts are sold and written. Common practice, no source. */
const words: ReadonlySet<string> = new Set(
  'cure cures curing nitrite nitrites nitrate nitrates saltpetre saltpeter prague'.split(' '),
);
const denials: ReadonlySet<string> = new Set(['no', 'without', 'free']);

/**
 * Whether words that no food is known for, or that name salt, speak of a cure: `quick cure`, `salt with nitrite`. `Cured` and
 * `nitrate-free` do not.
 */
export function speaksOfCure(text: string): boolean {
  const said = text.toLowerCase().split(/[^\p{L}]+/u);
  return said.some(
    (word, at) =>
      (words.has(word) || word.endsWith('cure')) &&
      !denials.has(said[at - 1] ?? '') &&
      !denials.has(said[at + 1] ?? ''),
  );
}
