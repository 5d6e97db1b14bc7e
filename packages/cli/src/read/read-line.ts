import { Exact, type Line, type LineReading } from '@retare/core';
import type { Decimal } from '../decimal.js';
import { inShort } from './in-short.js';

/** One ingredient line, as it was understood. */
export interface ReadLine {
  line: number;
  part: string | null;
  text: string;
  kind: LineReading['kind'];
  amounts: { low: Decimal; high: Decimal | null; unit: string; approx: boolean }[];
  pack: { count: Decimal; size: Decimal; unit: string; word: string } | null;
  food: string | null;
  foodId: string | null;
  prep: string;
  optional: boolean;
  further: { low: Decimal; high: Decimal | null; unit: string }[];
  /** Why an amount was left unread; null where nothing was. */
  doubt: string | null;
}

/** A line of a recipe as it was understood. */
export function lineOf({ text, reading, food }: Line, line: number, part: string | null): ReadLine {
  const { kind, amounts, pack, prep, optional, further, doubt } = reading;
  return {
    line,
    part,
    text,
    kind,
    amounts: amounts.map(({ low, high, unit, approx }) => ({ low: inShort(low), high: inShort(high), unit, approx })),
    pack:
      pack === null
        ? null
        : {
            count: inShort(pack.count ?? new Exact(1)),
            size: inShort(pack.size),
            unit: pack.unit,
            word: pack.word,
          },
    food: reading.food?.text ?? null,
    foodId: food?.id ?? null,
    prep,
    optional,
    further: further.map(({ low, high, unit }) => ({ low: inShort(low), high: inShort(high), unit })),
    doubt: doubt === null ? null : `${doubt.because} ${doubt.instead}`,
  };
}

/** Below this a guessed kitchen settles nothing. */
const sureEnough = 0.5;

/** What a unit holds is not known without a kitchen. */
const byKitchen: Readonly<Record<string, string>> = {
  tbsp: 'A tablespoon holds 14.8, 15 or 20 ml by country.',
  pint: 'A pint holds 473 ml in the US and 568 ml in the UK.',
};

/**
 * A line whose unit holds another amount in another kitchen, where the kitchen is hardly more than guessed: so much is left open.
 *
 * @param confidence Of the guess, from 0 to 1.
 */
export function withUnsettled(line: ReadLine, confidence: number): ReadLine {
  const because = byKitchen[line.amounts[0]?.unit ?? ''];
  if (because === undefined || line.doubt !== null || confidence >= sureEnough) return line;
  return { ...line, doubt: `${because} Say which kitchen the post was written in.` };
}
