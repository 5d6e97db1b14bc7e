import type { LengthReading, PanReading } from '../../amount/reading.js';
import { centimetresIn, isLengthUnit } from '../../amount/size.js';
import { Exact } from '../../exact.js';
import type { Kitchen, Pan } from '../kitchen.js';
import { holeWord, isMuffin, muffinPan } from './muffin-pan.js';
import { isNamedIn } from './named-pan.js';
import { areaOf, type Base, baseArea, baseOf, mayBeFlat, pansForBase } from './pan-base.js';
import { plainSize, writePanSize } from './pan-size.js';

/** A usual pan that may stand for one that is written. */
export interface PanOffer {
  pan: Pan;
  /** Its base over that of the written pan. */
  areaRatio: Exact;
  /** Its size as the kitchen writes it, `23 × 33 cm`, `12-hole`. */
  size: string;
  /** What takes the place of the author's size; null where the author's own words hold. */
  text: string | null;
}

/** A pan of a kitchen's usual ones that bakes the batch, or the author's size in that kitchen's units where none does. */
export interface PanChoice {
  pan: Pan | null;
  /** Size in words; null where the author's own words hold. */
  text: string | null;
  /** Base over the native pan's, less one; null where bases are not known. */
  areaDrift: Exact | null;
}

/** Bases further apart than this are another bake; then the plain size is named and left to the author. */
const nearEnough = new Exact('0.15');
/** A pan of the very size that is written. */
const verySame = new Exact('0.001');

/**
 * The usual pan of another kitchen with the nearest base, of the same shape.
 *
 * @param reading The pan as written.
 * @param native Kitchen of the writer: a trade name (`2 lb loaf tin`) means one of its pans.
 * @param kitchen Kitchen of the reader.
 * @param depth Rim of the pan, where it is said beside the reading.
 */
export function panFor(
  reading: PanReading,
  native: Kitchen,
  kitchen: Kitchen,
  depth: LengthReading | null = null,
): PanChoice {
  const [best] = byRim(pansLike(reading, native, kitchen), saidRim(reading, depth)).sort((a, b) =>
    off(a).comparedTo(off(b)),
  );
  if (best === undefined || off(best).greaterThan(nearEnough)) {
    return {
      pan: null,
      text: holesIn(reading, native, kitchen) ?? plainSize(reading, native, kitchen),
      areaDrift: null,
    };
  }
  return { pan: best.text === null ? null : best.pan, text: best.text, areaDrift: best.areaRatio.minus(1) };
}

function off({ areaRatio }: PanOffer): Exact {
  return areaRatio.minus(1).abs();
}

/** The author's rim in centimetres; null where none is said. */
export function saidRim(reading: PanReading, depth: LengthReading | null): Exact | null {
  if (depth !== null) return depth.low.times(centimetresIn(depth.unit));
  return reading.depth === null || !isLengthUnit(reading.unit)
    ? null
    : reading.depth.times(centimetresIn(reading.unit));
}

/** Pans in the order of their rims, the nearest first: of several with one base it is the one to choose. */
export function byRim(pans: readonly PanOffer[], rim: Exact | null): PanOffer[] {
  const off = ({ pan: { depth, unit } }: PanOffer): Exact =>
    rim === null || depth === null ? new Exact(0) : depth.times(centimetresIn(unit)).minus(rim).abs();
  return [...pans].sort((a, b) => off(a).comparedTo(off(b)));
}

/** Usual pans of a kitchen with the shape of one that is written; none where its base is not known. */
export function pansLike(reading: PanReading, native: Kitchen, kitchen: Kitchen): PanOffer[] {
  if (isMuffin(reading)) return muffinPans(reading, native, kitchen);
  const base = baseOf(reading, native);
  const area = base === null ? null : baseArea(base.sides, base.shape);
  if (base === null || area === null) return [];
  const pans = pansForBase(kitchen, base, mayBeFlat(reading, base, native));
  return pans.map((pan) => offerOf(pan, area, base, reading, kitchen));
}

function offerOf(pan: Pan, area: Exact, base: Base, reading: PanReading, kitchen: Kitchen): PanOffer {
  const areaRatio = areaOf(pan).dividedBy(area);
  // A pan that the kitchen has in the very size that is written keeps its words.
  const isSaid = reading.name === null || isNamedIn(reading.name, kitchen);
  const isOwn = isSaid && reading.unit === kitchen.writes.length && areaRatio.minus(1).abs().lessThan(verySame);
  const size = writePanSize(pan, base.sides.length, reading.longFirst);
  return { pan, areaRatio, size, text: isOwn ? null : size };
}

/** A muffin pan keeps the author's number of holes. */
function muffinPans(reading: PanReading, native: Kitchen, kitchen: Kitchen): PanOffer[] {
  const [written, here] = [muffinPan(reading, native), muffinPan(reading, kitchen)];
  if (written === undefined || here === undefined) return [];
  const areaRatio = areaOf(here).dividedBy(areaOf(written));
  const word = holeWord(here);
  const size = reading.capacity === null || word === null ? here.name : `${reading.capacity}-${word}`;
  return [{ pan: here, areaRatio, size, text: holesIn(reading, native, kitchen) }];
}

/** `12-hole` for `12-cup`; null for a pan whose holes are called the same there, are not counted, or that has none. */
function holesIn(reading: PanReading, native: Kitchen, kitchen: Kitchen): string | null {
  if (!isMuffin(reading) || reading.capacity === null) return null;
  const [written, here] = [native, kitchen].map((each) => holeWord(muffinPan(reading, each)));
  return here == null || here === written ? null : `${reading.capacity}-${here}`;
}
