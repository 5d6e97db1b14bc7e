import { Exact } from '../exact.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { isSizeWord } from './line/egg-size.js';
import type { Stated, Term } from './stated.js';
import type { UnitId } from './unit.js';

const fractionGlyphs: readonly [numerator: number, denominator: number, glyph: string][] = [
  [1, 16, '1/16'],
  [1, 8, '⅛'],
  [1, 4, '¼'],
  [1, 3, '⅓'],
  [3, 8, '⅜'],
  [1, 2, '½'],
  [5, 8, '⅝'],
  [2, 3, '⅔'],
  [3, 4, '¾'],
  [7, 8, '⅞'],
];

/** Units that are written with fractions; all others take decimals. */
const fractional: ReadonlySet<UnitId> = new Set<UnitId>([
  'tsp',
  'tbsp',
  'cup',
  'lb',
  'oz',
  'in',
  'pint',
  'quart',
  'gallon',
  'floz',
  'count',
  'clove',
  'slice',
  'bunch',
  'sprig',
  'head',
  'stick',
  'can',
  'tin',
  'packet',
  'piece',
  'handful',
  'pinch',
  'dash',
]);

/** Written form of a unit, singular and plural, where it is not the id itself. */
const words: Readonly<Partial<Record<UnitId, readonly [one: string, many: string]>>> = {
  cup: ['cup', 'cups'],
  floz: ['fl oz', 'fl oz'],
  pint: ['pint', 'pints'],
  quart: ['quart', 'quarts'],
  gallon: ['gallon', 'gallons'],
  clove: ['clove', 'cloves'],
  slice: ['slice', 'slices'],
  bunch: ['bunch', 'bunches'],
  sprig: ['sprig', 'sprigs'],
  head: ['head', 'heads'],
  stick: ['stick', 'sticks'],
  can: ['can', 'cans'],
  tin: ['tin', 'tins'],
  packet: ['packet', 'packets'],
  piece: ['piece', 'pieces'],
  handful: ['handful', 'handfuls'],
  pinch: ['pinch', 'pinches'],
  dash: ['dash', 'dashes'],
  C: ['°C', '°C'],
  F: ['°F', '°F'],
};

/** A number as a cook writes it: `1½` for units that have fractions, else a decimal of at most two places. */
export function writeNumber(value: Exact, unit: UnitId): string {
  if (fractional.has(unit)) {
    const written = writeMixed(value);
    if (written !== null) return written;
  }
  return value.toDecimalPlaces(2).toString();
}

function writeMixed(value: Exact): string | null {
  const whole = value.floor();
  const rest = value.minus(whole);
  if (rest.lessThan('1e-9')) return whole.toString();
  for (const [numerator, denominator, glyph] of fractionGlyphs) {
    if (new Exact(numerator).dividedBy(denominator).minus(rest).abs().lessThan('1e-9')) {
      if (whole.isZero()) return glyph;
      // `11/16` would be read as less than one.
      return glyph.length > 1 ? null : `${whole}${glyph}`;
    }
  }
  return null;
}

/** A unit's written form for a number of it; empty for `count`. */
function writeUnit(unit: UnitId, value: Exact): string {
  if (unit === 'count') return '';
  const [one, many] = words[unit] ?? [unit, unit];
  return value.greaterThan(1) ? many : one;
}

/** A term in its kitchen's spelling: `1½ cups`, `300–400 g`, `1.2 kg`, `2` for a bare count. */
export function writeTerm(term: Term): string {
  const { low, high, unit } = upscale(term);
  const [from, to] = [writeNumber(low, unit), high === null ? null : writeNumber(high, unit)];
  const number = to === null || to === from ? from : `${from}–${to}`;
  const word = writeUnit(unit, high ?? low);
  if (word === '') return number;
  const fill = term.fill == null ? '' : `${term.fill} `;
  return word.startsWith('°') ? `${number}${word}` : `${number} ${fill}${word}`;
}

/** From 1000 g and 1000 ml up a cook writes kilograms and litres. */
function upscale(term: Term): Term {
  if ((term.unit === 'g' || term.unit === 'ml') && term.low.greaterThanOrEqualTo(1000)) {
    return {
      low: term.low.dividedBy(1000),
      high: term.high?.dividedBy(1000) ?? null,
      unit: term.unit === 'g' ? 'kg' : 'l',
    };
  }
  return term;
}

/** A sum of terms: `1 cup + 2 tbsp`. */
export function writeStatement(terms: readonly Term[]): string {
  return terms.map(writeTerm).join(' + ');
}

/** An amount as a recipe of that kitchen writes it. Reading it back gives the same amount. */
export function writeStated(stated: Stated, kitchen: Kitchen): string {
  const [first, ...others] = stated.statements;
  if (first === undefined) return '';
  const approx = stated.approx ? 'about ' : '';
  const main = stated.pack === null ? writeStatement(first) : writePacks(first, stated.pack, kitchen);
  // A carton's size (`800 g carton`) is no word that stands before `eggs`.
  const size = stated.eggSize === null || !isSizeWord(stated.eggSize) ? '' : ` ${stated.eggSize}`;
  const again = others.length === 0 ? '' : ` (${others.map(writeStatement).join(', ')})`;
  const more = stated.plus === undefined ? '' : ` plus ${writeStated(stated.plus, kitchen)}`;
  return `${approx}${main}${size}${again}${more}`;
}

function writePacks(terms: readonly Term[], pack: NonNullable<Stated['pack']>, kitchen: Kitchen): string {
  const count = terms[0];
  if (count === undefined) return '';
  const word = (count.high ?? count.low).greaterThan(1) ? plural(pack.word) : pack.word;
  if (pack.unit === 'count') {
    // A bunch is a bunch; a packet of 6 rolls is 6 rolls.
    if (pack.size.equals(1)) return `${writeTerm({ ...count, unit: 'count' })} ${word}`.trimEnd();
    const { low, high } = count;
    return writeTerm({ low: low.times(pack.size), high: high?.times(pack.size) ?? null, unit: 'count' });
  }
  const counted = writeTerm({ ...count, unit: 'count' });
  const low = labelNumber(pack.size, pack.unit);
  const size = pack.sizeHigh == null ? low : `${low}–${labelNumber(pack.sizeHigh, pack.unit)}`;
  const unit = labelUnit(pack.unit);
  if (kitchen.writes.packs === 'times') return `${counted} × ${size} ${unit} ${word}`.trimEnd();
  return `${counted} (${size}-${unit}) ${word}`.trimEnd();
}

/** A size as it stands on the label, with all its digits: `400 g`, `1.136 l`, `8 fl oz`; of pieces their number. */
export function writeLabel({ size, unit }: { size: Exact; unit: UnitId }): string {
  return `${labelNumber(size, unit)} ${labelUnit(unit)}`.trimEnd();
}

function labelNumber(size: Exact, unit: UnitId): string {
  return (fractional.has(unit) ? writeMixed(size) : null) ?? size.toString();
}

/** In the singular: a 2 quart carton. */
function labelUnit(unit: UnitId): string {
  return writeUnit(unit, new Exact(1));
}

/** Plural of a container word: all are regular but the loaf. */
export function plural(word: string): string {
  if (word === '') return '';
  if (word === 'loaf') return 'loaves';
  return /(?:x|ch|sh|s)$/.test(word) ? `${word}es` : `${word}s`;
}
