/** Words as a sentence lists them: `a`, `a or b`, `a, b and c`; nothing for none. */
export function listed(words: readonly string[], joins: 'and' | 'or'): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${joins} ${words.at(-1)}`;
}

/** What may be written, in backticks: `` `a`, `b` or `c` ``. */
export function oneOf(words: readonly string[]): string {
  return listed(
    words.map((word) => `\`${word}\``),
    'or',
  );
}
