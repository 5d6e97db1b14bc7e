import { passAbout } from '../quantity/about.js';
import { readQuantity } from '../quantity/quantity.js';
import { passAdjectives } from '../quantity/unit-behind-adjectives.js';
import { readUnit } from '../quantity/unit-reading.js';
import { readNumber } from '../token/number.js';
import type { Tokens } from '../token/token.js';
import { gestures, proportions, vagueWords } from './line-words.js';

/** What stands before the amount of a line. */
export interface LineLead {
  /** Index of the first word. */
  from: number;
  /** Index where an amount may begin. */
  amount: number;
  /** Index where the food begins if there is no amount. */
  food: number;
  /** A word for no number in particular, a gesture or a proportion stands there: no amount at the head. */
  vague: boolean;
  /** The juice or zest of a counted fruit. */
  part: boolean;
  /** `each` stands before the food: foods joined by commas are one phrase. */
  list: boolean;
}

const leadMarks = new Set([',', ':', ';', '.', '-', '–', '—', '•', '…', '·', '!', ']', ')', '|', '+']);
/** Labels before the food: `To serve: limes`. */
const leadLabels = new Set(['garnish', 'garnishes', 'topping', 'toppings', 'serve', 'serving', 'extras']);

/** Passes over a task box, words for optional, and the words before `of` in `juice of 1 lime`. */
export function passLead(tokens: Tokens, use: Uint8Array): LineLead {
  const from = passSigns(tokens, passBox(tokens, use), use);
  const labelled = passLabel(tokens, from, use);
  const part = passFruitPart(tokens, labelled, use);
  const amount = passFilling(tokens, part ?? labelled);
  const vague = vagueEnd(tokens, amount);
  const list = vague !== null && tokens.word(vague - 1) === 'each';
  return { from, amount, food: vague ?? amount, vague: vague !== null, part: part !== null, list };
}

const fillings = new Set(['scant', 'generous', 'heaped', 'heaping', 'rounded', 'level', 'good', 'full']);

/** `generous 1/4 cup`: how full the measure is, said before its number. */
function passFilling(tokens: Tokens, index: number): number {
  return fillings.has(tokens.word(index)) && tokens.at(index + 1).kind === 'number' ? index + 1 : index;
}

/** `[ ]` and `[x]` */
function passBox(tokens: Tokens, use: Uint8Array): number {
  if (tokens.word(0) !== '[') return 0;
  const close = tokens.word(1) === ']' ? 1 : tokens.word(1) === 'x' && tokens.word(2) === ']' ? 2 : -1;
  if (close < 0) return 0;
  use.fill(3, 0, close + 1);
  return close + 1;
}

function passSigns(tokens: Tokens, index: number, use: Uint8Array): number {
  let at = index;
  while (at < tokens.length && (use[at] === 2 || (tokens.at(at).kind === 'mark' && leadMarks.has(tokens.word(at))))) {
    if (use[at] === 0) use[at] = 3;
    at += 1;
  }
  return at;
}

/** `Garnish: parsley`, `For serving: rice` */
function passLabel(tokens: Tokens, index: number, use: Uint8Array): number {
  const stop = Math.min(tokens.length, index + 4);
  let known = false;
  for (let at = index; at < stop; at += 1) {
    if (leadLabels.has(tokens.word(at))) known = true;
    if (tokens.word(at) !== ':') continue;
    return known && at + 1 < tokens.length ? passSigns(tokens, at + 1, use) : index;
  }
  const joined = tokens.word(index) === 'plus' || tokens.word(index) === 'and';
  return joined ? index + 1 : index;
}

const fruitParts = new Set(['juice', 'juices', 'zest', 'rind', 'peel', 'zests', 'juiced']);

/** `Juice of`, `The zest and juice from`, `Lemon juice from`: where the number of the fruit begins, or `null`. */
function passFruitPart(tokens: Tokens, index: number, use: Uint8Array): number | null {
  const stop = Math.min(tokens.length, index + 8);
  let part = false;
  for (let at = index; at < stop; at += 1) {
    const { lower, kind } = tokens.at(at);
    if (kind === 'number' || (kind === 'mark' && lower !== '&' && lower !== '/' && lower !== ',' && lower !== '-'))
      return null;
    if (fruitParts.has(lower)) part = true;
    if ((lower === 'of' || lower === 'from') && part) {
      const before = tokens.word(at - 1);
      if (!fruitParts.has(before) || use[at] !== 0) return null;
      // Without a number it is the fruit all the same.
      return at + 1;
    }
    if (readNumber(tokens, at) !== null && lower !== 'a' && lower !== 'half') return null;
  }
  return null;
}

