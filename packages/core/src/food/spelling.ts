/** Words that are spelt in many ways. */
const spellings: readonly (readonly string[])[] = [
  ['chili', 'chile', 'chilli'],
  ['chilies', 'chiles', 'chillies', 'chilis', 'chillis'],
  ['yogurt', 'yoghurt'],
  ['flavored', 'flavoured'],
  ['coloring', 'colouring'],
  ['vegetable', 'veggie'],
  ['wholemeal', 'wholewheat'],
  ['dry', 'dried'],
];

const others: ReadonlyMap<string, readonly string[]> = new Map(
  spellings.flatMap((group) => group.map((word) => [word, group.filter((other) => other !== word)])),
);

/** Other spellings of a word; none for most. */
export function otherSpellings(word: string): readonly string[] {
  return others.get(word) ?? [];
}

/** Whether two names are one but for spelling, capitals and the order of their words: `Active Dry Yeast` and `dried active yeast`. */
export function areSpeltAlike(one: string, other: string): boolean {
  const words = (name: string): string =>
    name
      .trim()
      .toLowerCase()
      .split(/\s+/u)
      .map((word) => [word, ...otherSpellings(word)].sort()[0])
      .sort()
      .join(' ');
  return words(one) === words(other);
}
