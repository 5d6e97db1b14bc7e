import { dimensionOf, isMassUnit } from '../amount/size.js';
import { statedIn } from '../amount/stated.js';
import { writeStated } from '../amount/write.js';
import { Exact } from '../exact.js';
import { type Foods, findFood } from '../food/find.js';
import type { Food } from '../food/food.js';
import type { StatedWeights, Weighed } from '../food/weigh.js';
import { isUseWhole, soldIn } from '../kitchen/buy.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { lineCalled } from '../recipe/line-called.js';
import type { Line, Mention } from '../recipe/recipe.js';
import { type Conversion, convertAmount } from './convert-amount.js';
import { land, stateMeasure } from './land.js';
import { standInFor } from './stand-in-line.js';
import { nameWith } from './stand-in-words.js';
import { weightsStatedIn } from './stated-weights.js';
import type { VersionFood, VersionLine } from './version.js';
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

/** A share's amount of each food that serves its line in a version. */
export interface SharedFood {
  /** `120 ml`, `the rest`. */
  text: string;
  /** The version's name of what takes the listed food's place; null for the listed food itself. */
  name: string | null;
}

/** Shares that together are this near to the whole line use it up. */
const usesUp = new Exact('0.02');

/**
 * The shares that a method takes of its listed foods, in a version.
 *
 * All shares of a line are landed on measures together: the last takes what the others leave, so that they add up to the line.
 *
 * @param lines The version's lines, of every part.
 * @param native The native lines that the shares were written against.
 * @returns By mention key, one entry a food; empty where the author's own words stand: a cure, or an amount that cannot be converted.
 */
export function sharesOf(
  mentions: readonly AmountMention[],
  native: readonly Line[],
  lines: readonly VersionLine[],
  conversion: Conversion,
  foods: Foods,
): Map<string, SharedFood[]> {
  const texts = new Map<string, SharedFood[]>();
  const byLine = new Map<Line, Share[]>();
  const listedAs = listing(native, conversion.native, foods);
  for (const mention of mentions) {
    const line = listedAs(mention);
    // A cure is shown as it was written everywhere, and so is any part of it.
    if ((line ?? mention).food?.role === 'cure') {
      texts.set(mention.key, []);
      continue;
    }
    const fraction = line === null ? null : fractionOf(mention, line, conversion);
    const own = line === null ? undefined : byLine.get(line);
    if (line === null || fraction === null) texts.set(mention.key, free(mention, conversion, foods));
    else if (own === undefined) byLine.set(line, [{ mention, fraction }]);
    else own.push({ mention, fraction });
  }
  const versions = new Map(lines.map((each) => [each.line, each]));
  for (const [line, shares] of byLine) {
    const version = versions.get(line) ?? sameFood(line, lines);
    for (const [key, text] of landShares(shares, version, conversion, foods)) texts.set(key, text);
  }
  return texts;
}

/** Finds the line that an amount is a share of: by the words of `of` first, then by its food, then by the end of a name. */
export function listing(
  lines: readonly Line[],
  kitchen: Kitchen,
  foods: Foods,
): (mention: AmountMention) => Line | null {
  const byWords = new Map<string, Line>();
  const byFood = new Map<Food, Line>();
  // A share is of an amount: lines that state one come first.
  const stating = lines.filter(({ reading }) => reading.amounts.length > 0);
  for (const line of [...stating, ...lines.filter(({ reading }) => reading.amounts.length === 0)].reverse()) {
    const words = line.reading.food?.text.toLowerCase();
    if (words !== undefined) byWords.set(words, line);
    if (line.food !== null) byFood.set(line.food, line);
  }
  const short = lineCalled(stating);
  return (mention) => {
    const wanted = (mention.of ?? mention.reading.food?.text ?? '').toLowerCase();
    if (wanted === '') return null;
    const exact = byWords.get(wanted);
    if (exact !== undefined) return exact;
    const food = mention.food ?? findFood(wanted, foods, kitchen.id);
    return (food === null ? undefined : byFood.get(food)) ?? short(wanted);
  };
}

/** Nobody lists one food so often; beyond it nothing is said, so that a long post is read in linear time. */
const mostAlike = 20;

/**
 * Finds the line that an amount is said to be a share of and is more of than all lines of that food together; null where it is a share.
 *
 * @param lines Lines of one kitchen.
 */
