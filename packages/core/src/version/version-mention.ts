import type { TemperatureReading } from '../amount/reading.js';
import { writeTerm } from '../amount/write.js';
import { Exact } from '../exact.js';
import { translateName } from '../food/name.js';
import { beyondDial, celsiusOf, type DialSetting, dialSettings, ovenHeat, writeOven } from '../kitchen/heat/oven.js';
import { type CoreTemperature, coreFor, isUnderdone, safeMinimum } from '../kitchen/heat/safe.js';
import { temperatureFor } from '../kitchen/heat/temperature.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { panFor } from '../kitchen/pan/pan.js';
import type { Mention } from '../recipe/recipe.js';
import { listed } from '../words/listed.js';
import type { Problem } from './problem.js';
import { theRest } from './share/measure-shares.js';
import type { SharedFood } from './share/shares.js';
import type { PlacedProblem, VersionMention } from './version.js';
import { amountEdits, applyEdits } from './words/edit.js';
import { lengthsInWords } from './words/length-in-words.js';
import { type PanHere, type PanMention, panCount, panInWords, rimOf } from './words/pan-in-words.js';
import { readingsInWords } from './words/readings-in-words.js';

/** An annotation as its author wrote it for a kitchen, judged there. */
export function writtenMention(mention: Mention, kitchen: Kitchen): VersionMention {
  const problems = [...aboutWords(mention, kitchen), ...outOfDial(mention, kitchen, kitchen)];
  const least = mention.kind === 'core' && mention.class !== null ? safeMinimum(kitchen, mention.class) : null;
  const pan = mention.kind === 'pan' ? { count: panCount(mention), rim: null } : null;
  return { mention, text: mention.text, foods: [], hold: least?.hold ?? '', pan, areaDrift: null, problems };
}

/**
 * An annotation in another kitchen.
 *
 * @param share What an `amount` comes to there, worked out together with the other shares of its line.
 */
export function convertedMention(
  mention: Mention,
  native: Kitchen,
  kitchen: Kitchen,
  share: readonly SharedFood[],
): VersionMention {
  if (mention.kind === 'pan') {
    const { pan, text, areaDrift } = panFor(mention.reading, native, kitchen, mention.depth);
    return panMention(mention, { pan, text, count: panCount(mention) }, areaDrift, native, kitchen);
  }
  const problems = [...aboutWords(mention, native), ...outOfDial(mention, native, kitchen)];
  const { text, hold, foods = [] } = inKitchen(mention, native, kitchen, share);
  return { mention, text: text ?? mention.text, foods, hold, pan: null, areaDrift: null, problems };
}

/** A pan annotation with the pan that takes its place. */
export function panMention(
  mention: PanMention,
  here: PanHere,
  areaDrift: Exact | null,
  native: Kitchen,
  kitchen: Kitchen,
): VersionMention {
  const problems = aboutWords(mention, native);
  const pan = { count: here.count, rim: rimOf(mention, here, kitchen) };
  return { mention, text: panInWords(mention, here, kitchen), foods: [], hold: '', pan, areaDrift, problems };
}

function inKitchen(
  mention: Exclude<Mention, PanMention>,
  native: Kitchen,
  kitchen: Kitchen,
  share: readonly SharedFood[],
): { text: string | null; hold: string; foods?: VersionMention['foods'] } {
  switch (mention.kind) {
    case 'amount':
      return { ...shareText(mention, share, kitchen), hold: '' };
    case 'oven': {
      const heat = ovenHeat(mention.settings, native);
      return { text: heat === null ? null : ovenText(mention, dialSettings(heat, kitchen)), hold: '' };
    }
    case 'core':
      return coreText(mention, native, kitchen);
    case 'temp':
      return { text: temperatureText(mention, native, kitchen), hold: '' };
    case 'length':
      return { text: lengthsInWords(mention.text, mention.readings, kitchen), hold: '' };
  }
}

/**
 * A share takes the place of the amount; other words of the annotation (`2 onions`, `½ cup cream`) are kept. Of several foods that take
 * the listed one's place each is named.
 */
function shareText(
  mention: AmountMention,
  share: readonly SharedFood[],
  kitchen: Kitchen,
): { text: string | null; foods: VersionMention['foods'] } {
  const { reading, food } = mention;
  const [first, ...others] = share;
  if (first === undefined) return { text: null, foods: [] };
  const named = reading.food !== null && reading.amountSpans.length > 0;
  if (others.length > 0) {
    const foods = share.map(({ text, name }) => ({
      text: `${text} ${name ?? reading.food?.text ?? mention.of ?? ''}`.trim(),
      name: name ?? mention.of ?? '',
    }));
    const all = listed(
      foods.map(({ text }) => text),
      'and',
    );
    if (!named || reading.food === null) return { text: all, foods };
    const gone = { ...reading.food.span, text: '' };
    return { text: applyEdits(mention.text, [...amountEdits(reading, all), gone]).trimEnd(), foods };
  }
  if (!named || reading.food === null) return { text: first.text, foods: [] };
  const name = first.name ?? (food === null ? null : translateName(food, reading.food.text, kitchen.id));
  const renamed = name === null ? [] : [{ ...reading.food.span, text: name }];
  const amount = first.text === theRest ? `${theRest} of the` : first.text;
  return { text: applyEdits(mention.text, [...amountEdits(reading, amount), ...renamed]), foods: [] };
}

type AmountMention = Extract<Mention, { kind: 'amount' }>;

