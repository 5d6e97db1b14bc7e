import type { OvenSetting } from '../../amount/reading.js';
import { Exact } from '../../exact.js';
import type { Kitchen } from '../kitchen.js';

/** One oven's heat in several words: conventional first. */
export interface OvenHeat {
  /** Conventional heat, °C, exact; the lower end of a range. */
  celsius: Exact;
  highCelsius: Exact | null;
  /** Two settings that say different things, further apart than a dial step. */
  disagreement: { first: OvenSetting; second: OvenSetting } | null;
}

/** A dial setting of a kitchen. */
export interface DialSetting {
  kind: 'conventional' | 'fan' | 'gas';
  low: string;
  high: string | null;
  unit: 'C' | 'F' | 'gas';
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
  if (mark.lessThan(1) || mark.greaterThan(10)) return null;
  return celsiusOf(mark.times(25).plus(250), 'F');
}

function markValue(mark: string): Exact {
  const [numerator = '0', denominator = '1'] = mark.split('/');
  return new Exact(numerator).dividedBy(denominator);
}

/** A kitchen's dial step as a difference in °C. */
export function dialStepCelsius(kitchen: Kitchen): Exact {
  return kitchen.oven.unit === 'C' ? kitchen.oven.step : kitchen.oven.step.times(5).dividedBy(9);
}

function differenceCelsius(kitchen: Kitchen): Exact {
  const { fanDifference, unit } = kitchen.oven;
  return unit === 'C' ? fanDifference : fanDifference.times(5).dividedBy(9);
}

/** The nearest settings of a kitchen's dial, in the order in which a recipe there states them. */
export function dialSettings(heat: OvenHeat, kitchen: Kitchen): DialSetting[] {
  return kitchen.oven.states.flatMap((kind): DialSetting[] => {
    if (kind === 'gas') return gasSetting(heat, kitchen);
    const low = onDial(heat.celsius, kind, kitchen);
    const high = heat.highCelsius === null ? null : onDial(heat.highCelsius, kind, kitchen);
    const isRange = high !== null && !high.equals(low);
    return [{ kind, low: low.toString(), high: isRange ? high.toString() : null, unit: kitchen.oven.unit }];
  });
}

/** The mark nearest to a conventional heat, on the dial as it is set with a fan or without: its ends are the same. */
function onDial(celsius: Exact, kind: 'conventional' | 'fan', { oven }: Kitchen): Exact {
  const { step, min, max, fanDifference } = oven;
  const value = inDial(celsius, oven);
  const nearest = Exact.min(value.dividedBy(step).round().times(step), max.plus(fanDifference));
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
export function beyondDial({ celsius, highCelsius }: OvenHeat, { oven }: Kitchen): BeyondDial | null {
  const { min, max, step, unit } = oven;
  const [low, high] = [inDial(celsius, oven), inDial(highCelsius ?? celsius, oven)];
  const isTooHot = high.greaterThan(max.plus(step));
  if (!isTooHot && !low.lessThan(min.minus(step))) return null;
  const [mark, asked] = isTooHot ? [max, high] : [min, low];
  return { end: isTooHot ? 'hottest' : 'coolest', mark: mark.toString(), asked: asked.round().toString(), unit };
}

function gasSetting(heat: OvenHeat, kitchen: Kitchen): DialSetting[] {
  // Between two marks it is the higher: 275 °F, 135 °C, is gas 1 in every table, and 160 °C is gas 3.
  const nearest = (celsius: Exact): string | undefined =>
    kitchen.oven.gas
      .map((gas) => ({ mark: gas.mark, off: gas.celsius.minus(celsius) }))
      .sort((a, b) => a.off.abs().comparedTo(b.off.abs()) || b.off.comparedTo(a.off))[0]?.mark;
  // No mark is as cool as a drying oven; the hottest one serves for anything hotter, as the dial's end does.
  const near = dialStepCelsius(kitchen).times('1.5');
  if (kitchen.oven.gas.every(({ celsius }) => celsius.minus(heat.celsius).greaterThan(near))) return [];
  const low = nearest(heat.celsius);
  const high = heat.highCelsius === null ? undefined : nearest(heat.highCelsius);
  if (low === undefined) return [];
  return [{ kind: 'gas', low, high: high === undefined || high === low ? null : high, unit: 'gas' }];
}

/** Settings as a recipe there writes them: `200°C/180°C fan/gas 6`. */
export function writeOven(settings: readonly DialSetting[]): string {
  return settings
    .map(({ kind, low, high, unit }) => {
      const value = high === null ? low : `${low}–${high}`;
      if (unit === 'gas') return `gas ${value}`;
      return `${value}°${unit}${kind === 'fan' ? ' fan' : ''}`;
    })
    .join('/');
}
