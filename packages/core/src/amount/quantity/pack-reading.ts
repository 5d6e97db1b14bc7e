import { Exact } from '../../exact.js';
import { gramsIn, isLengthUnit, type KitchenUnits } from '../size.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';
import { readQuantity } from './quantity.js';
import { isMeasured, readStatement, type Statement } from './statement.js';
import { readThing, type Thing } from './thing-counted.js';
import { passAdjectives } from './unit-behind-adjectives.js';
import type { ReadUnit } from './unit-reading.js';

/** A count with the size of each thing counted. */
export interface ReadPack {
  count: Exact | null;
  countHigh: Exact | null;
  approx: boolean;
  /** Unit of the count: `can`, `packet`, `count` … */
  unit: UnitId;
  size: Exact;
  sizeHigh: Exact | null;
  sizeUnit: UnitId;
  word: string;
  start: number;
  first: number;
  next: number;
  /** The text may be read in two ways. */
  unsure: boolean;
}

/**
 * Reads a count with a size at an index: `2 (15-oz) cans`, `2 x 400g tins`, `1 7oz can`, `28 oz can`, `2 cans (28 oz.)`, `4 (6-ounce)`.
 *
 * @param counted The statement that stands there.
 * @returns `null` where no size of each is written.
 */
export function readPack(tokens: Tokens, counted: Statement, kitchen: KitchenUnits): ReadPack | null {
  const { quantity } = counted;
  if (quantity.unitWord !== null && isMeasured(counted.unit)) return readSizeFirst(tokens, counted, kitchen);
  if (quantity.unitWord !== null) return readSizeBehind(tokens, counted, quantity.unitWord, kitchen);
  return readSizeBetween(tokens, counted, kitchen);
}

/** `28 oz can`, `400 ml can`, `1-15 oz can`; a piece (`2-3 pound hunk`) has no number and is weighed, not counted. */
function readSizeFirst(tokens: Tokens, size: Statement, kitchen: KitchenUnits): ReadPack | null {
  const { quantity } = size;
  // `14.5 oz (411 g) can`
  const bracket = tokens.word(size.next) === '(' ? (tokens.partner[size.next] ?? -1) : -1;
  const inBracket = bracket > 0 ? readStatement(tokens, size.next + 1, kitchen) : null;
  const restated = inBracket !== null && inBracket.next === bracket && isMeasured(inBracket.unit);
  const thing = readThing(tokens, restated ? bracket + 1 : size.next);
  if (thing === null || !thing.container || quantity.article || quantity.bare) return null;
  const base = {
    approx: size.approx,
    unit: thing.unit,
    sizeUnit: size.unit,
    word: thing.word,
    start: size.start,
    first: size.first,
    next: thing.next,
  };
  const countFirst = splitCount(size);
  if (countFirst !== null) return { ...base, ...countFirst, countHigh: null, sizeHigh: null, unsure: false };
  const written = tokens.at(size.first).value;
  const twoPart =
    quantity.range?.high === null && written !== null && written.isInteger() && !size.low.isInteger() && written.lte(4);
  const split = twoPart && tokens.at(size.first).form === 'whole';
  if (split && inBracket !== null && restated) {
    // `1 1/4 oz (7 g) packet` is one packet of a quarter ounce: the second statement says which it is.
    const fraction = size.low.minus(written);
    const nearer = isNearer(inBracket, fraction, size);
    if (nearer) return { ...base, count: written, countHigh: null, size: fraction, sizeHigh: null, unsure: false };
  }
  const unsure =
    (split && !restated) ||
    (size.high !== null && quantity.range?.dashed === true && size.low.isInteger() && size.low.lte(4));
  return { ...base, count: null, countHigh: null, size: size.low, sizeHigh: size.high, unsure };
}

/** `1-15 oz can`: no can holds from 1 to 15 ounces, so that the first number counts. */
function splitCount({ low, high, quantity }: Statement): { count: Exact; size: Exact } | null {
  if (high === null || quantity.range?.dashed !== true || !low.isInteger() || low.gt(12)) return null;
  return high.gte(low.times(4)) && high.gte(new Exact(5)) ? { count: low, size: high } : null;
}

