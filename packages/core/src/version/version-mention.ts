import type { TemperatureReading } from '../amount/reading.js';
import { writeTerm } from '../amount/write.js';
import { Exact } from '../exact.js';
import { celsiusOf, type DialSetting, dialSettings, ovenHeat, writeOven } from '../kitchen/heat/oven.js';
import { type CoreTemperature, coreFor, safeMinimum } from '../kitchen/heat/safe.js';
import { temperatureFor } from '../kitchen/heat/temperature.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { panFor } from '../kitchen/pan/pan.js';
import type { Mention } from '../recipe/recipe.js';
import { aboutWords, outOfDial, unitOf } from './judge/judge-mention.js';
import { shareText } from './share/share-in-words.js';
import type { SharedFood } from './share/shares.js';
import type { VersionMention } from './version.js';
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
