import type { FoundMention, Kitchen, Mention } from '@retare/core';
import type { Decimal } from '../decimal.js';
import { inShort } from './in-short.js';

/** A temperature, pan or length in the text. */
export interface ReadMention {
  line: number;
  kind: 'oven' | 'core' | 'temp' | 'pan' | 'length';
  low: Decimal;
  high: Decimal | null;
  unit: string;
}

type Value = Omit<ReadMention, 'line'>;

/** What an annotation states, one entry a value; nothing of an amount, which its line says. */
export function mentionValues(mention: Mention): Value[] {
  switch (mention.kind) {
    case 'amount':
      return [];
    case 'oven':
      return mention.settings.map(({ low, high, unit }) => ({
        kind: 'oven',
        low: inShort(low),
        high: inShort(high),
        unit,
      }));
    case 'core':
    case 'temp':
      return mention.readings.map(({ low, high, unit }) => ({
        kind: mention.kind,
        low: inShort(low),
        high: inShort(high),
        unit,
      }));
    case 'pan': {
      const { sides, capacity, unit } = mention.reading;
      const low = sides[0] ?? capacity;
      return low == null ? [] : [{ kind: 'pan', low: inShort(low), high: inShort(sides[1] ?? null), unit }];
    }
    case 'length':
      // Of two sides the second is told as the upper end.
      return mention.readings.map(({ low, high, sides, unit }) => ({
        kind: 'length',
        low: inShort(low),
        high: inShort(high ?? sides[0]?.low ?? null),
        unit,
      }));
  }
}

/** Degrees without a letter are those of the kitchen's own oven. */
export function foundValue({ kind, low, high, unit, impliedUnit }: FoundMention, kitchen: Kitchen | undefined): Value {
  const meant = impliedUnit && (unit === 'C' || unit === 'F') ? (kitchen?.oven.unit ?? unit) : unit;
  return { kind, low: inShort(low), high: inShort(high), unit: meant };
}
