import { celsiusOf, Exact, safeMinimum } from '@retare/core';
import { builtInLarder, safeClasses } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { type Row, readCsv } from './read-csv.js';

const { kitchens } = builtInLarder();
const rows = readCsv('safe-temperatures.csv');
const celsius = (row: Row) => celsiusOf(new Exact(row.temperature ?? ''), row.unit === 'F' ? 'F' : 'C');
// A kitchen that extends another has its figures, but for those that its own rows give.
const extended: Readonly<Record<string, string>> = { nz: 'au', 'us-scale': 'us' };
const classes = [...kitchens.values()].flatMap((kitchen) =>
  safeClasses.map((name) => ({ kitchen, name, id: kitchen.id })),
);

function statedFor(kitchen: string, name: string): Row[] {
  const own = rows.filter((row) => row.kitchen === kitchen && row.class === name);
  return own.length > 0 ? own : rows.filter((row) => row.kitchen === extended[kitchen] && row.class === name);
}

describe('the least core temperatures', () => {
  test.for(classes)('$id $name is the highest that its authority states', ({ kitchen, name }) => {
    const stated = statedFor(kitchen.id, name).map(celsius);
    const least = safeMinimum(kitchen, name);
    expect(stated).not.toEqual([]);
    expect(least && celsiusOf(least.temperature, least.unit).toString()).toBe(Exact.max(...stated).toString());
  });

  test.for(rows)('$kitchen $class is not under $temperature °$unit for $food: $source', (row) => {
    const kitchen = kitchens.get(row.kitchen ?? '');
    const least = kitchen && safeMinimum(kitchen, row.class ?? '');
    expect(least && celsiusOf(least.temperature, least.unit).gte(celsius(row))).toBe(true);
  });

  test.for(rows.filter((row) => row.hold !== ''))('$kitchen $class keeps the time that goes with it, $hold', (row) => {
    const kitchen = kitchens.get(row.kitchen ?? '');
    const least = kitchen && safeMinimum(kitchen, row.class ?? '');
    const isHigher = least && celsiusOf(least.temperature, least.unit).gt(celsius(row));
    // A range of minutes counts by its longer end.
    expect(isHigher || least?.hold).toSatisfy(
      (hold) => hold === true || Number(minutes(hold)) >= Number(minutes(row.hold)),
    );
  });
});

/** The last number of minutes in `hold 2 min`, `rest 3 to 5 min`. */
function minutes(hold: unknown): string | undefined {
  return String(hold)
    .split(' ')
    .findLast((word) => Number.isFinite(Number(word)));
}
