import { isDash } from '../token/dash.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';
import { isOneSlipFrom } from './misspelling.js';
import {
  containers,
  counters,
  foodsNotMeasures,
  foodsThatGoOn,
  looseMeasures,
  measures,
  severalContainers,
  shortContainers,
  type UnitSpelling,
} from './unit-words.js';

/** A unit word of the text. */
export interface ReadUnit {
  unit: UnitId;
  next: number;
  /** `one` and `many` are full words, `short` abbreviations and signs. */
  spelling: 'one' | 'many' | 'short';
  /** Container word in the singular; empty for a measure, a clove, a slice. */
  container: string;
  /** A measure word without a unit of its own (`glass`, `ear`): unit `count`. */
  loose: string;
}

const words = new Map<string, Omit<ReadUnit, 'next'>>();
const exactWords = new Map<string, UnitId>();
const notMeasures = new Map(Object.entries(foodsNotMeasures));

function enter({ unit, one, many, short, exact }: UnitSpelling): void {
  const container = unit === 'can' || unit === 'tin' ? unit : '';
  for (const word of one) words.set(word, { unit, spelling: 'one', container, loose: '' });
  for (const word of many) words.set(word, { unit, spelling: 'many', container, loose: '' });
  for (const word of short) words.set(word, { unit, spelling: 'short', container, loose: '' });
  for (const word of exact ?? []) exactWords.set(word, unit);
}

for (const spelling of [...measures, ...counters]) enter(spelling);
for (const [word, container] of Object.entries(containers)) {
  const spelling = shortContainers.has(word) ? 'short' : severalContainers.has(word) ? 'many' : 'one';
  words.set(word, { unit: 'packet', spelling, container, loose: '' });
}
for (const [word, spelling] of Object.entries(looseMeasures)) {
  words.set(word, { unit: 'count', spelling, container: '', loose: word });
}

/**
 * Reads a unit word at an index, with the hyphen before it (`2-inch`) and the full stop behind an abbreviation (`tsp.`).
 *
 * @param afterNumber Whether a number stands before it: single letters and signs are units only there.
 */
export function readUnit(tokens: Tokens, index: number, { afterNumber }: { afterNumber: boolean }): ReadUnit | null {
  const at = afterNumber && isDash(tokens.word(index)) && isHyphen(tokens, index) ? index + 1 : index;
  const read = readPair(tokens, at) ?? readSign(tokens, at, afterNumber) ?? readWord(tokens, at, afterNumber);
  if (read === null || isFoodNotMeasure(tokens, at, read.next)) return null;
  if (isPartOfWord(tokens, at, read)) return null;
  return { ...read, next: passPlural(tokens, read.next) };
}

/** `1 cup cake` is a cake, `1 cup cake flour` is a cup. */
function isFoodNotMeasure(tokens: Tokens, at: number, next: number): boolean {
  const behind = tokens.word(next);
  if (!notMeasures.get(tokens.word(at))?.includes(behind)) return false;
  return !foodsThatGoOn[behind]?.includes(tokens.word(next + 1));
}

/** `T-bone`, `head-on`, `bar-shaped`: hyphened to another word it is no unit; but `1-inch-thick` and `8-oz-can` are. */
function isPartOfWord(tokens: Tokens, at: number, read: ReadUnit): boolean {
  const [dash, behind] = [tokens.at(at + 1), tokens.at(at + 2)];
  if (!isDash(dash.lower) || dash.gap || behind.gap || behind.kind !== 'word') return false;
  return exactWords.has(tokens.at(at).text) || (read.spelling !== 'short' && read.unit !== 'in');
}

/** A hyphen glued on one side at least (`2-inch`, `3 -inch`, `1- inch`), or with `inch` behind (`3 - inch`). */
function isHyphen(tokens: Tokens, index: number): boolean {
  const behind = tokens.at(index + 1);
  return !tokens.at(index).gap || !behind.gap || behind.lower === 'inch';
}

const vesselKinds = new Set([
  'soup',
  'dessert',
  'coffee',
  'wine',
  'serving',
  'wooden',
  'water',
  'beer',
  'shot',
  'whisky',
  'big',
]);
const vessels = new Set(['spoon', 'spoons', 'spoonful', 'spoonfuls', 'glass', 'glasses', 'mug', 'mugs']);

