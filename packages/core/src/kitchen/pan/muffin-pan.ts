import type { PanReading } from '../../amount/reading.js';
import { centimetresIn } from '../../amount/size.js';
import type { Kitchen, Pan } from '../kitchen.js';

/** Holes narrower than this are those of a mini muffin pan, in centimetres. Common practice, no source. */
const miniUnder = 5.5;

/** Whether a reading is of a pan with holes, which is known by their number and never by a volume. */
export function isMuffin({ shape }: PanReading): boolean {
  return shape === 'muffin' || shape === 'mini-muffin';
}

/** The usual muffin pan of a kitchen, with large holes or with mini ones; undefined where it has none. */
export function muffinPan(reading: PanReading, kitchen: Kitchen): Pan | undefined {
  const isMini = ({ sides, unit }: Pan): boolean => {
    const [width] = sides;
    return width?.times(centimetresIn(unit)).lessThan(miniUnder) ?? false;
  };
  return kitchen.pans.find((pan) => pan.shape === 'muffin' && isMini(pan) === (reading.shape === 'mini-muffin'));
}

/** What a hole of it is called there: the `cup` of `12-cup muffin pan`, the `hole` of `12-hole muffin tin`. */
export function holeWord(pan: Pan | undefined): string | null {
  return pan === undefined ? null : (/\d-(\p{L}+)/u.exec(pan.name)?.[1] ?? null);
}
