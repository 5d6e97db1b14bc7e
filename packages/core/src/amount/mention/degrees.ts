import { Exact } from '../../exact.js';
import { readRange } from '../quantity/range.js';
import { isDash, isInnerHyphen } from '../token/dash.js';
import type { Tokens } from '../token/token.js';

/** Degrees of the text. */
export interface ReadDegrees {
  low: Exact;
  high: Exact | null;
  /** `null` when no letter and no name of a scale is written. */
  unit: 'C' | 'F' | null;
  /** A degree sign or word, or the letter of a scale, is written: it is a temperature and no other number. */
  signed: boolean;
  first: number;
  next: number;
}

const scales: ReadonlyMap<string, 'C' | 'F'> = new Map([
  ['c', 'C'],
  ['celsius', 'C'],
  ['centigrade', 'C'],
  ['celcius', 'C'],
  ['f', 'F'],
  ['fahrenheit', 'F'],
  ['farenheit', 'F'],
  ['fahrenheits', 'F'],
  ['℃', 'C'],
  ['℉', 'F'],
]);

const degreeWords = new Set(['°', 'º', '˚', '∘', 'degree', 'degrees', 'deg', 'degs']);

/**
 * Reads degrees at an index: `350°F`, `200C`, `400 degrees`, `80°-85°F`, `110 to 115 °F`, `-18 °C`; a bare number with `signed` false.
 */
export function readDegrees(tokens: Tokens, index: number): ReadDegrees | null {
  const negative = isMinus(tokens, index);
  const range = readRange(tokens, negative ? index + 1 : index);
  if (range === null || range.article || range.reversed) return null;
  const scale = readScale(tokens, range.next);
  const sign = negative ? -1 : 1;
  const single = { low: range.low.times(sign), high: range.high, ...scale, first: index };
  if (range.high !== null || !scale.signed) return negative && range.high !== null ? null : single;
  return readUpper(tokens, single) ?? single;
}

/** A minus sign: nothing but a blank or a bracket before it, the number glued behind it. */
function isMinus(tokens: Tokens, index: number): boolean {
  const sign = tokens.at(index);
  if (!isDash(sign.lower) || tokens.at(index + 1).gap || tokens.at(index + 1).kind !== 'number') return false;
  const before = tokens.at(index - 1);
  return index === 0 || (sign.gap && before.kind === 'word') || before.lower === '(';
}

/** The second half of `80°-85°F` and `180 °C to 200 °C`. */
function readUpper(tokens: Tokens, low: ReadDegrees): ReadDegrees | null {
  const joint = tokens.word(low.next);
  if (!isDash(joint) && joint !== 'to' && joint !== '~') return null;
  const upper = readRange(tokens, low.next + 1);
  if (upper === null || upper.high !== null || upper.article || !upper.low.gt(low.low)) return null;
  const scale = readScale(tokens, upper.next);
  if (!scale.signed || (low.unit !== null && scale.unit !== low.unit)) return null;
  return { ...low, high: upper.low, ...scale };
}

function readScale(tokens: Tokens, index: number): { unit: 'C' | 'F' | null; signed: boolean; next: number } {
  let at =
    isDash(tokens.word(index)) && !tokens.at(index).gap && degreeWords.has(tokens.word(index + 1)) ? index + 1 : index;
  const worded = degreeWords.has(tokens.word(at));
  if (worded) at += 1;
  // `110 deg. F`
  if (worded && tokens.word(at) === '.' && scales.has(tokens.word(at + 1))) at += 1;
  const unit = scales.get(tokens.word(at));
  // The `C` of `C-shaped`.
  if (unit === undefined || isInnerHyphen(tokens, at + 1)) return { unit: null, signed: worded, next: at };
  return { unit, signed: true, next: at + 1 };
}

/** A first guess at the unit of a number without a letter, until a kitchen says: above 250 nobody means Celsius. */
export function likelyUnit(low: Exact): 'C' | 'F' {
  return low.gt(new Exact(250)) ? 'F' : 'C';
}