/** Two words for one unit: `fl oz`, `fluid ounces`, `table spoon`, `metric cup`. */
function readPair(tokens: Tokens, at: number): ReadUnit | null {
  const first = tokens.word(at);
  const second = tokens.word(at + 1) === '.' || isDash(tokens.word(at + 1)) ? at + 2 : at + 1;
  const behind = words.get(tokens.word(second));
  if ((first === 'fl' || first === 'fluid') && behind?.unit === 'oz') {
    return { ...behind, unit: 'floz', next: passStop(tokens, second + 1, behind.spelling) };
  }
  if (first === 'floz')
    return { unit: 'floz', spelling: 'short', container: '', loose: '', next: passStop(tokens, at + 1, 'short') };
  if ((first === 'table' || first === 'tea') && behind?.loose.startsWith('spoon')) {
    return { ...behind, unit: first === 'table' ? 'tbsp' : 'tsp', loose: '', next: second + 1 };
  }
  // `1 soup spoon`, `a wine glass`
  if (vesselKinds.has(first) && behind !== undefined && vessels.has(behind.loose))
    return { ...behind, next: second + 1 };
  const ofKitchen = first === 'metric' || first === 'imperial' || first === 'us' || first === 'american';
  if (
    ofKitchen &&
    behind !== undefined &&
    (behind.unit === 'cup' || behind.unit === 'pint' || behind.unit === 'tbsp' || behind.unit === 'tsp')
  ) {
    return { ...behind, next: passStop(tokens, second + 1, behind.spelling) };
  }
  return null;
}

/** Inch marks, whatever smart punctuation made of them, directly behind a number. */
function readSign(tokens: Tokens, at: number, afterNumber: boolean): ReadUnit | null {
  if (!afterNumber) return null;
  const token = tokens.at(at);
  const inch = { unit: 'in', spelling: 'short', container: '', loose: '' } as const;
  if (token.gap) return null;
  const quote = token.text === '"' || token.text === '”' || token.text === '“';
  if (token.text === '″' || (quote && !closesQuotation(tokens, at))) return { ...inch, next: at + 1 };
  const second = tokens.at(at + 1);
  const prime = token.text === "'" || token.text === '’' || token.text === '′';
  return prime && second.text === token.text && !second.gap ? { ...inch, next: at + 2 } : null;
}

/** Whether the sign closes what was quoted shortly before it: “makes 4” is no length. */
function closesQuotation(tokens: Tokens, at: number): boolean {
  const farthest = 30;
  for (let before = at - 1; before >= Math.max(0, at - farthest); before -= 1) {
    const { text, gap } = tokens.at(before);
    const opens = (text === '“' || text === '"') && (gap || tokens.at(before - 1).text === '(');
    if (opens) return true;
    if (text === '”' || (text === '"' && tokens.at(before - 1).kind === 'word')) return false;
  }
  return false;
}

/** Long words that no other word is one slip away from. */
const slippery = ['tablespoon', 'tablespoons', 'teaspoon', 'teaspoons'];

/** `tablepoon` and `teapsoon` can only mean one thing. */
function misspelt(word: string): Omit<ReadUnit, 'next'> | undefined {
  if (!word.startsWith('t') || word.length < 7 || word.length > 12) return undefined;
  const meant = slippery.find((known) => isOneSlipFrom(word, known));
  return meant === undefined ? undefined : words.get(meant);
}

function readWord(tokens: Tokens, at: number, afterNumber: boolean): ReadUnit | null {
  const token = tokens.at(at);
  if (token.kind !== 'word') return null;
  const exact = afterNumber ? exactWords.get(token.text) : undefined;
  if (exact !== undefined) {
    return { unit: exact, spelling: 'short', container: '', loose: '', next: passStop(tokens, at + 1, 'short') };
  }
  if (token.lower === 'in' && afterNumber) return readIn(tokens, at);
  const word = words.get(token.lower) ?? misspelt(token.lower);
  if (word === undefined || (word.spelling === 'short' && !afterNumber)) return null;
  return { ...word, next: passStop(tokens, at + 1, word.spelling) };
}

/** Behind `1 in`, they show that a length was meant. */
const measuredWords = new Set([
  'thick',
  'wide',
  'long',
  'deep',
  'apart',
  'tall',
  'high',
  'pieces',
  'cubes',
  'slices',
  'chunks',
  'squares',
  'wedges',
  'strips',
  'dice',
  'sticks',
  'matchsticks',
  'rounds',
  'lengths',
  'batons',
  'rings',
  'coins',
]);

/** `in` is an inch when glued to the number, hyphened, dotted, or where no preposition could stand. */
function readIn(tokens: Tokens, at: number): ReadUnit | null {
  const [token, behind] = [tokens.at(at), tokens.at(at + 1)];
  const dotted = behind.lower === '.' && !behind.gap && at + 2 < tokens.length;
  const closes = behind.kind === 'mark' || measuredWords.has(behind.lower);
  if (token.gap && !dotted && !closes) return null;
  return { unit: 'in', spelling: 'short', container: '', loose: '', next: passStop(tokens, at + 1, 'short') };
}

function passStop(tokens: Tokens, index: number, spelling: ReadUnit['spelling']): number {
  const stop = tokens.at(index);
  return spelling === 'short' && stop.lower === '.' && !stop.gap ? index + 1 : index;
}

/** `cup(s)` */
function passPlural(tokens: Tokens, index: number): number {
  const plural = tokens.word(index) === '(' && !tokens.at(index).gap && tokens.word(index + 1) === 's';
  return plural && tokens.word(index + 2) === ')' ? index + 3 : index;
}
