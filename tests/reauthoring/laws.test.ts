import {
  applyEdits,
  dimensionOf,
  type Exact,
  type Food,
  type Kitchen,
  measuresBy,
  type Sold,
  soldIn,
  type Term,
  type VersionLine,
} from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { converted, rulesOf, textOf } from './recipe-of.js';
import { kitchen, kitchenIds } from './setting.js';

const ways = ['spoon', 'cup', 'jug', 'scale'] as const;
const pair = fc.constantFrom(...kitchenIds.flatMap((from) => kitchenIds.map((to) => ({ from, to }))));

/** Amounts that writers write: unit, and what it goes up to. */
const written = fc.oneof(
  fc
    .constantFrom('tsp', 'tbsp')
    .chain((unit) => fc.constantFrom('¼', '½', '1', '1½', '2', '3').map((n) => `${n} ${unit}`)),
  fc.constantFrom('¼', '⅓', '½', '⅔', '¾', '1', '1⅓', '2', '2½', '4').map((n) => `${n} cup`),
  fc.integer({ min: 1, max: 200 }).map((n) => `${n * 5} g`),
  fc.integer({ min: 1, max: 60 }).map((n) => `${n * 25} ml`),
  fc.integer({ min: 1, max: 32 }).map((n) => `${n} oz`),
);

const fluidFoods = ['flour', 'sugar', 'milk', 'honey', 'cocoa powder', 'olive oil', 'butter', 'water', 'rice flour'];

/** Whether a kitchen has exactly this amount of something to measure with. */
function isMeasure(terms: readonly Term[], food: Food | null, { id }: Kitchen): boolean {
  const home = kitchen(id);
  const isIn = ways.some((way) =>
    measuresBy(home, way).some(
      (measure) =>
        measure.terms.length === terms.length &&
        measure.terms.every(({ low, unit }, index) => terms[index]?.unit === unit && terms[index].low.equals(low)),
    ),
  );
  return isIn || isMark(terms, food, home) || isCounterStep(terms, food, home) || isQuartsInCups(terms, food, home);
}

/** Past the cups that are counted, what does not pour is written in the cups that a quart holds. */
function isQuartsInCups([term, ...others]: readonly Term[], food: Food | null, home: Kitchen): boolean {
  if (term?.unit !== 'cup' || others.length > 0 || food?.pours !== false) return false;
  return measuresBy(home, 'cup').some(
    ({ terms: [quart] }) => quart?.unit === 'quart' && quart.low.times(4).equals(term.low),
  );
}

/** A cut by the wrapper's marks: its tablespoons, and cups of sixteen of them. */
function isMark([term]: readonly Term[], food: Food | null, home: Kitchen): boolean {
  const marks = food === null ? null : soldIn(food, home.id)?.packs.find((pack) => pack.marks !== null)?.marks;
  if (marks == null || term === undefined) return false;
  const cuts = term.unit === 'cup' && marks.unit === 'tbsp' ? term.low.times(16) : term.low;
  // A third of a cup is no whole number of spoons, so it is never written by the wrapper.
  return (term.unit === marks.unit || term.unit === 'cup') && cuts.dividedBy(marks.size).isInteger();
}

function isCounterStep([term]: readonly Term[], food: Food | null, home: Kitchen): boolean {
  if (term === undefined || food === null || !soldIn(food, home.id)?.loose) return false;
  return term.unit === home.counter.unit && term.low.dividedBy(home.counter.step).isInteger();
}

function isSettled({ stated, food }: VersionLine, home: Kitchen): boolean {
  const terms = stated?.statements[0];
  if (stated === null || terms === undefined) return true;
  if (stated.pack !== null) {
    const { size, unit } = stated.pack;
    const packs = food === null ? [] : (soldIn(food, home.id)?.packs ?? []);
    return packs.some((pack) => pack.unit === unit && pack.size.equals(size));
  }
  return terms.every(({ unit }) => dimensionOf(unit) === 'count') || isMeasure(terms, food, home);
}

