import type { Exact } from '../../exact.js';
import type { PanReading, Span } from '../reading.js';
import { isLengthUnit, isMassUnit, isVolumeUnit } from '../size.js';
import { readNumber } from '../token/number.js';
import type { Tokens } from '../token/token.js';
import { tokenize } from '../token/tokenize.js';
import type { MassUnit, UnitId, VolumeUnit } from '../unit.js';
import { hyphenedInch } from './hyphened-inch.js';
import { rimSaid, shapeIn } from './pan-shape.js';
import { type Holes, readHoles } from './read-holes.js';
import { type ReadSize, readSizeAt } from './read-size.js';

/**
 * Reads a pan size: `9×13 in`, `9x13x2 inch`, `two 8-inch round`, `9" x 13"`, `2-quart`, `900 g loaf tin`.
 *
 * @param beside Words for the pan that do not stand in the label: the `skillet` of `a :pan[12 in] skillet`.
 * @returns `null` where no size with a unit stands (a bare `9x13` says no unit), or where the size is a range.
 */
export function readPan(text: string, beside = ''): PanReading | null {
  const tokens = tokenize(hyphenedInch(text));
  const words = beside === '' ? tokens : tokenize(`${hyphenedInch(text)} ${beside}`);
  const holes = holesIn(words, text);
  if (holes !== null && holes.count !== null) return muffinPan(tokens, holes, holes.count);
  const shape = shapeIn(tokens) ?? shapeIn(words);
  const pan = sizedAt(tokens, shape);
  if (pan === 'range') return null;
  if (pan !== null) return { ...pan, rim: rimSaid(words) };
  return holes === null ? null : muffinPan(tokens, holes, null);
}

/** The holes of a muffin pan, whose name may stand behind the label and its number may not. */
function holesIn(words: Tokens, label: string): Holes | null {
  const holes = readHoles(words);
  return holes === null || holes.span.end > label.length ? null : holes;
}

function sizedAt(tokens: Tokens, shape: PanReading['shape'] | undefined): PanReading | 'range' | null {
  for (let at = 0; at < tokens.length; at += 1) {
    if (isRange(readSizeAt(tokens, at))) return 'range';
    const pan = panAt(tokens, at, shape);
    if (pan !== null) return pan;
  }
  return null;
}

/** `two 12-cup muffin pans`, `muffin tin` */
function muffinPan(tokens: Tokens, { mini, span, first }: Holes, capacity: Exact | null): PanReading {
  const counted = first === 0 || capacity === null ? null : countBefore(tokens, first);
  const shape = mini ? 'mini-muffin' : 'muffin';
  const start = counted?.start ?? span.start;
  return { ...sideless, count: counted?.value ?? null, unit: 'count', capacity, shape, span: { ...span, start } };
}

const sideless = {
  sides: [],
  longFirst: false,
  depth: null,
  depthSpan: null,
  name: null,
  rim: null,
} satisfies Partial<PanReading>;

/** The number of pans whose size stands at an index. */
function countBefore(tokens: Tokens, index: number): { value: Exact; start: number } | null {
  for (let at = Math.max(0, index - 2); at < index; at += 1) {
    const counted = readCount(tokens, at);
    if (counted?.next === index) return { value: counted.value, start: tokens.at(at).start };
  }
  return null;
}

function isRange(size: ReadSize | null): boolean {
  return size?.measures.some(({ high }) => high !== null) === true;
}

function panAt(tokens: Tokens, index: number, shape: PanReading['shape'] | undefined): PanReading | null {
  const counted = readCount(tokens, index);
  const size = readSizeAt(tokens, counted?.next ?? index) ?? readSizeAt(tokens, index);
  if (size === null || isRange(size)) return null;
  const count = size.first === index ? null : (counted?.value ?? null);
  const [first, second, third] = size.measures.map(({ low }) => low);
  if (first === undefined) return null;
  const span = tokens.span(index, restatedUntil(tokens, size));
  if (!isLengthUnit(size.unit)) {
    if (second === undefined) return capacityPan({ size, shape, count, span, capacity: first });
    // `2 x 1 lb loaf tins`
    const isCounted = third === undefined && count === null && first.isInteger();
    return isCounted ? capacityPan({ size, shape, count: first, span, capacity: second }) : null;
  }
  if (count === null && second !== undefined && isNumberOfPans(size, shape)) {
    const inner = { ...size, measures: size.measures.slice(1) };
    return { ...sidedPan(tokens, inner, shape, span), count: first };
  }
  return { ...sidedPan(tokens, size, shape, span), count };
}

