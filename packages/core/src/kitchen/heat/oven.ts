import type { OvenSetting } from '../../amount/reading.js';
import { Exact, toStep } from '../../exact.js';
import type { Kitchen } from '../kitchen.js';

/** One oven's heat in several words: conventional first. */
export interface OvenHeat {
  /** Conventional heat, °C, exact; the lower end of a range. */
  celsius: Exact;
  highCelsius: Exact | null;
  /** Two settings that say different things, further apart than a dial step. */
  disagreement: { first: OvenSetting; second: OvenSetting } | null;
}

/** A dial setting of a kitchen, or the heat that is asked for where its dial does not reach it. */
export interface DialSetting {
  kind: 'conventional' | 'fan' | 'gas';
  low: string;
  high: string | null;
  unit: 'C' | 'F' | 'gas';
  /** The end of the dial that the heat is beyond: no oven is set so, and the dial's last mark is another heat. Null for a mark. */
  beyond: BeyondDial['end'] | null;
  /** The fan's own setting would be below the dial: only without the fan is it this heat. */
  withoutFan: boolean;
}

/** Degrees Celsius, exact. */
export function celsiusOf(value: Exact, unit: 'C' | 'F'): Exact {
  return unit === 'C' ? value : value.minus(32).times(5).dividedBy(9);
}

/** Degrees Fahrenheit, exact. */
export function fahrenheitOf(value: Exact, unit: 'C' | 'F'): Exact {
  return unit === 'F' ? value : value.times(9).dividedBy(5).plus(32);
}

/**
 * The conventional heat that an oven's settings mean in the kitchen where they were written. A fan-only setting is first raised by
 * that kitchen's fan difference.
 *
 * @returns Null where no setting can be read (no settings, an unknown gas mark).
 */
export function ovenHeat(settings: readonly OvenSetting[], kitchen: Kitchen): OvenHeat | null {
  const read = settings.flatMap((setting) => {
    const low = conventionalCelsius(setting, setting.low, kitchen);
    const high = setting.high === null ? null : conventionalCelsius(setting, setting.high, kitchen);
    return low === null ? [] : [{ setting, low, high }];
  });
  const first =
    read.find(({ setting }) => !setting.fan && setting.unit !== 'gas') ??
    read.find(({ setting }) => !setting.fan) ??
    read[0];
  if (first === undefined) return null;
  const other = read.find(({ low }) => low.minus(first.low).abs().greaterThan(dialStepCelsius(kitchen)));
  const disagreement = other === undefined ? null : { first: first.setting, second: other.setting };
  return { celsius: first.low, highCelsius: first.high, disagreement };
}

function conventionalCelsius(setting: OvenSetting, value: Exact, kitchen: Kitchen): Exact | null {
  if (setting.unit === 'gas') return gasCelsius(value, kitchen);
  const unit = setting.impliedUnit ? kitchen.oven.unit : setting.unit;
  const celsius = celsiusOf(value, unit);
  return setting.fan ? celsius.plus(differenceCelsius(kitchen)) : celsius;
}

/** Gas marks mean one heat each: °F = 250 + 25 × mark, below mark 1 each halving is 25 °F less. */
function gasCelsius(mark: Exact, kitchen: Kitchen): Exact | null {
  const listed = kitchen.oven.gas.find((gas) => markValue(gas.mark).equals(mark));
  if (listed !== undefined) return listed.celsius;
  if (mark.greaterThan(10)) return null;
  if (mark.equals('0.5')) return celsiusOf(new Exact(250), 'F');
  if (mark.equals('0.25')) return celsiusOf(new Exact(225), 'F');
  return mark.lessThan(1) ? null : celsiusOf(mark.times(25).plus(250), 'F');
}

function markValue(mark: string): Exact {
  const [numerator = '0', denominator = '1'] = mark.split('/');
  return new Exact(numerator).dividedBy(denominator);
}

/** A kitchen's dial step as a difference in °C. */
function dialStepCelsius(kitchen: Kitchen): Exact {
  return kitchen.oven.unit === 'C' ? kitchen.oven.step : kitchen.oven.step.times(5).dividedBy(9);
}

function differenceCelsius(kitchen: Kitchen): Exact {
  const { fanDifference, unit } = kitchen.oven;
  return unit === 'C' ? fanDifference : fanDifference.times(5).dividedBy(9);
}

/**
 * The nearest settings of a kitchen's dial, in the order in which a recipe there states them. A heat that is further from the dial's end
 * than a step stands as it is, in whole degrees; a fan setting or gas mark that is so far off is left out.
 */
export function dialSettings(heat: OvenHeat, kitchen: Kitchen): DialSetting[] {
  const { states, fanDifference } = kitchen.oven;
  const [none, fan] = [new Exact(0), fanDifference].map((lowered) => endBeyond(heat, kitchen, lowered));
  const withoutFan = none === null && fan === 'coolest' && states.includes('fan');
  return states.flatMap((kind): DialSetting[] => {
    if (kind === 'gas') return none === 'hottest' ? [] : gasSetting(heat, kitchen);
    if (kind === 'fan' && fan !== null) return [];
    const set = (celsius: Exact): Exact => onDial(celsius, kind, kitchen);
    const low = set(heat.celsius);
    const high = heat.highCelsius === null ? null : set(heat.highCelsius);
    const isRange = high !== null && !high.equals(low);
    const beyond = kind === 'fan' ? null : (none ?? null);
    const unit = kitchen.oven.unit;
    return [{ kind, low: low.toString(), high: isRange ? high.toString() : null, unit, beyond, withoutFan }];
  });
}

