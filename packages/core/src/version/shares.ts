import { dimensionOf } from '../amount/size.js';
import { statedIn } from '../amount/stated.js';
import { writeStated } from '../amount/write.js';
import { Exact } from '../exact.js';
import { type Foods, findFood } from '../food/find.js';
import type { StatedWeights, Weighed } from '../food/weigh.js';
import { soldIn } from '../kitchen/buy.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Line, Mention } from '../recipe/recipe.js';
import { type Conversion, convertAmount } from './convert-amount.js';
import { land, stateMeasure } from './land.js';
import type { VersionLine } from './version.js';
import { weighingOf, weighReading } from './weigh-line.js';

type AmountMention = Extract<Mention, { kind: 'amount' }>;

/** A part of a listed food that a step uses. */
interface Share {
  mention: AmountMention;
  /** Of the line's native amount. */
  fraction: Exact;
}

/** What the last share reads where no measure fits what is left. */
export const theRest = 'the rest';

/** Shares that together are this near to the whole line use it up. */
const usesUp = new Exact('0.02');

/**
 * The shares that a method takes of its listed foods, in a version.
 *
 * All shares of a line are landed on measures together: the last takes what the others leave, so that they add up to the line.
 *
 * @param lines The version's lines, of every part.
 * @param native The native lines that the shares were written against.
 * @returns The amount's words by mention key; null where the author's own stand: a cure, or an amount that cannot be converted.
 */
export function sharesOf(
  mentions: readonly AmountMention[],
  native: readonly Line[],
  lines: readonly VersionLine[],
  conversion: Conversion,
  foods: Foods,
): Map<string, string | null> {
  const texts = new Map<string, string | null>();
  const byLine = new Map<Line, Share[]>();
  for (const mention of mentions) {
    const line = listed(mention, native, conversion.native, foods);
    // A cure is shown as it was written everywhere, and so is any part of it.
    if ((line ?? mention).food?.role === 'cure') {
      texts.set(mention.key, null);
      continue;
    }
    const fraction = line === null ? null : fractionOf(mention, line, conversion);
    if (line === null || fraction === null) texts.set(mention.key, free(mention, conversion));
    else byLine.set(line, [...(byLine.get(line) ?? []), { mention, fraction }]);
  }
  for (const [line, shares] of byLine) {
    const version = lines.find((candidate) => candidate.line === line) ?? sameFood(line, lines);
    for (const [key, text] of landShares(shares, version, conversion)) texts.set(key, text);
  }
  return texts;
}

/** The line that `of` names: by its words first, then by its food. */
export function listed(mention: AmountMention, lines: readonly Line[], kitchen: Kitchen, foods: Foods): Line | null {
  const wanted = (mention.of ?? mention.reading.food?.text ?? '').toLowerCase();
  if (wanted === '') return null;
  const exact = lines.find((line) => line.reading.food?.text.toLowerCase() === wanted);
  if (exact !== undefined) return exact;
  const food = mention.food ?? findFood(wanted, foods, kitchen.id);
  return food === null ? null : (lines.find((line) => line.food === food) ?? null);
}

function sameFood(line: Line, lines: readonly VersionLine[]): VersionLine | null {
  return lines.find((candidate) => line.food !== null && candidate.line.food === line.food) ?? null;
}

