import { Exact } from '../../exact.js';
import { isDash, isInnerHyphen } from '../token/dash.js';
import { readNumber } from '../token/number.js';
import { fractionBehind, passOfArticle } from '../token/number-parts.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';
import { isGesture } from '../unit-kind.js';
import { passAbout, passEnding } from './about.js';
import { type ReadRange, readRange } from './range.js';
import { passAdjectives, readUnitBehindAdjectives } from './unit-behind-adjectives.js';
import { type ReadUnit, readUnit } from './unit-reading.js';

/** A number or range with what it counts, as it stands among the tokens. */
export interface ReadQuantity {
  low: Exact;
  high: Exact | null;
  /** `null` for a bare number. */
  unit: UnitId | null;
  approx: boolean;
  /** Token indexes: from the words for about, from the number itself, and behind the unit (or number), without `of`. */
  start: number;
  first: number;
  next: number;
  /** The number is `a` or `an`. */
  article: boolean;
  /** No number at all: a unit word alone, which counts as one. */
  bare: boolean;
  range: ReadRange | null;
  unitWord: ReadUnit | null;
}

const one = new Exact(1);

/**
 * Reads a quantity at an index, with words for about on both sides: `about 2 heaped tbsp`, `a clove or two`, `6 or so`, `pinch`.
 *
 * @returns `null` where neither a number nor a unit word stands.
 */
export function readQuantity(tokens: Tokens, index: number): ReadQuantity | null {
  const first = passAbout(tokens, index);
  const range = readRange(tokens, first);
  if (range === null) return readBare(tokens, index, first);
  const ending = passEnding(tokens, range.next);
  const article = range.fraction ? passOfArticle(tokens, ending) : ending;
  const adjectives = passAdjectives(tokens, article);
  const unitWord =
    readUnit(tokens, article, { afterNumber: true }) ?? readUnitBehindAdjectives(tokens, article, adjectives);
  // `5-spice powder`, `7-Up`: a number hyphened to a word that is no unit is part of a name.
  if (unitWord === null && isPartOfName(tokens, range.next)) return null;
  const numberEnd = unitWord === null ? passTimes(tokens, ending) : unitWord.next;
  const quantity: ReadQuantity = {
    low: range.low,
    high: range.high,
    unit: unitWord?.unit ?? null,
    approx: range.approx || first > index || ending > range.next,
    start: index,
    first: range.first,
    next: numberEnd,
    article: range.article,
    bare: false,
    range,
    unitWord,
  };
  return unitWord === null
    ? withArticleEnd(quantity, tokens, article)
    : withOrTwo(tokens, withAndAHalf(tokens, quantity));
}

function isPartOfName(tokens: Tokens, at: number): boolean {
  return isInnerHyphen(tokens, at) && passAdjectives(tokens, at + 1) === at + 1;
}

/** `2 x eggs` */
function passTimes(tokens: Tokens, at: number): number {
  const sign = tokens.word(at);
  return (sign === 'x' || sign === '×') && tokens.at(at + 1).kind === 'word' ? at + 1 : at;
}

/** `1/3 of a pineapple`: the article belongs to the amount. */
function withArticleEnd(quantity: ReadQuantity, tokens: Tokens, article: number): ReadQuantity {
  return article < tokens.length ? { ...quantity, next: Math.max(quantity.next, article) } : quantity;
}

function readBare(tokens: Tokens, index: number, first: number): ReadQuantity | null {
  const adjectives = passAdjectives(tokens, first);
  const unitWord = readBareUnit(tokens, adjectives);
  if (unitWord === null) return null;
  return withOrTwo(tokens, {
    low: one,
    high: null,
    unit: unitWord.unit,
    approx: first > index,
    start: index,
    first,
    next: unitWord.next,
    article: false,
    bare: true,
    range: null,
    unitWord,
  });
}

function readBareUnit(tokens: Tokens, index: number): ReadUnit | null {
  const unit = readUnit(tokens, index, { afterNumber: false });
  if (unit !== null) return standsAlone(tokens, unit) ? unit : null;
  // `tsp or so of cumin`: an abbreviation counts as one where `of` or `or` follows.
  const short = readUnit(tokens, index, { afterNumber: true });
  const follows = short === null ? '' : tokens.word(short.next);
  return short !== null &&
    tokens.at(index).kind === 'word' &&
    tokens.at(index).text.length > 1 &&
    (follows === 'of' || follows === 'or')
    ? short
    : null;
}

/** Units that stand for one even without `of` behind them: `Pinch salt`, `Dash Tabasco`. */
const aloneUnits: ReadonlySet<UnitId> = new Set<UnitId>([
  'pinch',
  'dash',
  'handful',
  'bunch',
  'tsp',
  'tbsp',
  'cup',
  'can',
  'tin',
]);

/** `Clove of garlic` is one clove, `Clove` the spice; `Sprigs of mint` has no number. */
function standsAlone(tokens: Tokens, unit: ReadUnit): boolean {
  if (unit.spelling !== 'one') return false;
  const behind = tokens.at(unit.next);
  return (
    behind.lower === 'of' ||
    behind.lower === 'or' ||
    (aloneUnits.has(unit.unit) && behind.kind === 'word') ||
    isClosed(unit, behind.kind)
  );
}

/** `Salt, a little; pinch`: a gesture at the end of its clause. */
function isClosed(unit: ReadUnit, behind: string): boolean {
  return isGesture(unit.unit) && behind === 'mark';
}

/** `a cup and a half of flour`; not `1 cup and a half teaspoon`, nor `1 lime and a half onion`. */
function withAndAHalf(tokens: Tokens, quantity: ReadQuantity): ReadQuantity {
  const { low, high, next } = quantity;
  const more = high === null && tokens.word(next) === 'and' ? fractionBehind(tokens, next) : null;
  if (more === null || more.next !== next + 3) return quantity;
  const behind = tokens.at(more.next);
  const isOfIt =
    behind.lower === 'of' || more.next >= tokens.length || (behind.kind === 'mark' && !isDash(behind.lower));
  return isOfIt ? { ...quantity, low: low.plus(more.value), next: more.next } : quantity;
}

/** `a clove or two`, `a pound or two`, `tsp or so`, `30g+`. */
function withOrTwo(tokens: Tokens, quantity: ReadQuantity): ReadQuantity {
  const { next } = quantity;
  if ((quantity.article || quantity.bare) && tokens.word(next) === 'or') {
    const upper = readNumber(tokens, next + 1);
    const lone = upper !== null && !upper.article && upper.value.gt(quantity.low);
    const unitBehind = lone ? readUnit(tokens, upper.next, { afterNumber: true }) : null;
    if (lone && unitBehind === null) return { ...quantity, high: upper.value, next: upper.next };
  }
  const ending = passEnding(tokens, next);
  return ending > next ? { ...quantity, approx: true, next: ending } : quantity;
}
