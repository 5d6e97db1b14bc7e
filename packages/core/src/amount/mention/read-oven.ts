import { Exact } from '../../exact.js';
import { readRange } from '../quantity/range.js';
import type { OvenSetting } from '../reading.js';
import { isDash } from '../token/dash.js';
import type { Token, Tokens } from '../token/token.js';
import { tokenize } from '../token/tokenize.js';
import type { TemperatureUnit } from '../unit.js';
import { likelyUnit, readDegrees } from './degrees.js';

/** A setting among the tokens. */
export interface ReadSetting {
  low: Exact;
  high: Exact | null;
  unit: TemperatureUnit | null;
  fan: boolean;
  /** A sign, a letter, a fan word or a gas word is written: no bare number. */
  signed: boolean;
  first: number;
  next: number;
}

const fanWords = new Set(['fan', 'convection', 'circotherm']);
/** Words that may stand between a setting and its fan word, or behind the fan word. */
const fanCompany = new Set([
  'with',
  'on',
  'in',
  'for',
  'a',
  'the',
  'oven',
  'ovens',
  'assisted',
  'forced',
  'bake',
  'setting',
  'mode',
  '-',
]);
const highestGasMark = 10;

/**
 * Reads the settings of one oven that a label states: `400°F`, `180 °C/160 °C fan/gas 4`, `350°F convection`, `gas mark 4`, `fan 160`.
 *
 * A number without sign, letter or fan word is read only where the label holds nothing else.
 *
 * @returns In the order of the text; empty where none is stated. With `impliedUnit`, `unit` is a guess that a kitchen has to settle.
 */
export function readOven(text: string): OvenSetting[] {
  const tokens = tokenize(text);
  const settings = readSettings(tokens);
  const lone = settings.every((setting) => setting.signed) || holdsNothingElse(tokens, settings);
  const kept = lone ? settings : settings.filter((setting) => setting.signed);
  const sister = sisterUnit(kept);
  return kept.map((setting) => {
    const span = tokens.span(setting.first, setting.next);
    const unit = setting.unit ?? (setting.fan ? sister : null);
    return {
      low: setting.low,
      high: setting.high,
      unit: unit ?? likelyUnit(setting.low),
      fan: setting.fan,
      impliedUnit: unit === null,
      span,
    };
  });
}

/** `180 °C/fan 160`: a fan setting without a letter is in the degrees of the setting beside it. */
function sisterUnit(all: readonly ReadSetting[]): TemperatureUnit | null {
  return all.find(({ fan, unit }) => !fan && unit !== null && unit !== 'gas')?.unit ?? null;
}

function holdsNothingElse(tokens: Tokens, settings: readonly ReadSetting[]): boolean {
  const covered = new Set<Token>();
  for (const { first, next } of settings) for (const token of tokens.list.slice(first, next)) covered.add(token);
  return tokens.list.every((token) => covered.has(token) || token.kind === 'mark');
}

/** Every setting among the tokens, bare numbers included (`signed` false). */
export function readSettings(tokens: Tokens): ReadSetting[] {
  const settings: ReadSetting[] = [];
  let at = 0;
  while (at < tokens.length) {
    const setting = readGas(tokens, at) ?? readFanFirst(tokens, at) ?? readPlain(tokens, at);
    if (setting !== null) settings.push(setting);
    at = setting?.next ?? at + 1;
  }
  return settings;
}

/** Reads a gas mark at an index: `gas mark 4`, `gas 4`, `gas mark ½`, `gas mark 4-5` */
export function readGas(tokens: Tokens, index: number): ReadSetting | null {
  if (tokens.word(index) !== 'gas') return null;
  let at = index + 1;
  if (tokens.word(at) === 'mark' || tokens.word(at) === 'no') at += 1;
  if (tokens.word(at) === '.' || tokens.word(at) === ':') at += 1;
  const range = readRange(tokens, at);
  if (range === null || range.article || range.reversed || (range.high ?? range.low).gt(highestGasMark)) return null;
  return { low: range.low, high: range.high, unit: 'gas', fan: false, signed: true, first: index, next: range.next };
}

/** `fan 160`, `fan oven 160 °C` */
function readFanFirst(tokens: Tokens, index: number): ReadSetting | null {
  if (!fanWords.has(tokens.word(index))) return null;
  const at = passCompany(tokens, index + 1);
  const degrees = readDegrees(tokens, tokens.word(at) === ':' || tokens.word(at) === '(' ? at + 1 : at);
  if (degrees === null || !isOvenHeat(degrees.low)) return null;
  const closes = tokens.word(degrees.next) === ')' && tokens.partner[degrees.next] === at;
  return { ...degrees, fan: true, signed: true, first: index, next: closes ? degrees.next + 1 : degrees.next };
}

/** `180 °C`, `350°F convection`, `220c (fan)` */
function readPlain(tokens: Tokens, index: number): ReadSetting | null {
  const degrees = readDegrees(tokens, index);
  if (degrees === null || !(degrees.signed || isOvenHeat(degrees.low))) return null;
  const bracket = tokens.word(degrees.next) === '(';
  let at = passCompany(tokens, bracket ? degrees.next + 1 : degrees.next);
  if (!fanWords.has(tokens.word(at)) || belongsToNext(tokens, at)) return { ...degrees, fan: false };
  at = passCompany(tokens, at + 1, degrees.signed);
  if (bracket && tokens.word(at) === ')') at += 1;
  return { ...degrees, fan: true, signed: true, next: at };
}

/** `180 °C fan 160 °C`: with a number right behind, the fan word belongs to that one. */
function belongsToNext(tokens: Tokens, fan: number): boolean {
  const at = passCompany(tokens, fan + 1);
  const degrees = readDegrees(tokens, tokens.word(at) === ':' ? at + 1 : at);
  return degrees !== null && isOvenHeat(degrees.low);
}

function passCompany(tokens: Tokens, index: number, signed = true): number {
  let at = index;
  while (signed && at < index + 6 && fanCompany.has(tokens.word(at)) && !(isDash(tokens.word(at)) && tokens.at(at).gap))
    at += 1;
  return at;
}

/** No oven is set below 40 or above 600 of any degree. */
function isOvenHeat(low: Exact): boolean {
  return low.gte(new Exact(40)) && low.lte(new Exact(600));
}
