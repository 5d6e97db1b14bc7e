import type { PanReading } from '../../amount/reading.js';
import { centimetresIn, isLengthUnit } from '../../amount/size.js';
import { Exact } from '../../exact.js';
import type { Kitchen, Pan } from '../kitchen.js';

/** The base of a pan: sides or one diameter in centimetres, shorter first. */
export interface Base {
  sides: Exact[];
  shape: PanReading['shape'];
}

/** Base of a written pan; that of the usual pan that its trade name means. Null where it is not known, as of a ring or a pot. */
export function baseOf(reading: PanReading, native: Kitchen): Base | null {
  const { capacity, unit } = reading;
  if (reading.shape === 'tube' || reading.shape === 'stove') return null;
  if (capacity === null) {
    if (!isLengthUnit(unit)) return null;
    return { sides: reading.sides.map((side) => side.times(centimetresIn(unit))), shape: reading.shape };
  }
  // Two quarts are a square baking dish, and no saucepan and no basin is one.
  if (reading.shape === 'deep') return null;
  const trade = native.pans.find(({ tradeSizes }) =>
    tradeSizes.some((size) => size.unit === unit && size.size.equals(capacity)),
  );
  if (trade === undefined || trade.shape === 'muffin') return null;
  const sides = sidesOf(trade);
  // `2-quart dish` says no shape, so both sides of a square are named.
  const isUnsaidSquare = trade.shape === 'square' && reading.shape !== 'square';
  return { sides: isUnsaidSquare ? [...sides, ...sides] : sides, shape: trade.shape };
}

/** Sides of a usual pan in centimetres. */
function sidesOf({ sides, unit }: Pan): Exact[] {
  return sides.map((side) => side.times(centimetresIn(unit)));
}

/** Square centimetres of a base. π to forty digits is beyond any pan. */
export function baseArea(sides: readonly Exact[], shape: PanReading['shape']): Exact | null {
  const [first, second] = sides;
  if (first === undefined) return null;
  if (second !== undefined) return first.times(second);
  if (shape === 'square') return first.times(first);
  return first.dividedBy(2).pow(2).times(Exact.acos(-1));
}

/** Base of a usual pan, one hole of a muffin pan, in square centimetres. */
export function areaOf(pan: Pan): Exact {
  const area = baseArea(sidesOf(pan), pan.shape === 'muffin' ? 'round' : pan.shape);
  if (area === null) throw new RangeError(`A ${pan.name} without sides.`);
  return area;
}

/** A rim lower than this, in centimetres, is that of a sheet or a roll: it holds no batter for a pan. Common practice, no source. */
const flatUnder = new Exact('2.6');

function isFlat({ depth, unit }: Pan): boolean {
  return depth?.times(centimetresIn(unit)).lessThan(flatUnder) ?? false;
}

/** Whether one base is as large as another but for the rounding of its sides: 23 cm for 9 inches. Common practice, no source. */
export function isSameArea(areaRatio: Exact): boolean {
  return areaRatio.minus(1).abs().lessThan('0.02');
}

/** Whether a flat pan may stand for one that is written: it is flat itself, or the author's usual pan of that size is. */
export function mayBeFlat(reading: PanReading, base: Base, native: Kitchen): boolean {
  const { depth, unit, shape } = reading;
  if (shape === 'sheet' || shape === 'pie') return true;
  if (depth !== null && isLengthUnit(unit)) return depth.times(centimetresIn(unit)).lessThan(flatUnder);
  const area = baseArea(base.sides, base.shape);
  const own = native.pans.filter(
    (pan) => sameShape(pan, base) && area !== null && isSameArea(areaOf(pan).dividedBy(area)),
  );
  return own.length > 0 && own.every(isFlat);
}

/**
 * The pans of a kitchen that can stand for a base: for a pie those for pies, where it has any, for a springform those, and for a cake none
 * for pies.
 */
export function pansForBase(kitchen: Kitchen, base: Base, flatToo: boolean): Pan[] {
  const all = kitchen.pans.filter((pan) => sameShape(pan, base) && (flatToo || !isFlat(pan)));
  if (base.shape === 'pie') return someOf(all, isForPies);
  const cakes = all.filter((pan) => !isForPies(pan));
  return base.shape === 'springform' ? someOf(cakes, isSpringform) : cakes;
}

function someOf(pans: Pan[], isOf: (pan: Pan) => boolean): Pan[] {
  const some = pans.filter(isOf);
  return some.length > 0 ? some : pans;
}

/** What is turned out of no other tin. */
function isSpringform({ name }: Pan): boolean {
  return /\bspringform\b/i.test(name);
}

function isForPies({ name }: Pan): boolean {
  return /\b(?:pie|tart|flan|quiche)\b/i.test(name);
}

/** Whether a usual pan can stand for a base: rounds for rounds, squares for squares, loaf tins among themselves. */
function sameShape(pan: Pan, { sides, shape }: Base): boolean {
  if (pan.shape === 'muffin') return false;
  if (sides.length === 1) return shape === 'square' ? pan.shape === 'square' : pan.shape === 'round';
  if (shape !== 'sheet' && shape !== 'pie' && (isLoaf(sides) || shape === 'loaf')) return pan.shape === 'loaf';
  const square = sides[0] !== undefined && sides[1] !== undefined && sides[0].equals(sides[1]);
  return square ? pan.shape === 'square' : pan.shape === 'rectangle';
}

/** A loaf pan is narrow: under 15 cm across and at least 1.6 times as long. */
function isLoaf(sides: readonly Exact[]): boolean {
  const [short, long] = sides;
  return (
    short !== undefined && long !== undefined && short.lessThan(15) && long.dividedBy(short).greaterThanOrEqualTo('1.6')
  );
}
