import { otherSpellings } from '../spelling.js';
import { meantBy } from './misspelt.js';
import type { Named, PhraseWord, Speech } from './speech.js';

/** A phrase with more words that no name has is a sentence. */
const mostSlips = 2;

/** What words mean as they are spelt. */
type Meant = (words: readonly PhraseWord[], speech: Speech) => Named | null;

/** The words as names part them, with slips of the pen put right, then in another spelling; null where there is neither. */
export function respelt(words: readonly PhraseWord[], speech: Speech, meant: Meant): Named | null {
  if (words.filter(({ known, plain }) => !known && !plain).length > mostSlips) return null;
  const corrected: PhraseWord[] = [];
  let changed = false;
  for (const word of words) {
    const right = word.known || word.plain ? null : rightFor(word, speech);
    if (right === null) corrected.push(word);
    else corrected.push(...right);
    changed ||= right !== null;
  }
  return (
    (changed ? meant(corrected, speech) : null) ?? joined(corrected, speech, meant) ?? spelled(corrected, speech, meant)
  );
}

/** A word that no name has: two in one (`bellpepper`), or one with a slip. */
function rightFor(word: PhraseWord, { index }: Speech): PhraseWord[] | null {
  const parted = index.parted(word.text);
  if (parted !== null) return parted.map((text) => ({ ...word, text, known: true, plain: false, capital: false }));
  const right = meantBy(word.text, index.slips());
  return right === null ? null : [{ ...word, text: right, known: true, plain: false, capital: false }];
}

/** Two words that names write as one: `butter milk`. */
function joined(words: readonly PhraseWord[], speech: Speech, meant: Meant): Named | null {
  for (let at = 1; at < words.length; at += 1) {
    const [one, other] = [words[at - 1], words[at]];
    if (one === undefined || other === undefined || one.plain || other.plain) continue;
    if (!speech.index.knows(one.text + other.text)) continue;
    const both = {
      text: one.text + other.text,
      start: one.start,
      end: other.end,
      known: true,
      plain: false,
      capital: false,
    };
    // Two words may mean another thing than one: `corn flour` is no `cornflour` of another kitchen.
    const found = meant([...words.slice(0, at - 1), both, ...words.slice(at + 1)], { ...speech, ownOnly: true });
    if (found !== null) return found;
  }
  return null;
}

function spelled(words: readonly PhraseWord[], speech: Speech, meant: Meant): Named | null {
  for (const [at, word] of words.entries()) {
    for (const other of otherSpellings(word.text)) {
      const text = { ...word, text: other, known: speech.index.knows(other), plain: false };
      const found = meant([...words.slice(0, at), text, ...words.slice(at + 1)], speech);
      if (found !== null) return found;
    }
  }
  return null;
}
