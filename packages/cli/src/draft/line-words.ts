import {
  type Bought,
  dimensionOf,
  type Exact,
  type Kitchen,
  plural,
  type VersionLine,
  writeNumber,
  writeTerm,
} from '@retare/core';
import { massWords } from 'remark-retare';

/** The native amount, as written; null for a line without one. */
export function nativeWords({ line }: VersionLine): string | null {
  const { amountSpans, amounts } = line.reading;
  const words = amountSpans.map(({ start, end }) => line.text.slice(start, end).trim());
  return amounts.length === 0 || words.length === 0 ? null : words.join(' ');
}

/** What the batch asks for before it is landed on a measure: grams, or millilitres where the version measures by volume. */
export function exactWords({ native, stated }: VersionLine, batch: Exact, kitchen: Kitchen): string | null {
  const unit = stated?.statements[0]?.[0]?.unit;
  if (unit === undefined) return null;
  const byVolume = dimensionOf(unit) === 'volume' && native.millilitres !== null;
  const size = byVolume ? native.millilitres : (native.grams ?? native.millilitres);
  if (size === null) return null;
  const inOunces =
    !byVolume && native.grams !== null && (unit === 'oz' || unit === 'lb') && kitchen.counter.unit === 'lb';
  if (inOunces) return `${size.times(batch).dividedBy('28.349523125').toDecimalPlaces(2)} oz`;
  return `${size.times(batch).toDecimalPlaces(1)} ${byVolume || native.grams === null ? 'ml' : 'g'}`;
}

/** What to buy: `2 × 400 g tins`, `215 g`. */
export function buyWords({ packs, looseGrams }: Bought, kitchen: Kitchen): string {
  if (looseGrams !== null) {
    if (kitchen.counter.unit === 'lb')
      return writeTerm({ low: looseGrams.dividedBy('453.59237').toDecimalPlaces(4), high: null, unit: 'lb' });
    return writeTerm({ low: looseGrams, high: null, unit: 'g' });
  }
  return packs
    .map(({ count, pack: { size, unit, word } }) => {
      const label =
        unit === 'count'
          ? writeNumber(size, 'count')
          : `${writeNumber(size, unit)} ${unit === 'floz' ? 'fl oz' : unit}`;
      return `${count} × ${label} ${count === 1 ? word : plural(word)}`.trim();
    })
    .join(' + ');
}

/** What will be left, and how long it keeps. */
export function leftoverWords({ bought, food }: VersionLine, kitchen: Kitchen): string {
  const grams = bought?.leftoverGrams.toDecimalPlaces(0);
  if (grams === undefined || !grams.greaterThan(0)) return '';
  const days = food?.keeps.days ?? null;
  return `${massWords(grams, kitchen)}${days === null ? '' : `, ${days} ${days === 1 ? 'day' : 'days'}`}`;
}
