import type { Food } from './food.js';
import { foodNamed } from './name-index.js';
import { changesNothing } from './plain-words.js';
import type { Named, PhraseWord, Speech } from './speech.js';

/**
 * The longest name among the words: plain words are taken off the ends, and one of them from inside (`whole raw chicken`), the
 * fewest first. What is left must be a name to the last word.
 */
export function longestName(words: readonly PhraseWord[], speech: Speech): Named | null {
  // What no name uses and nobody may leave out makes every further look-up vain.
  if (words.some(({ known, plain }) => !known && !plain)) return null;
  const whole = nameAt(words, 0, words.length, speech);
  if (whole !== null) return whole;
  const front = plainAhead(words);
  const back = plainBehind(words);
  const unknown = unknownBefore(words);
  for (let dropped = 1; dropped <= front + back && dropped < words.length; dropped += 1) {
    for (let from = Math.max(0, dropped - back); from <= Math.min(dropped, front); from += 1) {
      const to = words.length - dropped + from;
      if ((unknown[to] ?? 0) - (unknown[from] ?? 0) > 1) continue;
      const found = nameAt(words, from, to, speech);
      if (found !== null) return found;
    }
  }
  return null;
}

/** How many of the words before each are in no name: more than one of them make a look-up vain. */
function unknownBefore(words: readonly PhraseWord[]): number[] {
  const before = [0];
  let count = 0;
  for (const { known } of words) {
    count += known ? 0 : 1;
    before.push(count);
  }
  return before;
}

/** `Peeled and crushed ginger`: the word that joins what was taken off is taken off too. */
function plainAhead(words: readonly PhraseWord[]): number {
  let at = 0;
  while (at < words.length && (words[at]?.plain || words[at]?.text === 'and')) at += 1;
  return at;
}

function plainBehind(words: readonly PhraseWord[]): number {
  let at = 0;
  while (at < words.length && words[words.length - 1 - at]?.plain) at += 1;
  return at;
}

/** The name that the words of a stretch make, all of them or all but a plain one inside. */
function nameAt(words: readonly PhraseWord[], from: number, to: number, speech: Speech): Named | null {
  const [first, last] = [words[from], words[to - 1]];
  if (first === undefined || last === undefined) return null;
  const named = (id: string | null): Named | null => (id === null ? null : { id, start: first.start, end: last.end });
  const found = asMeasured(words, { from, to, without: -1 }, speech);
  if (found !== null) return named(found);
  for (let inner = from + 1; inner < to - 1; inner += 1) {
    if (!words[inner]?.plain) continue;
    const id = asMeasured(words, { from, to, without: inner }, speech);
    if (id !== null) return named(id);
  }
  return null;
}

/** The words of a key: a stretch, without one of its words. */
interface Stretch {
  from: number;
  to: number;
  without: number;
}

/** What a stretch names: with a word that the measure adds, else alone. */
function asMeasured(words: readonly PhraseWord[], stretch: Stretch, speech: Speech): string | null {
  const key = keyOf(words, stretch);
  for (const { before, after, role } of speech.measured.affixes) {
    const food = believed(
      foodNamed(speech.index, before + key + after, speech.kitchen, speech.ownOnly),
      words,
      stretch,
      speech,
    );
    if (food !== null && (role === undefined || food.role === role)) return food.id;
  }
  const food = believed(foodNamed(speech.index, key, speech.kitchen, speech.ownOnly), words, stretch, speech);
  return food === null || speech.measured.refuses(food) ? null : food.id;
}

/** The food, unless a word that was left out makes another of it. */
function believed(id: string | null, words: readonly PhraseWord[], stretch: Stretch, speech: Speech): Food | null {
  const food = id === null ? undefined : speech.foods.get(id);
  if (food === undefined) return null;
  const { from, to, without } = stretch;
  if (from === 0 && to === words.length && without < 0) return food;
  const said = new Set(words.map(({ text }) => text));
  const fits = words.every(
    ({ text }, at) =>
      (at >= from && at < to && at !== without) || changesNothing(text, food, said, speech.measured.unmeasured),
  );
  return fits ? food : null;
}

function keyOf(words: readonly PhraseWord[], { from, to, without }: Stretch): string {
  let key = words[from]?.text ?? '';
  for (let at = from + 1; at < to; at += 1) if (at !== without) key += ` ${words[at]?.text}`;
  return key;
}
