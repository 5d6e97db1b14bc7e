/** Shorter words are too close to each other: `rub` is no slip of `rib`. */
const shortest = 6;
const shortestSlip = 5;

/** Known words by what is left of them when one letter is missing: two words that are a letter apart share an entry. */
export type SlipIndex = ReadonlyMap<string, readonly string[]>;

/** The index of slips of the words that are long enough for one. */
export function slipIndex(words: Iterable<string>): SlipIndex {
  const index = new Map<string, string[]>();
  for (const word of words) {
    if (word.length < shortest) continue;
    for (const rest of [word, ...withoutOne(word)]) {
      const entry = index.get(rest);
      if (entry === undefined) index.set(rest, [word]);
      else entry.push(word);
    }
  }
  return index;
}

/**
 * The one known word that is a single letter away from a word nobody knows: `jalepeno` for `jalapeno`.
 *
 * @param word A word that is not known itself.
 * @returns Null for a short word, and where two words are as near. The first letter must be right.
 */
export function meantBy(word: string, slips: SlipIndex): string | null {
  if (word.length < shortestSlip) return null;
  let meant: string | null = null;
  for (const rest of [word, ...withoutOne(word)]) {
    for (const other of slips.get(rest) ?? []) {
      if (other === meant || !isOneSlip(word, other) || isQuality(word, other)) continue;
      // A word and its plural are one word here.
      if (meant !== null && !sameWord(meant, other)) return null;
      meant ??= other;
    }
  }
  return meant;
}

/** A word less each of its letters in turn, but for the first. */
function withoutOne(word: string): string[] {
  const rests: string[] = [];
  for (let at = 1; at < word.length; at += 1) rests.push(word.slice(0, at) + word.slice(at + 1));
  return rests;
}

/** Whether one letter more, less or other, or two neighbours in the wrong order, make the one the other. */
function isOneSlip(one: string, other: string): boolean {
  if (one[0] !== other[0]) return false;
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  if (one.length !== other.length) {
    const [long, short] = one.length > other.length ? [one, other] : [other, one];
    return long.length === short.length + 1 && long.slice(at + 1) === short.slice(at);
  }
  if (one.slice(at + 1) === other.slice(at + 1)) return true;
  const isSwapped = one[at] === other[at + 1] && one[at + 1] === other[at];
  return isSwapped && one.slice(at + 2) === other.slice(at + 2);
}

/** `Cheesy` and `smokey` say how a thing is: no slips of `cheese` and `smoked`. */
const isQuality = (word: string, other: string): boolean => word.endsWith('y') && !other.endsWith('y');

const sameWord = (one: string, other: string): boolean => one === `${other}s` || other === `${one}s`;
