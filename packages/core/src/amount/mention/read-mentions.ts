import type { Exact } from '../../exact.js';
import { readQuantity } from '../quantity/quantity.js';
import { readUnit } from '../quantity/unit-reading.js';
import type { Span } from '../reading.js';
import { isLengthUnit, isMassUnit, isVolumeUnit } from '../size.js';
import { isDash } from '../token/dash.js';
import type { Tokens } from '../token/token.js';
import { tokenize } from '../token/tokenize.js';
import type { LengthUnit, MassUnit, TemperatureUnit, VolumeUnit } from '../unit.js';
import { likelyUnit, readDegrees } from './degrees.js';
import { HeatWatch } from './heat-watch.js';
import { readGas } from './read-oven.js';
import { type ReadSize, readSizeAt } from './read-size.js';
import { isNamedBySize } from './vessel-size.js';

/** A temperature, pan size or length in a line of running text. */
export interface FoundMention {
  /** `oven`: an oven's setting. `core`: inside of the food. `temp`: any other. `pan`: size of a vessel. `length`: any other length. */
  kind: 'oven' | 'core' | 'temp' | 'pan' | 'length';
  low: Exact;
  /** Upper end of a range, or the longer of two sides (equal to `low` for a square). */
  high: Exact | null;
  unit: TemperatureUnit | LengthUnit | VolumeUnit | MassUnit;
  /** No letter was written: the unit is the kitchen's own, and `unit` a guess. */
  impliedUnit: boolean;
  span: Span;
}

/**
 * Finds the temperatures, pan sizes and lengths in a line of running text, one for each value stated: `350°F (175°C)` gives two.
 *
 * @param line A line of a method or an introduction; Markdown in it is passed over.
 * @returns In the order of the text.
 */
export function readMentions(line: string): FoundMention[] {
  const tokens = tokenize(line, { markdown: true });
  const heat = new HeatWatch(tokens);
  const mentions: FoundMention[] = [];
  let at = 0;
  while (at < tokens.length) {
    heat.pass(at);
    const read =
      readSetting(tokens, at) ??
      readHeat(tokens, at, heat) ??
      readVessel(tokens, at) ??
      readSides(tokens, at) ??
      readLengthOf(tokens, at);
    if (read !== null) mentions.push(...read.mentions);
    for (let index = at + 1; index < (read?.next ?? at); index += 1) heat.pass(index);
    at = read?.next ?? at + 1;
  }
  return mentions;
}

interface Found {
  mentions: FoundMention[];
  next: number;
}

/** `gas mark 5` */
function readSetting(tokens: Tokens, at: number): Found | null {
  const gas = readGas(tokens, at);
  if (gas === null) return null;
  const { low, high } = gas;
  return {
    mentions: [{ kind: 'oven', low, high, unit: 'gas', impliedUnit: false, span: tokens.span(at, gas.next) }],
    next: gas.next,
  };
}

/** Below this a bare `C` is a cup, and bare degrees are an angle or a dial. */
const coldestBare = 25;
const coldestImplied = 100;
const coolingWords = new Set(['at', 'below', 'under']);

function readHeat(tokens: Tokens, at: number, heat: HeatWatch): Found | null {
  if (!startsNumber(tokens, at)) return null;
  const bare = readBareOven(tokens, at);
  if (bare !== null) return bare;
  const degrees = readDegrees(tokens, at);
  if (degrees === null || !degrees.signed) return null;
  const { low, high, unit, next } = degrees;
  const signed =
    tokens.text.slice(tokens.at(at).start, tokens.at(next - 1).end).search(/[°º˚∘℃℉]|deg|cels|fahr|centi/iu) >= 0;
  if (unit === null && (low.lt(coldestImplied) || heat.isAngle(at, next))) return null;
  if (!signed && low.lt(coldestBare) && !coolingWords.has(tokens.word(at - 1))) return null;
  const scale = unit ?? likelyUnit(low);
  const celsius = scale === 'F' ? low.minus(32).times(5).div(9).toNumber() : low.toNumber();
  const kind = heat.kindAt(next, celsius);
  return {
    mentions: [{ kind, low, high, unit: scale, impliedUnit: unit === null, span: tokens.span(at, next) }],
    next,
  };
}

const bakingWords = new Set([
  'bake',
  'baked',
  'baking',
  'roast',
  'roasted',
  'oven',
  'preheat',
  'preheated',
  'preheating',
]);
const ovenWordsBehind = new Set(['for', 'until', 'and', 'then', '.', ',', ';', ')', '']);

