import type { LengthReading } from '../../amount/reading.js';
import { writeNumber, writeTerm } from '../../amount/write.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { isLengthRead, isSameLength, lengthFor } from '../../kitchen/measure/length.js';
import { readingsInWords } from './readings-in-words.js';

/**
 * A label's words with each of its lengths as the kitchen reads it. A unit that is read there is kept, and of two statements of a length
 * the one in it.
 */
export function lengthsInWords(text: string, readings: readonly LengthReading[], kitchen: Kitchen): string {
  const isRead = ({ unit }: LengthReading): boolean => isLengthRead(unit, kitchen);
  if (readings.every(isRead)) return text;
  const said = readings.map((reading) => ({ reading, span: reading.span }));
  const own = ({ span }: LengthReading): string => text.slice(span.start, span.end);
  const write = (reading: LengthReading): string => {
    const again = readings[readings.indexOf(reading) + 1];
    const stated = again !== undefined && isSameLength(reading, again) && isRead(again) ? again : reading;
    return isRead(stated) ? own(stated) : writeLength(stated, text, kitchen);
  };
  return readingsInWords(text, said, write, isSameLength);
}

/** `2.5 by 10 cm`, `6 mm × 4 cm`: with one unit where all sides have the same, and joined as the author joins them. */
function writeLength(reading: LengthReading, text: string, kitchen: Kitchen): string {
  const { low, high, sides, unit, span } = reading;
  const all = [{ low, high }, ...sides].map((side) => ({
    from: lengthFor(side.low, unit, kitchen),
    to: side.high === null ? null : lengthFor(side.high, unit, kitchen),
  }));
  const units = new Set(all.flatMap(({ from, to }) => [from.unit, to?.unit ?? from.unit]));
  const joint = /\bby\b/.test(text.slice(span.start, span.end)) ? ' by ' : ' × ';
  return all
    .map(({ from, to }, at) => {
      if (to !== null && to.unit !== from.unit) return `${writeTerm(from)} to ${writeTerm(to)}`;
      const isBare = units.size === 1 && to === null && at < all.length - 1;
      return isBare ? writeNumber(from.low, from.unit) : writeTerm({ ...from, high: to?.low ?? null });
    })
    .join(joint);
}