describe('conversion', () => {
  test('of a fluid food gives what the kitchen can measure, or a finding', () => {
    fc.assert(
      fc.property(pair, written, fc.constantFrom(...fluidFoods), ({ from, to }, amount, food) => {
        fc.pre(from !== to);
        const line = converted(`${amount} ${food}`, from, to);
        expect(isSettled(line, kitchen(to)) || rulesOf(line).length > 0 ? '' : textOf(line)).toBe('');
      }),
      { numRuns: 300 },
    );
  });

  test('never passes over a nearer measure of the same unit and awkwardness', () => {
    fc.assert(
      fc.property(pair, written, fc.constantFrom(...fluidFoods), ({ from, to }, amount, food) => {
        fc.pre(from !== to);
        const line = converted(`${amount} ${food}`, from, to);
        // Cuts by a wrapper's marks are in none of these tables.
        fc.pre(kitchen(to).scale !== null || !soldBy(line.food, to)?.packs.some(({ marks }) => marks !== null));
        const terms = line.stated?.statements[0];
        const table = ways
          .map((way) => measuresBy(kitchen(to), way))
          .find((list) => list.some((each) => isOf(each, terms)));
        const chosen = table?.find((each) => isOf(each, terms));
        const native = chosen?.base === 'g' ? line.native.grams : line.native.millilitres;
        fc.pre(chosen !== undefined && native != null && line.stated?.pack === null);
        const rivals = table?.filter(
          ({ awkwardness, terms: [first] }) =>
            awkwardness === chosen?.awkwardness && first?.unit === chosen.terms[0]?.unit,
        );
        const off = (size: Exact | undefined): number => Math.abs(Math.log(Number(size?.dividedBy(native ?? 1))));
        const nearest = Math.min(...(rivals ?? []).map(({ size }) => off(size)));
        expect(off(chosen?.size)).toBeCloseTo(nearest, 9);
      }),
      { numRuns: 300 },
    );
  });

  test('to the native kitchen gives the text as it was written', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kitchenIds),
        written,
        fc.constantFrom(...fluidFoods, 'flibber'),
        (id, amount, food) => {
          const line = `${amount} ${food}, sifted`;
          expect(textOf(converted(line, id, id))).toBe(line);
        },
      ),
    );
  });

  test('is exact: no drift of a weight that both kitchens have on the scale', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), (fives) => {
        const line = converted(`${fives * 5} g plain flour`, 'uk', 'eu');
        expect(line.drift?.toString()).toBe('0');
      }),
    );
  });
});

const soldBy = (food: Food | null, id: string): Sold | null => (food === null ? null : soldIn(food, id));

function isOf({ terms }: { terms: readonly Term[] }, wanted: readonly Term[] | undefined): boolean {
  return (
    wanted !== undefined &&
    terms.length === wanted.length &&
    terms.every(({ low, unit }, index) => wanted[index]?.unit === unit && wanted[index].low.equals(low))
  );
}

describe('edits', () => {
  const prep = fc.constantFrom(
    '',
    ', sifted',
    ', plus more for dusting',
    ' (see the note)',
    ', cut into 2-inch pieces',
  );
  const before = fc.constantFrom('', 'about ', 'heaped ', 'a scant ');

  test('leave every other stretch of the line as it was', () => {
    fc.assert(
      fc.property(
        pair,
        before,
        written,
        fc.constantFrom(...fluidFoods),
        prep,
        ({ from, to }, lead, amount, food, tail) => {
          const version = converted(`${lead}${amount} ${food}${tail}`, from, to);
          expect(keptOf(version.line.text, version.edits)).toBe(true);
        },
      ),
    );
  });

  test('never overlap', () => {
    fc.assert(
      fc.property(pair, written, fc.constantFrom(...fluidFoods), prep, ({ from, to }, amount, food, tail) => {
        const { edits } = converted(`${amount} ${food}${tail}`, from, to);
        const ascending = [...edits].sort((a, b) => a.start - b.start);
        expect(ascending.every(({ start }, index) => start >= (ascending[index - 1]?.end ?? 0))).toBe(true);
      }),
    );
  });

  test('are applied in any order', () => {
    const edits = [
      { start: 4, end: 7, text: 'B' },
      { start: 0, end: 1, text: 'A' },
      { start: 7, end: 7, text: '!' },
    ];
    expect(applyEdits('one two three', edits)).toBe('Ane B! three');
  });
});

/** Whether what stands between the edits is found again, in order, in the edited text. */
function keptOf(text: string, edits: VersionLine['edits']): boolean {
  const out = applyEdits(text, edits);
  let at = 0;
  let from = 0;
  for (const edit of [...edits].sort((a, b) => a.start - b.start)) {
    const between = text.slice(from, edit.start);
    if (out.slice(at, at + between.length) !== between) return false;
    at += between.length + edit.text.length;
    from = edit.end;
  }
  return out.slice(at) === text.slice(from);
}
