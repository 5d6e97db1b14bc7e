import type { OvenSetting } from '../amount/reading.js';
import { Exact } from '../exact.js';
import type { Kitchen } from './kitchen.js';

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
  const low = onDial(heat.celsius, kitchen);
  const high = heat.highCelsius === null ? null : onDial(heat.highCelsius, kitchen);
  return kitchen.oven.states.flatMap((kind): DialSetting[] => {
    if (kind === 'gas') return gasSetting(heat, kitchen);
    const lower = kind === 'fan' ? kitchen.oven.fanDifference : new Exact(0);
    return [
      {
        kind,
        low: low.minus(lower).toString(),
        high: high === null || high.equals(low) ? null : high.minus(lower).toString(),
        unit: kitchen.oven.unit,
      },
    ];
  });
}

function onDial(celsius: Exact, kitchen: Kitchen): Exact {
  const { unit, step, min, max } = kitchen.oven;
  const value = unit === 'C' ? celsius : fahrenheitOf(celsius, 'C');
  const nearest = value.dividedBy(step).round().times(step);
  return Exact.min(Exact.max(nearest, min), max);
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
