import {
  dimensionOf,
  Exact,
  type Kitchen,
  type Line,
  measuresBy,
  type Pack,
  readLine,
  type Stated,
  soldIn,
  statedIn,
  type Term,
  type UnitId,
  writeStated,
} from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lineOf } from './recipe-of.js';
import { kitchen, kitchenIds, setting } from './setting.js';

const ways = ['spoon', 'cup', 'jug', 'scale'] as const;

/** Whether two exact amounts are one: thirds end after forty digits. */
function same(one: Exact, other: Exact): boolean {
  return one.minus(other).abs().lessThan('1e-20');
}

describe('writing an amount and reading it', () => {
  const measured: readonly UnitId[] = [
    'g',
    'kg',
    'oz',
    'lb',
    'ml',
    'l',
    'tsp',
    'tbsp',
    'cup',
    'floz',
    'pint',
    'quart',
    'gallon',
  ];
  const counted: readonly UnitId[] = ['count', 'clove', 'slice', 'bunch', 'sprig', 'head', 'stick', 'handful'];
  const eighths = fc.integer({ min: 1, max: 64 }).map((n) => new Exact(n).dividedBy(8));
  const thirds = fc.integer({ min: 1, max: 24 }).map((n) => new Exact(n).dividedBy(3));
  const hundredths = fc.integer({ min: 1, max: 200_000 }).map((n) => new Exact(n).dividedBy(100));
  const decimal = new Set<UnitId>(['g', 'kg', 'ml', 'l']);
  const number = (unit: UnitId) => (decimal.has(unit) ? [hundredths] : [eighths, thirds]);

  // Both ends of a range are of one kind: nobody writes ⅓ to ⅝.
  const term = fc
    .constantFrom(...measured, ...counted)
    .chain((unit) =>
      fc
        .oneof(...number(unit).map((each) => fc.tuple(each, fc.option(each, { freq: 3 }))))
        .map(([low, high]): Term => ({ low, high: high?.greaterThan(low) ? high : null, unit })),
    );
  const stated = fc
    .record({ term, approx: fc.boolean() })
    .map(({ term: only, approx }): Stated => ({ statements: [[only]], pack: null, eggSize: null, approx }));

  /** Kilograms are written from 1000 g up, so what is read may be in the larger unit. */
  function sameSize(one: Term | undefined, other: Term | undefined): boolean {
    const factor = (unit: UnitId | undefined): number => (unit === 'kg' || unit === 'l' ? 1000 : 1);
    const family = (unit: UnitId | undefined) => (unit === 'kg' ? 'g' : unit === 'l' ? 'ml' : unit);
    if (one === undefined || other === undefined || family(one.unit) !== family(other.unit)) return false;
    const size = (end: Exact, unit: UnitId): Exact => end.times(factor(unit));
    const [high, otherHigh] = [one, other].map(({ low, high: top, unit }) => size(top ?? low, unit));
    const isLowSame = near(size(one.low, one.unit), size(other.low, other.unit));
    return isLowSame && high !== undefined && otherHigh !== undefined && near(high, otherHigh);
  }

  // Kilograms show two places, so 1234 g are written 1.23 kg.
  function near(one: Exact, other: Exact): boolean {
    const limit = one.greaterThanOrEqualTo(1000) ? 5 : '1e-20';
    return one.minus(other).abs().lessThanOrEqualTo(limit);
  }

  test('gives the same amount, for every unit, fraction and range', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kitchenIds), stated, (id, amount) => {
        const text = `${writeStated(amount, kitchen(id))} flour`;
        const read = statedIn(readLine(text, { kitchen: kitchen(id).units }));
        const isSame = sameSize(read?.statements[0]?.[0], amount.statements[0]?.[0]) && read?.approx === amount.approx;
        expect(isSame ? '' : `${text} is read as ${read === null ? 'nothing' : writeStated(read, kitchen(id))}`).toBe(
          '',
        );
      }),
      { numRuns: 2000 },
    );
  });

  test.for(kitchenIds)('gives the same amount for all that the %s kitchen can measure', (id) => {
    const home = kitchen(id);
    const lost = ways
      .flatMap((way) => [...measuresBy(home, way)])
      .filter(({ terms, size, base }) => {
        const amount: Stated = { statements: [[...terms]], pack: null, eggSize: null, approx: false };
        const line = lineOf(`${writeStated(amount, home)} water`, id);
        return !same(sizeRead(line, base, home), size);
      });
    expect(
      lost.map(({ terms }) =>
        writeStated({ statements: [[...terms]], pack: null, eggSize: null, approx: false }, home),
      ),
    ).toEqual([]);
  });

  test.for(kitchenIds)('gives the same pack, for every food and pack of the %s kitchen', (id) => {
    const lost = packsIn(id).filter((pack) => !isReadBack(pack, id));
    expect(lost.map((pack) => writeStated(twoOf(pack), kitchen(id)))).toEqual([]);
  });
});

function packsIn(id: string): Pack[] {
  const packs = [...setting.foods.values()].flatMap((food) => soldIn(food, id)?.packs ?? []);
  return packs.filter(({ unit }) => unit !== 'count');
}

function twoOf({ size, unit, word }: Pack): Stated {
  const two: Term = { low: new Exact(2), high: null, unit: 'count' };
  return { statements: [[two]], pack: { size, unit, word }, eggSize: null, approx: false };
}

function isReadBack(pack: Pack, id: string): boolean {
  const text = `${writeStated(twoOf(pack), kitchen(id))} flour`;
  const read = readLine(text, { kitchen: kitchen(id).units }).pack;
  return (read?.size.equals(pack.size) ?? false) && read?.unit === pack.unit && read.word === pack.word;
}

/** What a written line comes to, by its units alone. */
function sizeRead({ reading }: Line, base: 'g' | 'ml', home: Kitchen): Exact {
  const amount = reading.amounts[0];
  const sizes: Readonly<Record<string, Exact | string>> = { ...home.units, g: '1', kg: '1000', ml: '1', l: '1000' };
  const each = amount === undefined ? undefined : sizes[amount.unit];
  const isBase = amount !== undefined && dimensionOf(amount.unit) === (base === 'g' ? 'mass' : 'volume');
  return isBase && each !== undefined ? amount.low.times(each) : new Exact(-1);
}
