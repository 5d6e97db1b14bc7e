import { readPan } from '../amount/mention/read-pan.js';
import type { LineReading, OvenSetting, PanReading, Quantity, TemperatureReading } from '../amount/reading.js';
import type { Exact } from '../exact.js';
import type { Ingredients, Line, Mention, Method } from './recipe.js';

/** Letters and figures of a code: base 36, so that three of them hold 46,656 codes. */
const base = 36;
const length = 3;

/** Whether a word has the shape of a code. */
export function isLineCode(word: string): boolean {
  return /^[0-9a-z]{3}$/.test(word);
}

/** The words of a `from`. */
export function codesIn(from: string): string[] {
  return from.trim().split(/\s+/).filter(Boolean);
}

/** What a version drawn from these lines names them by: one code per line, in their order. */
export function codesOfLines({ lines }: Ingredients): string[] {
  return lines.map(lineCode);
}

/** What a method drawn from this one names its annotations by: one code per oven, core, temp, pan and share. Lengths have none. */
export function codesOfMethod({ mentions }: Method): string[] {
  return mentions.filter(({ kind }) => kind !== 'length').map(mentionCode);
}

/**
 * Three letters or figures that stand for what a line asks for. Another amount, unit, pack or food gives another code; bullets, emphasis,
 * capital letters, ways of writing a fraction and words on preparation do not, nor does what a larder knows of the food.
 */
export function lineCode({ reading, text, plus }: Line): string {
  if (reading.doubt !== null) return codeOf(['?', plain(text)]);
  const more = plus === undefined ? [] : [lineCode(plus)];
  return codeOf(['line', ...amountKey(reading), plain(reading.food?.text ?? text), ...more]);
}

/** Three letters or figures that stand for an annotation's kind and value. */
function mentionCode(mention: Mention): string {
  return codeOf([mention.kind, ...valueKey(mention)]);
}

function valueKey(mention: Mention): string[] {
  switch (mention.kind) {
    case 'amount': {
      const of = plain(mention.of ?? mention.reading.food?.text ?? '');
      return mention.reading.doubt === null ? [...amountKey(mention.reading), of] : [plain(mention.text), of];
    }
    case 'oven':
      return mention.settings.map(ovenKey);
    case 'core':
      return [...mention.readings.map(temperatureKey), plain(mention.of ?? '')];
    case 'temp':
      return mention.readings.map(temperatureKey);
    case 'pan': {
      const { depth, count, text, reading } = mention;
      // Other words beside the label are no change of what is annotated.
      const { shape } = readPan(text) ?? reading;
      return [
        panKey({ ...reading, shape }),
        depth === null ? '' : quantityKey(depth),
        count === null ? '' : figures(count),
      ];
    }
    case 'length':
      return mention.readings.map(quantityKey);
  }
}

function amountKey({ amounts, pack, size, further, plus }: LineReading): string[] {
  return [
    amounts.map(quantityKey).join('='),
    packKey(pack),
    plain(size?.text ?? ''),
    further.map((each) => quantityKey(each)).join('+'),
    ...(plus === undefined ? [] : [quantityKey(plus.amount), packKey(plus.pack)]),
  ];
}

function packKey(pack: LineReading['pack']): string {
  if (pack === null) return '';
  return [pack.count, pack.size, pack.sizeHigh].map((each) => figures(each)).join(' ') + pack.unit;
}

function quantityKey({ low, high, unit }: Pick<Quantity, 'low' | 'high' | 'unit'>): string {
  return `${figures(low)}-${figures(high)} ${unit}`;
}

function ovenKey({ low, high, unit, fan, impliedUnit }: OvenSetting): string {
  return `${figures(low)}-${figures(high)} ${impliedUnit ? '' : unit}${fan ? ' fan' : ''}`;
}

function temperatureKey({ low, high, unit, impliedUnit }: TemperatureReading): string {
  return `${figures(low)}-${figures(high)} ${impliedUnit ? '' : unit}`;
}

/** `9×13` and `13×9` are one pan: the sides come shorter first. */
function panKey({ sides, depth, count, unit, capacity, shape }: PanReading): string {
  return [
    sides.map((side) => figures(side)).join('x'),
    figures(depth),
    figures(count),
    unit,
    figures(capacity),
    shape,
  ].join(' ');
}

/** `½`, `1/2` and `0.5` are one number; `⅓` is cut off after eight figures as `0.33333333` is. */
function figures(value: Exact | null): string {
  return value === null ? '' : value.toSignificantDigits(8).toString();
}

function plain(words: string): string {
  return words.normalize('NFC').toLowerCase().replace(/\s+/g, ' ').trim();
}

/** FNV-1a, 32 bits (Fowler, Noll and Vo; offset basis and prime from draft-eastlake-fnv), folded into the range of a code. */
function codeOf(parts: readonly string[]): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(parts.join('|'))) hash = Math.imul(hash ^ byte, 0x01000193);
  return ((hash >>> 0) % base ** length).toString(base).padStart(length, '0');
}