function fractionOf(mention: AmountMention, line: Line, { native, ownWeights }: Conversion): Exact | null {
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

function ratioOf(part: Exact | null, whole: Exact | null): Exact | null {
  return part === null || whole === null || whole.isZero() ? null : part.dividedBy(whole);
}

/** An amount of a food that no line lists is converted by itself. */
function free(mention: AmountMention, conversion: Conversion): string | null {
  if (mention.reading.amounts.length === 0) return null;
  const stated = convertAmount(mention.reading, mention.food, conversion);
  return stated === null ? null : writeStated(stated, conversion.kitchen);
}

function landShares(
  shares: readonly Share[],
  version: VersionLine | null,
  conversion: Conversion,
): [string, string | null][] {
  if (version === null) return shares.map(({ mention }) => [mention.key, free(mention, conversion)]);
  const { kitchen } = conversion;
  const [only] = shares;
  const isWhole = shares.length === 1 && only?.fraction.minus(1).abs().lessThanOrEqualTo(usesUp);
  if (only !== undefined && isWhole && version.stated !== null && !isMixture(version, kitchen)) {
    return [[only.mention.key, writeStated(version.stated, kitchen)]];
  }
  const texts = isCounted(version) ? countShares(shares, version, kitchen) : measureShares(shares, version, kitchen);
  return shares.map(({ mention }, index) => [mention.key, texts[index] ?? free(mention, conversion)]);
}

function usesAllOf(shares: readonly Share[]): boolean {
  const total = shares.reduce((sum, { fraction }) => sum.plus(fraction), new Exact(0));
  return shares.length > 1 && total.minus(1).abs().lessThanOrEqualTo(usesUp);
}

/** Shares that are weighed or measured; null where no tool of the kitchen holds one. */
function measureShares(shares: readonly Share[], version: VersionLine, kitchen: Kitchen): (string | null)[] {
  let left: Weighed = version.chosen;
  return shares.map(({ fraction }, index) => {
    if (usesAllOf(shares) && index === shares.length - 1) return lastShare(left, version, kitchen);
    const landed = landShare(version.chosen, fraction, version, kitchen);
    if (landed === null) return null;
    left = minus(left, landed.size, landed.base, version.chosen);
    return landed.text;
  });
}

/** Several foods that together take another's place: a share of them is a share of the mixture. */
function isMixture({ line, food }: VersionLine, kitchen: Kitchen): boolean {
  const sold = line.food === null || line.food === food ? null : soldIn(line.food, kitchen.id);
  return sold !== null && !sold.sold && (sold.standIns[0]?.parts.length ?? 1) > 1;
}

function isCounted({ stated }: VersionLine): boolean {
  const unit = stated?.statements[0]?.[0]?.unit;
  return unit !== undefined && (stated?.pack !== null || dimensionOf(unit) === 'count');
}

interface LandedShare {
  text: string;
  size: Exact;
  base: 'g' | 'ml';
}

function landShare(whole: Weighed, fraction: Exact, version: VersionLine, kitchen: Kitchen): LandedShare | null {
  const unit = version.stated?.statements[0]?.[0]?.unit;
  const weighed = {
    grams: whole.grams?.times(fraction) ?? null,
    millilitres: whole.millilitres?.times(fraction) ?? null,
  };
  const mass = unit === 'g' || unit === 'kg' || unit === 'oz' || unit === 'lb';
  const landed = land({ weighed, dimension: mass ? 'mass' : 'volume', food: version.food, byWrapper: mass }, kitchen);
  if (landed === null) return null;
  const { size, base } = landed.measure;
  return { text: writeStated(stateMeasure(landed.measure, false), kitchen), size, base };
}

/** What the others leave, if a tool measures it, else in words. */
function lastShare(left: Weighed, version: VersionLine, kitchen: Kitchen): string {
  const landed = landShare(left, new Exact(1), version, kitchen);
  if (landed === null) return theRest;
  const size = landed.base === 'g' ? left.grams : left.millilitres;
  const exact = size?.minus(landed.size).abs().lessThanOrEqualTo(size.times('0.005')) ?? false;
  return exact ? landed.text : theRest;
}

function minus(left: Weighed, size: Exact, base: 'g' | 'ml', whole: Weighed): Weighed {
  const own = base === 'g' ? whole.grams : whole.millilitres;
  if (own === null || own.isZero()) return left;
  const part = size.dividedBy(own);
  return {
    grams: left.grams === null || whole.grams === null ? null : left.grams.minus(whole.grams.times(part)),
    millilitres:
      left.millilitres === null || whole.millilitres === null
        ? null
        : left.millilitres.minus(whole.millilitres.times(part)),
  };
}

/** Parts of a number of pieces or packs: 2 of 4 onions. The last takes what the others leave, as a number where there is one. */
function countShares(shares: readonly Share[], { stated }: VersionLine, kitchen: Kitchen): (string | null)[] {
  const term = stated?.statements[0]?.[0];
  if (stated === null || term === undefined) return [];
  let left = term.low;
  return shares.map(({ mention, fraction }, index) => {
    const isLast = usesAllOf(shares) && index === shares.length - 1;
    if (isLast && (term.high !== null || !left.isPositive() || left.isZero())) return theRest;
    // Half an onion is cut; nobody takes half of an egg where the author took whole ones.
    const step = new Exact(mention.reading.amounts[0]?.low.isInteger() ? 1 : '0.5');
    const count = isLast ? left : term.low.times(fraction).dividedBy(step).round().times(step);
    if (count.isZero()) return null;
    left = left.minus(count);
    return writeStated({ ...stated, statements: [[{ ...term, low: count, high: null }]], approx: false }, kitchen);
  });
}

/** Whether a mention states an amount at all. */
export function statesAmount(mention: AmountMention): boolean {
  return statedIn(mention.reading) !== null;
}
