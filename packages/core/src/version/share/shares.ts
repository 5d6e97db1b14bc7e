import { statedIn } from '../../amount/stated.js';
import { writeStated } from '../../amount/write.js';
import type { Foods } from '../../food/find/find.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import { type Conversion, convertAmount } from '../convert/convert-amount.js';
import { standInFor } from '../line/stand-in-line.js';
import type { VersionFood, VersionLine } from '../version.js';
import { weighReading } from '../weigh/weigh-line.js';
import { weighingOf } from '../weigh/weighing.js';
import { nameWith } from '../words/stand-in-words.js';
import { countShares, isCounted } from './count-shares.js';
import { type AmountMention, listing } from './listing.js';
import { measureShares, theRest } from './measure-shares.js';
import { fractionOf, type Share, usesUp } from './share-of-line.js';

/** A share's amount of each food that serves its line in a version. */
export interface SharedFood {
  /** `120 ml`, `the rest`. */
  text: string;
  /** The version's name of what takes the listed food's place; null for the listed food itself. */
  name: string | null;
}

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

function sameFood(line: Line, lines: readonly VersionLine[]): VersionLine | null {
  return lines.find((candidate) => line.food !== null && candidate.line.food === line.food) ?? null;
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

/** Whether a mention states an amount at all. */
export function statesAmount(mention: AmountMention): boolean {
  return statedIn(mention.reading) !== null;
}