/** Behind a vague word, gesture or proportion: where the food begins; `null` where none stands. */
function vagueEnd(tokens: Tokens, index: number): number | null {
  const article =
    tokens.word(index) === 'a' || tokens.word(index) === 'an' || tokens.word(index) === 'the' ? index + 1 : index;
  const proportion = proportionEnd(tokens, index);
  if (proportion !== null) return proportion;
  // `Sprigs of mint` has no number.
  const several = readUnit(tokens, index, { afterNumber: false });
  if (several?.spelling === 'many' && tokens.word(several.next) === 'of') return several.next + 1;
  const gesture = gestureEnd(tokens, index, article);
  if (gesture !== null) return gesture;
  const word = tokens.word(passSmall(tokens, article));
  if (!vagueWords.has(word)) return null;
  return passVague(tokens, passSmall(tokens, article));
}

/** `Small amount of`, `a little bit` */
function passSmall(tokens: Tokens, index: number): number {
  const small =
    tokens.word(index) === 'small' ||
    tokens.word(index) === 'large' ||
    tokens.word(index) === 'good' ||
    tokens.word(index) === 'tiny';
  return small &&
    (tokens.word(index + 1) === 'amount' || tokens.word(index + 1) === 'bit' || tokens.word(index + 1) === 'lot')
    ? index + 1
    : index;
}

/** Passes over `few healthy sprinkles of`, `some number of pounds of`, `few dashes each -`. */
function passVague(tokens: Tokens, index: number): number {
  let end = index + 1;
  const stop = Math.min(tokens.length, index + 7);
  for (let at = index + 1; at < stop; at += 1) {
    const { lower, kind } = tokens.at(at);
    if (lower === 'of') end = at + 1;
    if (kind === 'mark' || kind === 'number') break;
  }
  if (end > index + 1) return end;
  const adjectives = passAdjectives(tokens, end);
  if (gestures.has(tokens.word(adjectives))) return adjectives + 1;
  const unit = readQuantity(tokens, adjectives);
  const each = unit?.bare ? unit.next : pluralUnitEnd(tokens, adjectives);
  return vagueWords.has(tokens.word(each)) || tokens.word(each) === 'each' ? each + 1 : each;
}

const pluralUnits = new Set([
  'dashes',
  'pinches',
  'cloves',
  'slices',
  'sprigs',
  'handfuls',
  'leaves',
  'cups',
  'sticks',
  'heads',
  'bunches',
  'drops',
  'stalks',
]);

function pluralUnitEnd(tokens: Tokens, index: number): number {
  return pluralUnits.has(tokens.word(index)) ? index + 1 : index;
}

/** `Squeeze of lime`, `a squirt or two of`, `2 splashes`, `trace olive oil` */
function gestureEnd(tokens: Tokens, index: number, article: number): number | null {
  const number = readNumber(tokens, passAbout(tokens, index));
  const at = passAdjectives(tokens, number?.next ?? article);
  // `1 thumb-sized piece` is a piece.
  const sized = tokens.word(at + 1) === '-' || tokens.word(at + 1).startsWith('size');
  // `Sprinkles, if desired` are a food.
  const food = tokens.word(at) === 'sprinkles' && number === null && tokens.at(at + 1).kind === 'mark';
  if (!gestures.has(tokens.word(at)) || sized || food) return null;
  if (tokens.word(at + 1) === 'or') {
    const upper = readNumber(tokens, at + 2);
    if (upper !== null) return upper.next;
  }
  // `Pat o' butter`
  return tokens.word(at + 1) === 'o' || tokens.word(at + 1) === "o'"
    ? at + (tokens.word(at + 2) === "'" || tokens.word(at + 2) === '’' ? 3 : 2)
    : at + 1;
}

/** `1/2 part`, `0–1 unit`, `2 parts` */
function proportionEnd(tokens: Tokens, index: number): number | null {
  const number = readQuantity(tokens, index);
  if (number === null || number.bare || number.unit !== null) return null;
  return proportions.has(tokens.word(number.next)) ? number.next + 1 : null;
}
