import { readLength, readLine, readMentions, readOven, readPan, readTemperature, type Span } from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printedAmount } from './printed-amount.js';

const runs = { numRuns: 3000 };

/** Text made of what amounts are made of, so that random lines reach the grammar. */
const scraps = [
  '1', '2', '1/2', '½', '15', '400', '0', ' ', ' ', ' ', '-', '–', '—', 'x', '×', '(', ')', '[', ']', ',', '.', ':', '/', '+', '~', '*', '**', '_',
  'g', 'oz', 'cup', 'cups', 'T', 't', 'c', 'tbsp', 'can', 'cans', 'tin', 'clove', 'cloves', 'stick', 'inch', '"', '”', '’', 'in', '°', 'F', 'C', '℃', 'º',
  'a', 'an', 'half', 'of', 'or', 'and', 'to', 'each', 'about', 'plus', 'juice', 'lemon', 'garlic', 'flour', 'eggs', 'large', 'chopped', 'optional',
  'gas', 'mark', 'fan', 'round', 'pan', 'oven', '\u00a0', '\u2009', '１', 'ｇ', '😀', '\ud800', '\u0301', 'constructor', '__proto__', '%',
]; // biome-ignore format: a list of scraps is read in rows

const line = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  fc.array(fc.constantFrom(...scraps), { maxLength: 25 }).map((parts) => parts.join('')),
  fc.array(fc.constantFrom(...scraps), { maxLength: 25 }).map((parts) => parts.join(' ')),
);

function inside(text: string, spans: readonly Span[]): boolean {
  return spans.every(({ start, end }) => start >= 0 && start < end && end <= text.length);
}

/** In order and not overlapping. */
function apart(spans: readonly Span[]): boolean {
  return spans.every(({ start }, index) => index === 0 || start >= (spans[index - 1]?.end ?? 0));
}

describe('any text at all', () => {
  test('is read as an ingredient line without a throw, with spans inside it', () => {
    fc.assert(
      fc.property(line, (text) => {
        const read = readLine(text);
        const single = [read.food, read.size, read.pack, read.doubt].flatMap((part) =>
          part === null ? [] : [part.span],
        );
        expect(inside(text, [...single, ...read.amountSpans, ...read.amounts.map(({ span }) => span)])).toBe(true);
        expect(
          inside(
            text,
            read.further.map(({ span }) => span),
          ),
        ).toBe(true);
      }),
      runs,
    );
  });

  test('gives amount spans and further quantities in order, none over another', () => {
    fc.assert(
      fc.property(line, (text) => {
        const read = readLine(text);
        const all = [...read.amountSpans, ...read.further.map(({ span }) => span)].sort(
          (one, other) => one.start - other.start,
        );
        expect(apart(read.amountSpans)).toBe(true);
        expect(apart(all)).toBe(true);
      }),
      runs,
    );
  });

  test('has an amount if and only if its kind says so, and none beside a doubt', () => {
    fc.assert(
      fc.property(line, (text) => {
        const { kind, amounts, amountSpans, doubt } = readLine(text);
        expect(amounts.length > 0).toBe(kind === 'amount');
        expect(amountSpans.length > 0).toBe(kind === 'amount');
        if (doubt !== null) expect(kind).toBe('no-amount');
      }),
      runs,
    );
  });

  test('has only numbers above or at zero, and ranges that rise', () => {
    fc.assert(
      fc.property(line, (text) => {
        const { amounts, further } = readLine(text);
        for (const { low, high } of [...amounts, ...further]) {
          expect(low.isFinite() && low.gte(0)).toBe(true);
          if (high !== null) expect(high.gt(low)).toBe(true);
        }
      }),
      runs,
    );
  });

  test('is read as a label and as running text without a throw, with spans inside it, in order and apart', () => {
    fc.assert(
      fc.property(line, (text) => {
        const lists = [readOven(text), readTemperature(text), readMentions(text)].map((read) =>
          read.map(({ span }) => span),
        );
        for (const spans of lists) expect(inside(text, spans) && apart(spans)).toBe(true);
        const single = [readPan(text), readLength(text)].flatMap((read) => (read === null ? [] : [read.span]));
        expect(inside(text, single)).toBe(true);
      }),
      runs,
    );
  });
});

describe('a printed amount', () => {
  test('is read as what it was, before a food', () => {
    fc.assert(
      fc.property(printedAmount, ({ text, low, high, unit }) => {
        const [read, ...others] = readLine(`${text} garlic`).amounts;
        expect(others).toEqual([]);
        expect([read?.low.toString(), read?.high?.toString() ?? null, read?.unit]).toEqual([low, high, unit]);
      }),
      runs,
    );
  });

  test('is read as what it was, behind a food', () => {
    fc.assert(
      fc.property(printedAmount, ({ text, low, high, unit }) => {
        const [read] = readLine(`Garlic, ${text}`).amounts;
        expect([read?.low.toString(), read?.high?.toString() ?? null, read?.unit]).toEqual([low, high, unit]);
      }),
      runs,
    );
  });

  test('leaves exactly the food when its span is cut out', () => {
    fc.assert(
      fc.property(printedAmount, ({ text }) => {
        const whole = `${text} garlic, minced`;
        const { amountSpans } = readLine(whole);
        const [first] = amountSpans;
        expect(amountSpans).toHaveLength(1);
        expect(whole.slice(0, first?.start) + whole.slice(first?.end)).toBe(' garlic, minced');
      }),
      runs,
    );
  });
});