function isNearer(second: Statement, fraction: Exact, size: Statement): boolean {
  if (second.unit !== 'g' || size.unit !== 'oz') return false;
  const farFrom = (ounces: Exact): Exact =>
    second.low
      .dividedBy(ounces.times(gramsIn('oz')))
      .ln()
      .abs();
  return farFrom(fraction).lessThan(farFrom(size.low));
}

/** `2 cans (28 oz.)`, `1 pkg (7 g)`, `1 can 400 g`, `1 pack of 250 g` */
function readSizeBehind(
  tokens: Tokens,
  counted: Statement,
  unitWord: ReadUnit,
  kitchen: KitchenUnits,
): ReadPack | null {
  if (unitWord.container === '') return null;
  const opens = tokens.word(counted.next) === '(';
  const at = opens || tokens.word(counted.next) === 'of' ? counted.next + 1 : counted.next;
  const size = readStatement(tokens, at, kitchen);
  if (size === null || size.quantity.bare || size.quantity.article) return null;
  if (!isMeasured(size.unit) && !(tokens.word(counted.next) === 'of' && isNumberOfPieces(tokens, size))) return null;
  const close = opens ? (tokens.partner[counted.next] ?? -1) : -1;
  if (opens && close < 0) return null;
  if (opens && isTotal(tokens, size.next, close)) return null;
  return packOf(counted, size, {
    unit: counted.unit,
    word: unitWord.container,
    next: opens ? close + 1 : size.next,
    container: true,
  });
}

/** `1 pack of 6 rolls` */
function isNumberOfPieces(tokens: Tokens, { low, high, unit, next, quantity }: Statement): boolean {
  const isCount = unit === 'count' && quantity.unitWord === null && high === null;
  return isCount && low.isInteger() && low.gt(1) && tokens.at(next).kind === 'word';
}

function isTotal(tokens: Tokens, from: number, close: number): boolean {
  const stop = Math.min(close, from + 4);
  for (let at = from; at < stop; at += 1) if (tokens.word(at) === 'total') return true;
  return false;
}

function packOf(counted: Statement, size: Statement, thing: Thing): ReadPack {
  return {
    count: counted.low,
    countHigh: counted.high,
    approx: counted.approx,
    unit: thing.unit,
    size: size.low,
    sizeHigh: size.high,
    sizeUnit: size.unit,
    word: thing.word,
    start: counted.start,
    first: counted.first,
    next: thing.next,
    unsure: false,
  };
}

/** `2 (15-oz) cans`, `4 (6-ounce) fillets`, `2 x 400 g tins`, `1 8oz cream cheese`, `a 400 g tin` */
function readSizeBetween(tokens: Tokens, counted: Statement, kitchen: KitchenUnits): ReadPack | null {
  const from = passAdjectives(tokens, counted.next);
  const sign = tokens.word(from);
  const opens = sign === '(' || sign === '[';
  const crossed = sign === 'x' || sign === '×';
  const size = readStatement(tokens, opens || crossed ? from + 1 : from, kitchen);
  if (size === null || size.quantity.bare || size.quantity.article || !isMeasured(size.unit)) return null;
  const close = opens ? (tokens.partner[from] ?? -1) : -1;
  if (opens && (close < 0 || !isSizeOnly(tokens, size, close))) return null;
  const behind = opens ? close + 1 : size.next;
  const thing = readThing(tokens, behind);
  const article = counted.quantity.article;
  if (thing === null) {
    // `1 large (about 8 oz), sliced`: nothing that is counted follows, so that the bracket states the amount again.
    if (tokens.at(behind).kind !== 'word' || (opens && article)) return null;
    return packOf(counted, size, { unit: 'count', word: '', next: behind, container: false });
  }
  // `a 2-inch piece`: one piece, unnumbered, is measured by its length.
  if (article && !thing.container && isLengthUnit(size.unit)) return null;
  return packOf(counted, size, thing);
}

/** Whether a bracket holds the size and its second statements only: `(14 oz/400 g)`. */
function isSizeOnly(tokens: Tokens, size: Statement, close: number): boolean {
  if (size.next === close) return true;
  const joint = tokens.word(size.next);
  const each = joint === 'each';
  if (each) return size.next + 1 === close;
  if (joint !== '/' && joint !== ',' && joint !== 'or' && joint !== '|') return false;
  const again = readQuantity(tokens, size.next + 1);
  return again !== null && again.next === close;
}
