import type { PanReading } from '../amount/reading.js';
import { centimetresIn, gramsIn, isLengthUnit, isMassUnit, isVolumeUnit, millilitresIn } from '../amount/size.js';
import { Exact } from '../exact.js';
import type { Kitchen, Pan } from './kitchen.js';

/** A pan of a kitchen's usual ones that bakes the batch, or the author's size in that kitchen's units where none does. */
export interface PanChoice {
  pan: Pan | null;
  /** Size in words, `23 × 33 cm`; null where the author's own words hold. */
  text: string | null;
  /** Base area over the native pan's, less one; null where areas are not known. */
  areaDrift: Exact | null;
}

/** Base areas further apart than this are another bake; then the plain size is named and left to the author. */
const nearEnough = new Exact('0.15');

/**
 * The usual pan of another kitchen with the nearest base area, of the same shape.
 *
 * @param reading The pan as written.
 * @param native Kitchen of the writer: a trade name (`2 lb loaf tin`) means one of its pans.
 * @param kitchen Kitchen of the reader.
 */
export function panFor(reading: PanReading, native: Kitchen, kitchen: Kitchen): PanChoice | null {
  const written = basesOf(reading, native);
  if (written === null) return byCapacity(reading, native, kitchen);
  if (reading.capacity === null && isOwnSize(written.sides, reading, kitchen)) {
    return { pan: null, text: null, areaDrift: new Exact(0) };
  }
  const choice = bySides(written.sides, written.shape, reading.longFirst, kitchen);
  // A size in the kitchen's own unit that no usual pan comes near is best said as it was.
  return choice?.pan === null && reading.unit === kitchen.writes.length ? { ...choice, text: null } : choice;
}

/** A pan that the kitchen has in the very size that is written keeps its words. */
function isOwnSize(sides: readonly Exact[], { shape, unit }: PanReading, kitchen: Kitchen): boolean {
  const area = baseArea(sides, shape);
  if (unit !== kitchen.writes.length || area === null) return false;
  return kitchen.pans.some((pan) => sameShape(pan, sides, shape) && drift(pan, area).abs().lessThan('0.001'));
}

/** A usual pan that may stand for one that is written. */
export interface PanOffer {
  pan: Pan;
  /** Its base area over that of the written pan. */
  areaRatio: number;
  text: string;
}

/** Usual pans of a kitchen with the shape of one that is written; none where its base is not known. */
export function pansLike(reading: PanReading, native: Kitchen, kitchen: Kitchen): PanOffer[] {
  const written = basesOf(reading, native);
  const area = written === null ? null : baseArea(written.sides, written.shape);
  if (written === null || area === null) return [];
  return kitchen.pans
    .filter((pan) => sameShape(pan, written.sides, written.shape))
    .map((pan) => ({
      pan,
      areaRatio: drift(pan, area).plus(1).toNumber(),
      text: textOf(pan, written.sides, reading.longFirst),
    }));
}

/** Sides of a written pan in centimetres; those of the usual pan that its trade name means. */
function basesOf(reading: PanReading, native: Kitchen): { sides: Exact[]; shape: PanReading['shape'] } | null {
  const { capacity, unit } = reading;
  if (capacity === null) {
    if (!isLengthUnit(unit)) return null;
    return { sides: reading.sides.map((side) => side.times(centimetresIn(unit))), shape: reading.shape };
  }
  const trade = native.pans.find(({ tradeSizes }) =>
    tradeSizes.some((size) => size.unit === unit && size.size.equals(capacity)),
  );
  if (trade === undefined) return null;
  const sides = trade.sides.map((side) => side.times(centimetresIn(trade.unit)));
  // `2-quart dish` says no shape, so both sides of a square are named.
  const isUnsaidSquare = trade.shape === 'square' && reading.shape !== 'square';
  return {
    sides: isUnsaidSquare ? [...sides, ...sides] : sides,
    shape: trade.shape === 'muffin' ? 'unknown' : trade.shape,
  };
}

