import { Exact, type Pan } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { type Row, readCsv } from './read-csv.js';

const { kitchens } = builtInLarder();
const table = readCsv('pans.csv');

// A Canadian 8 in pan, 1 1/4 in deep, is one of 20 by 3 cm in the table: 7.87 and 1.18 in.
const sideWithin = '0.04';
const depthWithin = '0.06';
const isNear = (one: Exact, other: string, limit: string): boolean => one.dividedBy(other).minus(1).abs().lte(limit);

/** Whether a pan has the sides and depth of a row; a square may have one side in the one and two in the other. */
function fits(pan: Pan, { sides = '', depth = '' }: Row): boolean {
  const [first = '', second = first] = sides.split(' x ').toSorted((one, other) => Number(one) - Number(other));
  const [short = new Exact(0), long = short] = pan.sides;
  const isBaseNear = isNear(short, first, sideWithin) && isNear(long, second, sideWithin);
  return isBaseNear && pan.depth !== null && isNear(pan.depth, depth, depthWithin);
}

const pansLike = (row: Row): Pan[] =>
  (kitchens.get(row.kitchen ?? '')?.pans ?? []).filter((pan) => pan.unit === row.unit && fits(pan, row));

describe('the usual pans', () => {
  test.for(table)('$kitchen has a $name, $sides $unit and $depth $unit deep: $source', (row) => {
    expect(pansLike(row)).not.toEqual([]);
  });

  test.for(table.filter((row) => row.published_ml !== ''))('$kitchen $name holds $published_ml ml: $source', (row) => {
    expect(pansLike(row).map(({ millilitres }) => millilitres?.toString())).toContain(row.published_ml);
  });
});
