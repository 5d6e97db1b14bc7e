import { Exact, ratioOf, sumOf } from '../../exact.js';
import type { StatedWeights, Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import type { Conversion } from '../convert/convert-amount.js';
import { weighReading } from '../weigh/weigh-line.js';
import { weighingOf } from '../weigh/weighing.js';
import type { AmountMention } from './listing.js';

/** A part of a listed food that a step uses. */
export interface Share {
  mention: AmountMention;
  /** Of the line's native amount. */
  fraction: Exact;
}

/** Shares that together are this near to the whole line use it up. */
export const usesUp = new Exact('0.02');

/** What part of a line an annotated amount is; null where one of them cannot be weighed. */
export function fractionOf(
  mention: AmountMention,
  line: Line,
  { native, ownWeights }: Pick<Conversion, 'native' | 'ownWeights'>,
): Exact | null {
  const part = weighMention(mention, line, native, ownWeights);
  const whole = weighReading(line.reading, weighingOf(line.reading, line.food, native, ownWeights))?.low;
  if (whole === undefined) return null;
  const byUnits = sameUnit(mention, line);
  if (byUnits !== null) return byUnits;
  return ratioOf(part?.grams ?? null, whole.grams) ?? ratioOf(part?.millilitres ?? null, whole.millilitres);
}

/** `½ cup` of `1 cup` is a half whatever a cup weighs. */
function sameUnit(mention: AmountMention, line: Line): Exact | null {
  const part = mention.reading.amounts[0];
  const whole = line.reading.amounts[0];
  if (part === undefined || whole === undefined || part.unit !== whole.unit || line.reading.pack !== null) return null;
  return ratioOf(part.low, whole.low);
}

function weighMention(mention: AmountMention, line: Line, native: Kitchen, ownWeights: StatedWeights): Weighed | null {
  const reading = { ...mention.reading, prep: line.reading.prep };
  return weighReading(reading, weighingOf(reading, line.food, native, ownWeights))?.low ?? null;
}

/** Whether several shares together are the whole line. */
export function usesAllOf(shares: readonly Share[]): boolean {
  const total = sumOf(shares, ({ fraction }) => fraction);
  return shares.length > 1 && total.minus(1).abs().lessThanOrEqualTo(usesUp);
}