/** A square pan has one side in the list; an author who wrote two reads two. */
function textOf(pan: Pan, written: readonly Exact[], longFirst: boolean): string {
  const sides = pan.sides.length === 1 && written.length === 2 ? [...pan.sides, ...pan.sides] : pan.sides;
  return writeSides(sides, pan.unit, longFirst);
}

function bySides(
  sides: readonly Exact[],
  shape: PanReading['shape'],
  longFirst: boolean,
  kitchen: Kitchen,
): PanChoice | null {
  const area = baseArea(sides, shape);
  if (area === null) return null;
  const best = kitchen.pans
    .filter((pan) => sameShape(pan, sides, shape))
    .map((pan) => ({ pan, drift: drift(pan, area) }))
    .sort((a, b) => a.drift.abs().comparedTo(b.drift.abs()))[0];
  if (best?.drift.abs().lessThanOrEqualTo(nearEnough)) {
    return { pan: best.pan, text: textOf(best.pan, sides, longFirst), areaDrift: best.drift };
  }
  const plain = sides.map((side) => toUnit(side, kitchen));
  return { pan: null, text: writeSides(plain, kitchen.writes.length, longFirst), areaDrift: null };
}

function byCapacity(reading: PanReading, native: Kitchen, kitchen: Kitchen): PanChoice | null {
  const { capacity, unit } = reading;
  if (capacity === null) return null;
  if (isMassUnit(unit)) return { pan: null, text: massText(capacity.times(gramsIn(unit)), kitchen), areaDrift: null };
  if (!isVolumeUnit(unit)) return null;
  const each = millilitresIn(unit, native.units);
  return each === null ? null : { pan: null, text: volumeText(capacity.times(each), kitchen), areaDrift: null };
}

function massText(grams: Exact, kitchen: Kitchen): string {
  if (kitchen.writes.mass.includes('g')) return `${grams.dividedBy(50).round().times(50)} g`;
  return `${grams.dividedBy('453.59237').times(2).round().dividedBy(2)} lb`;
}

function volumeText(millilitres: Exact, kitchen: Kitchen): string {
  const quart = kitchen.writes.volume.includes('quart') ? kitchen.units.quart : undefined;
  if (quart !== undefined) {
    return `${millilitres.dividedBy(quart).times(2).round().dividedBy(2)}-quart`;
  }
  return `${millilitres.dividedBy(1000).toDecimalPlaces(1)} litre`;
}

/** Whether a usual pan can stand for the size: rounds for rounds, squares for squares, loaf tins among themselves. */
function sameShape(pan: Pan, sides: readonly Exact[], shape: PanReading['shape']): boolean {
  if (pan.shape === 'muffin') return false;
  if (sides.length === 1) return shape === 'square' ? pan.shape === 'square' : pan.shape === 'round';
  if (isLoaf(sides) || shape === 'loaf') return pan.shape === 'loaf';
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

function drift(pan: Pan, area: Exact): Exact {
  const own = baseArea(
    pan.sides.map((side) => side.times(centimetresIn(pan.unit))),
    pan.shape === 'muffin' ? 'round' : pan.shape,
  );
  return own === null ? new Exact(1) : own.dividedBy(area).minus(1);
}

/** Square centimetres of a base. π to forty digits is beyond any pan. */
export function baseArea(sides: readonly Exact[], shape: PanReading['shape']): Exact | null {
  const [first, second] = sides;
  if (first === undefined) return null;
  if (second !== undefined) return first.times(second);
  if (shape === 'square') return first.times(first);
  return first.dividedBy(2).pow(2).times(Exact.acos(-1));
}

function toUnit(cm: Exact, kitchen: Kitchen): Exact {
  return kitchen.writes.length === 'cm' ? cm.round() : cm.dividedBy('2.54').times(2).round().dividedBy(2);
}

function writeSides(sides: readonly Exact[], unit: string, longFirst: boolean): string {
  const ordered = longFirst ? [...sides].reverse() : sides;
  return `${ordered.map((side) => side.toDecimalPlaces(1).toString()).join(' × ')} ${unit}`;
}
