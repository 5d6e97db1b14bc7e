import {
  amountAsWritten,
  boughtInWords,
  dimensionOf,
  type Exact,
  type Food,
  gramsIn,
  type Kitchen,
  type Line,
  nameIn,
  soldIn,
  type Term,
  type VersionFood,
  type VersionLine,
  type Weighed,
  writeTerm,
} from '@retare/core';
import { massWords, type RecipeReading } from 'remark-retare';

/** The number of a native line in its post; null where it has no place. */
export function lineNumber({ key }: Line, { lines }: RecipeReading): number | null {
  return lines.get(key)?.paragraph.position?.start.line ?? null;
}

/** What an author calls the food of a line; the whole line where no food was read. */
export function foodWord({ reading, text }: Line): string {
  return reading.food?.text ?? text;
}

/** The native amount, as written; null for a line without one. */
export function nativeWords({ line }: Pick<VersionLine, 'line'>): string | null {
  return amountAsWritten(line.reading);
}

/** What a batch asks for before it is landed on a measure. */
export interface ExactAmount {
  low: Exact;
  high: Exact | null;
  unit: 'g' | 'oz' | 'ml' | Term['unit'];
  /** How much of a net weight is left when drained, where drained weights were compared. */
  drains: Exact | null;
}

/** Grams, millilitres where the version measures by volume, ounces where its shops weigh so; what has no known weight in its own unit. */
export function exactAmount(
  { line }: VersionLine,
  { native, drains, stated, food }: VersionFood,
  batch: Exact,
  kitchen: Kitchen,
): ExactAmount | null {
  const term = line.reading.amounts[0];
  if (term === undefined || food?.role === 'cure') return null;
  const unit = stated?.statements[0]?.[0]?.unit ?? (food?.pours ? 'ml' : 'g');
  const [size, shown] = sizeIn(native, unit, kitchen) ?? [term.low, term.unit];
  const low = size.times(batch);
  const high = term.high === null || term.low.isZero() ? null : low.times(term.high).dividedBy(term.low);
  return { low, high, unit: shown, drains };
}

function sizeIn({ grams, millilitres }: Weighed, unit: Term['unit'], kitchen: Kitchen): [Exact, Term['unit']] | null {
  if (millilitres !== null && (dimensionOf(unit) === 'volume' || grams === null)) return [millilitres, 'ml'];
  if (grams === null) return null;
  const inOunces = (unit === 'oz' || unit === 'lb') && kitchen.counter.unit === 'lb';
  return inOunces ? [grams.dividedBy(gramsIn('oz')), 'oz'] : [grams, 'g'];
}

/** The same in words, rounded to what can be read at a glance. */
export function exactWords({ low, high, unit, drains }: ExactAmount): string {
  if (drains !== null)
    return `${exactWords({ low: low.times(drains), high: high?.times(drains) ?? null, unit, drains: null })} drained`;
  const places = unit === 'oz' ? 2 : 1;
  const rounded = (value: Exact): Exact => value.toDecimalPlaces(places);
  if (dimensionOf(unit) === 'count')
    return writeTerm({ low: rounded(low), high: high === null ? null : rounded(high), unit });
  return `${[low, ...(high === null ? [] : [high])].map(rounded).join('–')} ${unit}`;
}

/** What the kitchen calls the food that takes a line's own place; null for the line's own. */
export function standInName({ line }: VersionLine, { food }: VersionFood, kitchen: Kitchen): string | null {
  return food === null || food === line.food ? null : nameIn(food, kitchen.id).many;
}

/** How many pieces to buy of what the shops sell singly: for a half a whole one, and the most of a range. */
export function piecesToBuy({ stated, bought, food }: VersionFood, kitchen: Kitchen): Exact | null {
  const counted = stated?.statements[0]?.[0];
  if (bought !== null || food === null || counted?.unit !== 'count' || stated?.pack !== null) return null;
  const sold = soldIn(food, kitchen.id);
  return sold?.sold && sold.singly ? (counted.high ?? counted.low).ceil() : null;
}

/** What to buy: packs, a weight, or pieces of the size that the line names; nothing where none is known. */
export function toBuyWords(own: VersionFood, kitchen: Kitchen): string {
  if (own.boughtWith !== null) return '(bought above)';
  if (own.bought !== null) return boughtInWords(own.bought, kitchen).join(' + ');
  const pieces = piecesToBuy(own, kitchen);
  const size = own.stated?.eggSize ?? null;
  return pieces === null ? '' : `${pieces}${size === null ? '' : ` ${size}`}`;
}

/** What will be left, and how long it keeps. */
export function leftoverWords({ bought, food }: VersionFood, kitchen: Kitchen): string {
  const grams = bought?.leftoverGrams.toDecimalPlaces(0);
  if (grams === undefined || !grams.greaterThan(0)) return '';
  return `${massWords(grams, kitchen)}${food === null ? '' : keepsWords(food)}`;
}

/** `, 5 days or frozen`; what keeps in the cupboard or as long as anyone plans says nothing of a freezer. */
function keepsWords({ keeps: { where, days, freezes } }: Food): string {
  if (days === null) return '';
  return `, ${days} ${days === 1 ? 'day' : 'days'}${freezes && where === 'fridge' ? ' or frozen' : ''}`;
}