/**
 * The mark nearest to a conventional heat, on the dial as it is set with a fan or without: its ends are the same. Beyond them by more than
 * a step it is the heat itself, to the nearest degree.
 */
function onDial(celsius: Exact, kind: 'conventional' | 'fan', { oven }: Kitchen): Exact {
  const { step, min, max, fanDifference } = oven;
  const value = inDial(celsius, oven);
  if (kind === 'conventional' && endOf(value, oven) !== null) return value.round();
  const nearest = Exact.min(toStep(value, step), max.plus(fanDifference));
  // A dial may begin or end between two marks of its step: 165 °F is nearer to 170 than to 175.
  const ends = kind === 'fan' ? [] : [min, max];
  return [kind === 'fan' ? nearest.minus(fanDifference) : nearest, ...ends]
    .map((mark) => Exact.min(Exact.max(mark, min), max))
    .reduce((best, mark) => (value.minus(mark).abs().lessThan(value.minus(best).abs()) ? mark : best));
}

function inDial(celsius: Exact, { unit }: Kitchen['oven']): Exact {
  return unit === 'C' ? celsius : fahrenheitOf(celsius, 'C');
}

/** A heat that a kitchen's dial does not reach. */
export interface BeyondDial {
  end: 'hottest' | 'coolest';
  /** The dial's last mark and the heat that is asked for, whole degrees of the dial's unit. */
  mark: string;
  asked: string;
  unit: 'C' | 'F';
}

/** Whether a heat is further from the end of a kitchen's dial than a step; null for one that it can be set to. */
export function beyondDial(heat: OvenHeat, kitchen: Kitchen): BeyondDial | null {
  const { min, max, unit } = kitchen.oven;
  const end = endBeyond(heat, kitchen, new Exact(0));
  if (end === null) return null;
  const asked = inDial(end === 'hottest' ? (heat.highCelsius ?? heat.celsius) : heat.celsius, kitchen.oven);
  return { end, mark: (end === 'hottest' ? max : min).toString(), asked: asked.round().toString(), unit };
}

/**
 * The end of the dial that a heat or either end of its range is beyond by more than a step.
 *
 * @param lowered Degrees of the dial that it is set lower, as with a fan.
 */
function endBeyond({ celsius, highCelsius }: OvenHeat, { oven }: Kitchen, lowered: Exact): BeyondDial['end'] | null {
  const [low, high] = [celsius, highCelsius ?? celsius].map((each) => endOf(inDial(each, oven).minus(lowered), oven));
  return high === 'hottest' ? high : (low ?? null);
}

function endOf(value: Exact, { min, max, step }: Kitchen['oven']): BeyondDial['end'] | null {
  if (value.greaterThan(max.plus(step))) return 'hottest';
  return value.lessThan(min.minus(step)) ? 'coolest' : null;
}

function gasSetting(heat: OvenHeat, kitchen: Kitchen): DialSetting[] {
  // Between two marks it is the higher: 275 °F, 135 °C, is gas 1 in every table, and 160 °C is gas 3.
  const nearest = (celsius: Exact): string | undefined =>
    kitchen.oven.gas
      .map((gas) => ({ mark: gas.mark, off: gas.celsius.minus(celsius) }))
      .sort((a, b) => a.off.abs().comparedTo(b.off.abs()) || b.off.comparedTo(a.off))[0]?.mark;
  // No mark is as cool as a drying oven; the hottest one serves as far as the dial's end does.
  const near = dialStepCelsius(kitchen).times('1.5');
  if (kitchen.oven.gas.every(({ celsius }) => celsius.minus(heat.celsius).greaterThan(near))) return [];
  const low = nearest(heat.celsius);
  const high = heat.highCelsius === null ? undefined : nearest(heat.highCelsius);
  if (low === undefined) return [];
  const isRange = high !== undefined && high !== low;
  return [{ kind: 'gas', low, high: isRange ? high : null, unit: 'gas', beyond: null, withoutFan: false }];
}

/** What is said of a heat that no dial there shows. In words: a second number would be read as another setting. */
const beyondWords = { hottest: ' (hotter than the dial goes)', coolest: ' (cooler than the dial goes)' } as const;

/** Settings as a recipe there writes them: `200°C/180°C fan/gas 6`; `95°F (cooler than the dial goes)` where they are none. */
export function writeOven(settings: readonly DialSetting[]): string {
  return settings
    .map(({ kind, low, high, unit, beyond, withoutFan }) => {
      const value = high === null ? low : `${low}–${high}`;
      if (unit === 'gas') return `gas ${value}`;
      const said = beyond === null ? (withoutFan ? ' (without the fan)' : '') : beyondWords[beyond];
      return `${value}°${unit}${kind === 'fan' ? ' fan' : said}`;
    })
    .join('/');
}