/** All settings of a label are of one oven: those of the other kitchen stand where they stood. */
function ovenText({ text, settings }: OvenMention, here: readonly DialSetting[]): string {
  const said = settings.map(({ span }) => ({ reading: here, span }));
  return readingsInWords(text, said, writeOven, () => true);
}

function coreText(mention: CoreMention, native: Kitchen, kitchen: Kitchen): { text: string | null; hold: string } {
  const [first] = mention.readings;
  if (first === undefined) return { text: null, hold: '' };
  const core = (value: Exact, unit: 'C' | 'F'): CoreTemperature => coreFor(value, unit, kitchen, mention.class);
  const { hold } = core(first.low, unitOf(first, native));
  const write = (reading: TemperatureReading): string => {
    // Of two statements of one temperature (`165°F (75°C)`) the higher: it is never lowered.
    const same = mention.readings.filter((other) => other === reading || isAgain(reading, other, native));
    const lows = same.map((each) => core(each.low, unitOf(each, native)).value);
    const highs = same.flatMap((each) => (each.high === null ? [] : [core(each.high, unitOf(each, native)).value]));
    const [low, high] = [Exact.max(...lows), highs.length === 0 ? null : Exact.max(...highs)];
    return writeTerm({ low, high: high?.greaterThan(low) ? high : null, unit: kitchen.writes.temperature });
  };
  return { text: temperaturesInWords(mention, native, write), hold };
}

function temperatureText(mention: TempMention, native: Kitchen, kitchen: Kitchen): string {
  return temperaturesInWords(mention, native, (reading) => {
    const unit = unitOf(reading, native);
    const low = temperatureFor(reading.low, unit, kitchen);
    const high = reading.high === null ? null : temperatureFor(reading.high, unit, kitchen);
    return writeTerm({ low: low.value, high: high?.value ?? null, unit: low.unit });
  });
}

/** A second statement of a temperature is rounded to five degrees by some writers. Common practice, no source. */
const sameCelsius = 5;

/** Each temperature of a label where it stands; what says it again in another scale falls away. */
function temperaturesInWords(
  { text, readings }: CoreMention | TempMention,
  native: Kitchen,
  write: (reading: TemperatureReading) => string,
): string {
  const said = readings.map((reading) => ({ reading, span: reading.span }));
  return readingsInWords(text, said, write, (one, other) => isAgain(one, other, native));
}

function isAgain(one: TemperatureReading, other: TemperatureReading, native: Kitchen): boolean {
  const [first, second] = [one, other].map((each) => celsiusOf(each.low, unitOf(each, native)));
  if (first === undefined || second === undefined || unitOf(one, native) === unitOf(other, native)) return false;
  return first.minus(second).abs().lessThan(sameCelsius);
}

type OvenMention = Extract<Mention, { kind: 'oven' }>;
type CoreMention = Extract<Mention, { kind: 'core' }>;
type TempMention = Extract<Mention, { kind: 'temp' }>;

function unitOf(reading: TemperatureReading, native: Kitchen): 'C' | 'F' {
  return reading.impliedUnit ? native.writes.temperature : reading.unit;
}

function placed(mention: Mention, problem: Problem): PlacedProblem {
  return { problem, span: { start: 0, end: mention.text.length } };
}

/** What is wrong with an annotation wherever it is cooked. */
function aboutWords(mention: Mention, kitchen: Kitchen): PlacedProblem[] {
  return [...underdone(mention, kitchen), ...disagreeing(mention, kitchen), ...unread(mention)];
}

/** An oven that cannot be set so has the heat itself in its text, and never the end of its dial in silence. */
function outOfDial(mention: Mention, native: Kitchen, kitchen: Kitchen): PlacedProblem[] {
  const heat = mention.kind === 'oven' ? ovenHeat(mention.settings, native) : null;
  const beyond = heat === null ? null : beyondDial(heat, kitchen);
  return beyond === null ? [] : [placed(mention, { rule: 'oven-beyond-dial', text: mention.text, beyond })];
}

/** Never lifted in silence: the author has to write the safe temperature. */
function underdone(mention: Mention, kitchen: Kitchen): PlacedProblem[] {
  if (mention.kind !== 'core' || mention.class === null) return [];
  const minimum = safeMinimum(kitchen, mention.class);
  if (minimum === null) return [];
  const low = mention.readings.find((reading) => isUnderdone(reading.low, unitOf(reading, kitchen), minimum));
  if (low === undefined) return [];
  const safe = coreFor(minimum.temperature, minimum.unit, kitchen, mention.class);
  const write = writeTerm({ low: safe.value, high: null, unit: safe.unit });
  return [placed(mention, { rule: 'underdone', text: mention.text, minimum, write })];
}

function disagreeing(mention: Mention, kitchen: Kitchen): PlacedProblem[] {
  if (mention.kind !== 'oven') return [];
  const heat = ovenHeat(mention.settings, kitchen);
  if (heat?.disagreement == null) return [];
  const { first, second } = heat.disagreement;
  const words = ({ span }: typeof first): string => mention.text.slice(span.start, span.end).trim();
  return [placed(mention, { rule: 'oven-disagrees', text: mention.text, first: words(first), second: words(second) })];
}

function unread(mention: Mention): PlacedProblem[] {
  if (mention.kind !== 'amount' || mention.reading.doubt === null) return [];
  const { text, because, instead } = mention.reading.doubt;
  return [placed(mention, { rule: 'unreadable-amount', text, because, instead })];
}