/** `Bake at 375 for 25 minutes`, `Preheat the oven to 425.`: no degree sign, and yet nothing else is meant. */
function readBareOven(tokens: Tokens, at: number): Found | null {
  const { value, form } = tokens.at(at);
  if (value === null || form !== 'whole' || value.lt(150) || value.gt(500) || !value.mod(5).isZero()) return null;
  const joint = tokens.word(at - 1);
  if ((joint !== 'at' && joint !== 'to') || !ovenWordsBehind.has(tokens.word(at + 1))) return null;
  const near = 4;
  const said = tokens.list.slice(Math.max(0, at - 1 - near), at - 1).some(({ lower }) => bakingWords.has(lower));
  if (!said) return null;
  const unit = likelyUnit(value);
  return {
    mentions: [{ kind: 'oven', low: value, high: null, unit, impliedUnit: true, span: tokens.span(at, at + 1) }],
    next: at + 1,
  };
}

/** A number that is not the tail of another one, and is no list marker. */
function startsNumber(tokens: Tokens, at: number): boolean {
  const token = tokens.at(at);
  return token.kind === 'number' || (isDash(token.lower) && tokens.at(at + 1).kind === 'number');
}

/** `9 x 13 inch pan`, `12-inch (~30 centimeter) sauté pan`, `2 quart glass jar`, `medium (2 quart/liter) baking pan`, `pot (5 1/2 Qt)` */
function readVessel(tokens: Tokens, at: number): Found | null {
  const size = tokens.at(at).kind === 'number' ? readSizeAt(tokens, at) : null;
  if (size === null || !isNamedBySize(tokens, size)) return null;
  const { low, high } = sidesOf(size);
  const { unit } = size;
  if (!isLengthUnit(unit) && !isVolumeUnit(unit) && !(isMassUnit(unit) && isLoaf(tokens, size.next))) return null;
  const base = { kind: 'pan', low, high, impliedUnit: false } as const;
  const mentions: FoundMention[] = [{ ...base, unit, span: tokens.span(at, size.next) }];
  const other = tokens.word(size.next) === '/' ? readUnit(tokens, size.next + 1, { afterNumber: true }) : null;
  if (other === null || !isVolumeUnit(other.unit)) return { mentions, next: size.next };
  mentions.push({ ...base, unit: other.unit, span: tokens.span(size.next + 1, other.next) });
  return { mentions, next: other.next };
}

/** `900 g loaf tin`, `900g/2lb loaf tin`, `900 g (2 lb) loaf tin` */
function isLoaf(tokens: Tokens, behind: number): boolean {
  const partner = tokens.partner[behind] ?? -1;
  const again = tokens.word(behind) === '/' ? readSizeAt(tokens, behind + 1)?.next : undefined;
  const at = partner > behind ? partner + 1 : (again ?? behind);
  return tokens.word(at) === 'loaf' || tokens.word(at + 1) === 'loaf';
}

/** Two sides, the shorter first; one measure keeps its range. */
function sidesOf({ measures }: ReadSize): { low: Exact; high: Exact | null } {
  const [first, second] = measures;
  if (first === undefined) throw new Error('A size has a measure.');
  if (second === undefined) return first;
  return first.low.lte(second.low) ? { low: first.low, high: second.low } : { low: second.low, high: first.low };
}

/** `8 by 12 inches`, `2cm x 2cm`, `10" x 2"` */
function readSides(tokens: Tokens, at: number): Found | null {
  const size = tokens.at(at).kind === 'number' ? readSizeAt(tokens, at) : null;
  if (size === null || size.measures.length < 2 || !isLengthUnit(size.unit)) return null;
  const { low, high } = sidesOf(size);
  return {
    mentions: [{ kind: 'length', low, high, unit: size.unit, impliedUnit: false, span: tokens.span(at, size.next) }],
    next: size.next,
  };
}

/** `2-inch`, `half inch`, `3/4 of an inch`, `every inch or so` */
function readLengthOf(tokens: Tokens, at: number): Found | null {
  const read = readQuantity(tokens, at);
  // Words for about are passed first, so that the number behind them can be the side of a pan.
  if (read === null || read.first > at || read.unit === null || !isLengthUnit(read.unit)) return null;
  if (read.range?.reversed === true) return null;
  const { low, high, unit, next, first } = read;
  return {
    mentions: [{ kind: 'length', low, high, unit, impliedUnit: false, span: tokens.span(first, next) }],
    next,
  };
}
