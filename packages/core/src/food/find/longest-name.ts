import type { Food } from '../food.js';
import { foodNamed } from './name-index.js';
import { changesNothing, isTelling } from './plain-words.js';
import type { Named, PhraseWord, Speech } from './speech.js';

/** Words that join two others that change nothing: `ripe but firm`. */
const joints = new Set(['and', 'but', 'yet']);

/** Words of a phrase: a stretch of them, without one inside. */
interface Stretch {
  from: number;
  to: number;
  without: number;
}

/**
 * The longest name among the words: plain words are taken off the ends, and one of them from inside (`whole raw chicken`), the
 * fewest first. What is left must be a name to the last word.
 */
export function longestName(words: readonly PhraseWord[], speech: Speech): Named | null {
  // What no name uses and nobody may leave out makes every further look-up vain.
  if (words.some(({ text, known, plain }) => !known && !plain && !joints.has(text))) return null;
  const refused: Stretch[] = [];
  const front = plainAhead(words);
  const back = plainBehind(words);
  const unknown = unknownBefore(words);
  // Every word that no name has must go.
  for (let left = unknown.at(-1) ?? 0; left <= front + back + 1 && left < words.length; left += 1) {
    for (const stretch of stretchesWithout(words, left, front, back)) {
      // A word that no name has makes the look-up vain.
      const { from, to, without } = stretch;
      const vain = (unknown[to] ?? 0) - (unknown[from] ?? 0) - (words[without]?.known === false ? 1 : 0);
      if (vain > 0) continue;
      const found = asMeasured(words, stretch, speech);
      if (found === 'refused') refused.push(stretch);
      else if (found !== null && refused.every((each) => isSameButHandled(words, each, stretch))) {
        return { id: found, start: words[from]?.start ?? 0, end: words[to - 1]?.end ?? 0 };
      }
    }
  }
  return null;
}

/** The stretches of all but so many words; those that keep what tells most come first: `whole chicken` of `whole raw chicken`. */
function stretchesWithout(words: readonly PhraseWord[], left: number, front: number, back: number): Stretch[] {
  const stretches = [...withoutEnds(words, left, front, back), ...withoutInner(words, left, front, back)];
  if (stretches.length < 2 || !words.some(({ text }) => isTelling(text))) return stretches;
  const tellingLeft = ({ from, to, without }: Stretch): number =>
    words.filter(({ text }, at) => (at < from || at >= to || at === without) && isTelling(text)).length;
  return stretches
    .map((stretch) => ({ stretch, told: tellingLeft(stretch) }))
    .sort((one, other) => one.told - other.told)
    .map(({ stretch }) => stretch);
}

/** The stretches that are left when so many words are taken off the ends. */
function withoutEnds(words: readonly PhraseWord[], left: number, front: number, back: number): Stretch[] {
  const stretches: Stretch[] = [];
  for (let from = Math.max(0, left - back); from <= Math.min(left, front); from += 1) {
    const to = words.length - left + from;
    if (from < to) stretches.push({ from, to, without: -1 });
  }
  return stretches;
}

/** Those without one more plain word inside: `fresh` leaves the end first, so that `fresh whole milk` is whole milk. */
function withoutInner(words: readonly PhraseWord[], left: number, front: number, back: number): Stretch[] {
  if (left === 0) return [];
  return withoutEnds(words, left - 1, front, back).flatMap(({ from, to }) => {
    const stretches: Stretch[] = [];
    for (let inner = from + 1; inner < to - 1; inner += 1) {
      if (words[inner]?.plain) stretches.push({ from, to, without: inner });
    }
    return stretches;
  });
}

/**
 * Where a longer name was refused, a shorter one inside it may only say less of what was done to the food: `diced tomatoes` that are
 * fresh are tomatoes, `baby corn` that is fresh is no corn.
 */
function isSameButHandled(words: readonly PhraseWord[], refused: Stretch, { from, to, without }: Stretch): boolean {
  return words.every(({ text }, at) => {
    const isIn = at >= refused.from && at < refused.to && at !== refused.without;
    const isLeft = at < from || at >= to || at === without;
    return !isIn || !isLeft || text.endsWith('ed') || text === 'whole' || text === 'fresh';
  });
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
  while (at < words.length && (words[at]?.plain || joints.has(words[at]?.text ?? ''))) at += 1;
  return at;
}

function plainBehind(words: readonly PhraseWord[]): number {
  let at = 0;
  while (at < words.length && words[words.length - 1 - at]?.plain) at += 1;
  return at;
}

/** What a stretch names: with a word that the measure adds, else alone. `refused`: a food that the line does not fit. */
function asMeasured(words: readonly PhraseWord[], stretch: Stretch, speech: Speech): string | null {
  const key = keyOf(words, stretch);
  for (const { before, after, role } of speech.measured.affixes) {
    const food = named(before + key + after, speech);
    if (food === null || (role !== undefined && food.role !== role)) continue;
    if (fits(food, words, stretch, speech)) return food.id;
  }
  const food = speech.measured.onlyAffixed ? null : named(key, speech);
  if (food === null) return null;
  return fits(food, words, stretch, speech) && !speech.measured.refuses(food) ? food.id : 'refused';
}

function named(key: string, { foods, index, kitchen, ownOnly }: Speech): Food | null {
  return foods.get(foodNamed(index, key, kitchen, ownOnly) ?? '') ?? null;
}

/** Whether no word that was left out makes another food of it. */
function fits(food: Food, words: readonly PhraseWord[], stretch: Stretch, speech: Speech): boolean {
  const { from, to, without } = stretch;
  if (from === 0 && to === words.length && without < 0) return true;
  const said = new Set(words.map(({ text }) => text));
  return words.every(
    ({ text }, at) =>
      (at >= from && at < to && at !== without) || changesNothing(text, food, said, speech.measured.unmeasured),
  );
}

function keyOf(words: readonly PhraseWord[], { from, to, without }: Stretch): string {
  let key = words[from]?.text ?? '';
  for (let at = from + 1; at < to; at += 1) if (at !== without) key += ` ${words[at]?.text}`;
  return key;
}