export function oversizing(
  lines: readonly Line[],
  kitchen: Kitchen,
  foods: Foods,
): (mention: AmountMention) => Line | null {
  const listedAs = listing(lines, kitchen, foods);
  const alike = new Map<Food | string, Line[]>();
  const kindOf = ({ food, reading }: Line): Food | string => food ?? reading.food?.text.toLowerCase() ?? '';
  for (const line of lines) {
    const own = alike.get(kindOf(line));
    if (own === undefined) alike.set(kindOf(line), [line]);
    else own.push(line);
  }
  const conversion = { native: kitchen, ownWeights: weightsStatedIn(lines, kitchen) };
  return (mention) => {
    const line = listedAs(mention);
    const all = line === null ? [] : (alike.get(kindOf(line)) ?? []);
    // `2 cups flour, plus 2 tbsp for the board` lists more than its amount.
    if (all.length > mostAlike || all.some(({ reading }) => reading.further.length > 0)) return null;
    let listed = new Exact(0);
    for (const each of all) {
      const fraction = fractionOf(mention, each, conversion);
      if (fraction === null || !fraction.isPositive() || fraction.isZero()) return null;
      listed = listed.plus(mostOf(each).dividedBy(fraction));
    }
    return listed.times(usesUp.plus(1)).lessThan(1) ? line : null;
  };
}

/** The upper end of a line's range over its lower one. */
function mostOf({ reading: { amounts } }: Line): Exact {
  const [first] = amounts;
  return first === undefined || first.high === null || first.low.isZero()
    ? new Exact(1)
    : first.high.dividedBy(first.low);
}

function sameFood(line: Line, lines: readonly VersionLine[]): VersionLine | null {
  return lines.find((candidate) => line.food !== null && candidate.line.food === line.food) ?? null;
}

