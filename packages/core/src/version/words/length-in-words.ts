import type { LengthReading } from '../../amount/reading.js';
import { centimetresIn } from '../../amount/size.js';
import type { LengthUnit } from '../../amount/unit.js';
import { writeNumber, writeTerm } from '../../amount/write.js';
import { Exact } from '../../exact.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { lengthFor } from '../../kitchen/measure/length.js';
import { readingsInWords } from './readings-in-words.js';

/** A second statement of a length is within this of the first. Common practice, no source. */
const same = new Exact('0.1');

/** A label's words with each of its lengths as the kitchen reads it. A unit that is read there is kept; what says a length again falls away. */
export function lengthsInWords(text: string, readings: readonly LengthReading[], kitchen: Kitchen): string {
  const isRead = ({ unit }: LengthReading): boolean => isInch(unit) === (kitchen.writes.length === 'in');
  if (readings.every(isRead)) return text;
  const said = readings.map((reading) => ({ reading, span: reading.span }));
  const write = (reading: LengthReading): string =>
    isRead(reading) ? text.slice(reading.span.start, reading.span.end) : writeLength(reading, text, kitchen);
  return readingsInWords(text, said, write, isAgain);
}

function isInch(unit: LengthUnit): boolean {
  return unit === 'in';
}

function isAgain(one: LengthReading, other: LengthReading): boolean {
  const [first, second] = [one, other].map(({ low, unit }) => low.times(centimetresIn(unit)));
  if (first === undefined || second === undefined || isInch(one.unit) === isInch(other.unit)) return false;
  return first.dividedBy(second).minus(1).abs().lessThanOrEqualTo(same);
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
