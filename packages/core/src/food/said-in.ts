/**
 * Which of several forms or sizes a line's words say, as whole words: `unsifted` does not say `sifted`. Of two, the one of more
 * words (`loosely packed`, `extra large`); `in cubes` says `cubed`.
 *
 * @param word What is looked for in an item, null where it is the usual one.
 */
export function saidIn<Item>(text: string, items: readonly Item[], word: (item: Item) => string | null): Item | null {
  if (items.length === 0 || text === '') return null;
  const said = ` ${wordsOf(text).join(' ')} `;
  let best: { item: Item; words: number } | null = null;
  for (const item of items) {
    const wanted = wordsOf(word(item) ?? '');
    if (wanted.length > (best?.words ?? 0) && said.includes(` ${wanted.join(' ')} `))
      best = { item, words: wanted.length };
  }
  return best?.item ?? null;
}

function wordsOf(text: string): string[] {
  return (text.toLowerCase().match(/[\p{L}\p{M}]+/gu) ?? []).map((word) => word.replace(/e[ds]$/, 'e'));
}