function fractionOf(
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

function ratioOf(part: Exact | null, whole: Exact | null): Exact | null {
  return part === null || whole === null || whole.isZero() ? null : part.dividedBy(whole);
}

/** An amount of a food that no line lists is converted by itself, or what takes the food's place. */
function free(mention: AmountMention, conversion: Conversion, foods: Foods): SharedFood[] {
  const { reading, food } = mention;
  if (reading.amounts.length === 0) return [];
  const { native, kitchen, ownWeights } = conversion;
  const amount = weighReading(reading, weighingOf(reading, food, native, ownWeights));
  const standIn = amount === null ? [] : standInFor(mention, amount, conversion, foods);
  if (standIn.length > 0) {
    return standIn.map(({ food: other, stated }) => ({
      text: writeStated(stated, kitchen),
      name: nameWith(stated, other, kitchen.id),
    }));
  }
  const stated = convertAmount(reading, food, conversion);
  return stated === null ? [] : [{ text: writeStated(stated, conversion.kitchen), name: null }];
}

function landShares(
  shares: readonly Share[],
  version: VersionLine | null,
  conversion: Conversion,
  larder: Foods,
): [string, SharedFood[]][] {
  if (version === null) return shares.map(({ mention }) => [mention.key, free(mention, conversion, larder)]);
  const { kitchen } = conversion;
  const foods = [version, ...version.also].map((own) => ({ own, texts: landOn(own, shares, kitchen) }));
  return shares.map(({ mention }, at): [string, SharedFood[]] => {
    const landed = foods.flatMap(({ own, texts }): SharedFood[] => {
      const text = texts[at] ?? null;
      if (text === null) return [];
      return [{ text, name: own.name }];
    });
    // The rest of one food of a mixture is the rest of all.
    const rest = landed.find(({ text }) => text === theRest);
    if (rest !== undefined) return [mention.key, [landed.length > 1 ? { ...rest, name: null } : rest]];
    return [mention.key, landed.length > 0 ? landed : free(mention, conversion, larder)];
  });
}

/** Every share of one food of a line; null where no tool of the kitchen holds one. */
function landOn(own: VersionFood, shares: readonly Share[], kitchen: Kitchen): (string | null)[] {
  const [only] = shares;
  const isWhole = shares.length === 1 && only?.fraction.minus(1).abs().lessThanOrEqualTo(usesUp);
  if (isWhole && own.stated !== null && own.portion === own.chosen) return [writeStated(own.stated, kitchen)];
  return isCounted(own, shares, kitchen) ? countShares(shares, own, kitchen) : measureShares(shares, own, kitchen);
}

function usesAllOf(shares: readonly Share[]): boolean {
  const total = shares.reduce((sum, { fraction }) => sum.plus(fraction), new Exact(0));
  return shares.length > 1 && total.minus(1).abs().lessThanOrEqualTo(usesUp);
}

/** Shares that are weighed or measured; null where no tool of the kitchen holds one. */
function measureShares(shares: readonly Share[], own: VersionFood, kitchen: Kitchen): (string | null)[] {
  const usesAll = usesAllOf(shares);
  let left: Weighed = own.portion;
  return shares.map(({ fraction }, index) => {
    if (usesAll && index === shares.length - 1) return lastShare(left, own, kitchen);
    const landed = landShare(own.portion, fraction, own, kitchen);
    if (landed === null) return null;
    left = minus(left, landed.size, landed.base, own.portion);
    return landed.text;
  });
}

/** Pieces, and packs that are used whole; of others halves, but of a carton of cream what a jug measures. */
function isCounted({ stated, food }: VersionFood, shares: readonly Share[], kitchen: Kitchen): boolean {
  const counted = stated?.statements[0]?.[0];
  if (stated === null || counted === undefined) return false;
  if (stated.pack === null || food === null) return stated.pack !== null || dimensionOf(counted.unit) === 'count';
  if (isUseWhole(soldIn(food, kitchen.id))) return shares.every((share) => isNearCount(share, counted.low));
  return !food.pours && shares.every(({ fraction }) => fraction.times(counted.low).times(2).isInteger());
}

/** A measured share of whole packs that is nearer to no number of them stays measured: a cup of tomatoes is not the tin. */
const nearCount = new Exact('0.1');

function isNearCount(share: Share, packs: Exact): boolean {
  const { reading } = share.mention;
  const unit = reading.amounts[0]?.unit;
  if (unit === undefined || reading.pack !== null || dimensionOf(unit) === 'count') return true;
  const wanted = packs.times(share.fraction);
  return stepped(wanted, stepOf(share)).minus(wanted).abs().lessThanOrEqualTo(wanted.times(nearCount));
}

interface LandedShare {
  text: string;
  size: Exact;
  base: 'g' | 'ml';
}

function landShare(whole: Weighed, fraction: Exact, version: VersionFood, kitchen: Kitchen): LandedShare | null {
  const unit = version.stated?.statements[0]?.[0]?.unit;
  const weighed = {
    grams: whole.grams?.times(fraction) ?? null,
    millilitres: whole.millilitres?.times(fraction) ?? null,
  };
  // Of a pack, and of what another line's amount holds, only the food says how it is measured.
  const isPacked = version.stated?.pack != null || version.stated === null;
  const mass = isPacked ? version.food?.pours === false : unit !== undefined && isMassUnit(unit);
  const landed = land({ weighed, dimension: mass ? 'mass' : 'volume', food: version.food, byWrapper: mass }, kitchen);
  if (landed === null) return null;
  const { size, base } = landed.measure;
  return { text: writeStated(stateMeasure(landed.measure, false), kitchen), size, base };
}

/** What the others leave, if a tool measures it, else in words. */
function lastShare(left: Weighed, version: VersionFood, kitchen: Kitchen): string {
  const landed = landShare(left, new Exact(1), version, kitchen);
  if (landed === null) return theRest;
  const size = landed.base === 'g' ? left.grams : left.millilitres;
  const exact = size?.minus(landed.size).abs().lessThanOrEqualTo(size.times('0.005')) ?? false;
  // The rest of an amount that serves other lines too would be theirs.
  return exact || version.portion !== version.chosen ? landed.text : theRest;
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
function countShares(shares: readonly Share[], own: VersionFood, kitchen: Kitchen): (string | null)[] {
  const { stated } = own;
  const term = stated?.statements[0]?.[0];
  if (stated === null || term === undefined) return [];
  const usesAll = usesAllOf(shares);
  const whole = term.low.times(ratioOf(own.portion.grams, own.chosen.grams) ?? 1);
  let left = whole;
  return shares.map((share, index) => {
    const { fraction } = share;
    const isLast = usesAll && index === shares.length - 1;
    if (isLast && (term.high !== null || !left.isPositive() || left.isZero())) return theRest;
    const step = stepOf(share);
    const count = isLast && whole.equals(term.low) ? left : stepped(isLast ? left : whole.times(fraction), step);
    if (count.isZero()) return null;
    left = left.minus(count);
    return writeStated({ ...stated, statements: [[{ ...term, low: count, high: null }]], approx: false }, kitchen);
  });
}

/** Half an onion is cut; nobody takes half of an egg where the author took whole ones. */
function stepOf({ mention }: Share): Exact {
  return new Exact(mention.reading.amounts[0]?.low.isInteger() ? 1 : '0.5');
}

function stepped(count: Exact, step: Exact): Exact {
  return count.dividedBy(step).round().times(step);
}

/** Whether a mention states an amount at all. */
export function statesAmount(mention: AmountMention): boolean {
  return statedIn(mention.reading) !== null;
}
