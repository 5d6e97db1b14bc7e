const letters = 'abcdefghijklmnopqrstuvwxyz';
/** Shorter words are too close to each other: `rub` is no slip of `rib`. */
const shortest = 6;
const shortestSlip = 5;

/**
 * The one known word that is a single letter away from a word nobody knows: `jalepeno` for `jalapeno`.
 *
 * @returns Null for a known or short word, and where two words are as near. The first letter must be right.
 */
export function meantBy(word: string, known: ReadonlySet<string>): string | null {
  if (word.length < shortestSlip || known.has(word)) return null;
  let meant: string | null = null;
  for (const other of oneLetterAway(word)) {
    if (other === meant || other.length < shortest || !known.has(other)) continue;
    // A word and its plural are one word here.
    if (meant !== null && !sameWord(meant, other)) return null;
    meant ??= other;
  }
  return meant;
}

function* oneLetterAway(word: string): Generator<string> {
  for (let at = 1; at <= word.length; at += 1) {
    const [before, after] = [word.slice(0, at), word.slice(at)];
    if (after !== '') yield before + after.slice(1);
    if (after.length > 1) yield `${before}${after[1]}${after[0]}${after.slice(2)}`;
    for (const letter of letters) {
      yield before + letter + after;
      if (after !== '') yield before + letter + after.slice(1);
    }
  }
}

const sameWord = (one: string, other: string): boolean => one === `${other}s` || other === `${one}s`;
