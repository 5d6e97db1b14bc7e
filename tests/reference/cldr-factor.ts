import { Exact } from '@retare/core';
import cldr from 'cldr-core/supplemental/units.json' with { type: 'json' };

const { unitConstants, convertUnits } = cldr.supplemental;
const constants: Readonly<Record<string, { _value: string }>> = unitConstants;
const units: Readonly<Record<string, { _baseUnit: string; _factor?: string }>> = convertUnits;
const prefixes = { milli: '0.001', centi: '0.01', deci: '0.1', kilo: '1000' } as const;

/**
 * The size of a CLDR unit in its SI base unit: cubic metres, kilograms or metres.
 *
 * @throws {RangeError} If CLDR has no such unit.
 */
export function cldrFactor(unit: string): Exact {
  const whole = units[unit];
  if (whole !== undefined) return evaluate(whole._factor ?? '1');
  for (const [prefix, factor] of Object.entries(prefixes)) {
    if (unit.startsWith(prefix)) return cldrFactor(unit.slice(prefix.length)).times(factor);
  }
  throw new RangeError(`CLDR has no unit ${unit}`);
}

/** CLDR writes products with at most one `/`: everything after it is the denominator (`gal_to_m3/16*48`). */
function evaluate(expression: string): Exact {
  const [above = '1', below = '1'] = expression.split('/');
  return product(above).dividedBy(product(below));
}

function product(expression: string): Exact {
  return expression
    .split('*')
    .map((term) => term.trim())
    .reduce((result, term) => result.times(constants[term] ? evaluate(constants[term]._value) : term), new Exact(1));
}