/** `2 x 8-inch round`, `2 x 20 cm` are two pans, `9 x 13-inch` and `2 × 4 in` have two sides: no pan is so narrow for its length. */
function isNumberOfPans({ measures, unit }: ReadSize, shape: PanReading['shape'] | undefined): boolean {
  const [first, second, third] = measures.map(({ low }) => low);
  if (first === undefined || second === undefined || !first.isInteger() || first.greaterThan(6)) return false;
  if (unit !== 'in') return second.greaterThan(first.times(2));
  const isRound = shape === 'round' || shape === 'springform';
  if (first.lessThan(4)) return second.greaterThan(first.times(2)) || (isRound && third === undefined);
  // Four 9-inch rounds; a tart pan of 4 × 14 inches has two sides.
  return first.equals(4) && isRound && third === undefined && second.lessThan(12);
}

function sidedPan(
  tokens: Tokens,
  size: ReadSize,
  shape: PanReading['shape'] | undefined,
  span: PanReading['span'],
): PanReading {
  const [first, second, third] = size.measures.map(({ low }) => low);
  if (first === undefined || !isLengthUnit(size.unit)) throw new RangeError('A pan with a side has its length.');
  const sides = second === undefined ? [first] : first.lte(second) ? [first, second] : [second, first];
  const deep = deepAt(tokens, size);
  const plain = second === undefined ? 'unknown' : first.eq(second) ? 'square' : 'rectangle';
  return {
    sides,
    longFirst: second?.lt(first) ?? false,
    depth: third ?? deep?.depth ?? null,
    depthSpan: third === undefined ? (deep?.span ?? null) : null,
    count: null,
    unit: size.unit,
    capacity: null,
    name: null,
    rim: null,
    shape: shape ?? plain,
    span,
  };
}

function isCapacity(unit: UnitId): unit is MassUnit | VolumeUnit {
  return isMassUnit(unit) || isVolumeUnit(unit);
}

function capacityPan(given: {
  size: ReadSize;
  shape: PanReading['shape'] | undefined;
  count: Exact | null;
  span: PanReading['span'];
  capacity: Exact;
}): PanReading | null {
  if (!isCapacity(given.size.unit)) return null;
  // The ounces of a ramekin are those that it holds; only a loaf tin is named by what the loaf weighs.
  const unit = given.size.unit === 'oz' && given.shape !== 'loaf' ? 'floz' : given.size.unit;
  const { count, capacity, span } = given;
  return { ...sideless, count, unit, capacity, shape: given.shape ?? 'unknown', span };
}

/** Index behind a second statement of the same size in another unit: `20cm/8in`, `900 g (2 lb)`. */
function restatedUntil(tokens: Tokens, size: ReadSize): number {
  const sign = tokens.word(size.next);
  if (sign !== '/' && sign !== '(') return size.next;
  const again = readSizeAt(tokens, size.next + 1);
  const isSame = again !== null && again.unit !== size.unit && isLengthUnit(again.unit) === isLengthUnit(size.unit);
  if (!isSame || again.measures.length !== size.measures.length) return size.next;
  if (sign === '/') return again.next;
  return tokens.word(again.next) === ')' ? again.next + 1 : size.next;
}

/** How many pans: a small whole number right before a size (`two 8-inch`, `2 (9-inch)`). */
function readCount(tokens: Tokens, index: number): { value: Exact; next: number } | null {
  const number = readNumber(tokens, index);
  if (number === null || number.article || number.fraction || !number.value.isInteger()) return null;
  const next = tokens.word(number.next) === '(' ? number.next + 1 : number.next;
  return tokens.at(next).kind === 'number' ? { value: number.value, next } : null;
}

/** `…, 2 inches deep` */
function deepAt(tokens: Tokens, size: ReadSize): { depth: Exact; span: Span } | null {
  const stop = Math.min(tokens.length, size.next + 12);
  for (let at = size.next; at < stop; at += 1) {
    const deep = readSizeAt(tokens, at);
    if (deep === null) continue;
    const said =
      tokens.word(deep.next) === 'deep' || tokens.word(deep.next) === 'depth' || tokens.word(deep.next + 1) === 'deep';
    const depth = deep.measures[0]?.low;
    if (deep.unit === size.unit && said && depth !== undefined)
      return { depth, span: tokens.span(deep.first, deep.next) };
    at = deep.next - 1;
  }
  return null;
}
