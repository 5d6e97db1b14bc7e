import type { PanReading } from '../../amount/reading.js';
import { centimetresIn, gramsIn, isLengthUnit, isMassUnit, isVolumeUnit, millilitresIn } from '../../amount/size.js';
import type { LengthUnit } from '../../amount/unit.js';
import { Exact, toStep } from '../../exact.js';
import type { Kitchen, Pan } from '../kitchen.js';
import { baseOf } from './pan-base.js';

/** Sides with their unit, `23 × 33 cm`; the longer first where the author had it so. */
export function writeSides(sides: readonly Exact[], unit: string, longFirst = false): string {
  const ordered = longFirst ? [...sides].reverse() : sides;
  return `${ordered.map((side) => side.toDecimalPlaces(1).toString()).join(' × ')} ${unit}`;
}

/** A usual pan's size. A square pan has one side in the list; an author who wrote two reads two. */
export function writePanSize({ sides, unit }: Pan, written: number, longFirst: boolean): string {
  return writeSides(sides.length === 1 && written === 2 ? [...sides, ...sides] : sides, unit, longFirst);
}

/** A size that no usual pan of the kitchen comes near, in the kitchen's units; null where it stands in them already. */
export function plainSize(reading: PanReading, native: Kitchen, kitchen: Kitchen): string | null {
  const { capacity, unit, sides, longFirst, name } = reading;
  if (unit === 'count') return null;
  if (isLengthUnit(unit)) {
    if (unit === kitchen.writes.length && name === null) return null;
    return plainSides(sides, unit, kitchen, longFirst);
  }
  if (capacity === null) return null;
  if (isMassUnit(unit)) {
    // A pound of bread has another tin elsewhere.
    const base = baseOf(reading, native);
    return base === null
      ? massText(capacity.times(gramsIn(unit)), kitchen)
      : plainSides(base.sides, 'cm', kitchen, longFirst);
  }
  const each = isVolumeUnit(unit) ? millilitresIn(unit, native.units) : null;
  return each === null ? null : volumeText(capacity.times(each), reading.shape === 'tube', kitchen);
}

/** Sides in a kitchen's unit, in whole centimetres or half inches. */
export function plainSides(sides: readonly Exact[], unit: LengthUnit, kitchen: Kitchen, longFirst = false): string {
  const there = sides.map((side) => sideThere(side.times(centimetresIn(unit)), kitchen));
  return writeSides(there, kitchen.writes.length, longFirst);
}

function sideThere(cm: Exact, kitchen: Kitchen): Exact {
  return kitchen.writes.length === 'cm' ? cm.round() : inHalves(cm, centimetresIn('in'));
}

function massText(grams: Exact, kitchen: Kitchen): string {
  if (kitchen.writes.mass.includes('g')) return `${toStep(grams, 50)} g`;
  return `${inHalves(grams, gramsIn('lb'))} lb`;
}

/** A capacity in half quarts is near enough up to this; else it is said in cups. Common practice, no source. */
const quartsWithin = new Exact('0.06');

/** Dishes are known by quarts, ring tins by cups, ramekins by ounces, and all of them by litres elsewhere. */
function volumeText(millilitres: Exact, isTube: boolean, { units, writes, cups }: Kitchen): string {
  const { quart, cup, floz } = units;
  if (
    quart === undefined ||
    cup === undefined ||
    floz === undefined ||
    cups === null ||
    !writes.volume.includes('quart')
  )
    return metricText(millilitres);
  const quarts = inHalves(millilitres, quart);
  const near = quarts.times(quart).dividedBy(millilitres).minus(1).abs().lessThanOrEqualTo(quartsWithin);
  if (near && !isTube) return `${quarts}-quart`;
  if (millilitres.greaterThanOrEqualTo(cup.times('1.75'))) return `${millilitres.dividedBy(cup).round()}-cup`;
  return `${millilitres.dividedBy(floz).round()} fl oz`;
}

function inHalves(size: Exact, unit: Exact): Exact {
  return toStep(size.dividedBy(unit), '0.5');
}

/** `2.4 litre`; a ramekin in whole tens of millilitres. */
function metricText(millilitres: Exact): string {
  if (millilitres.lessThan(475)) return `${toStep(millilitres, 10)} ml`;
  return `${millilitres.dividedBy(1000).toDecimalPlaces(1)} litre`;
}
