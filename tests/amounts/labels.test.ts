import { readLength, readOven, readPan, readTemperature } from '@retare/core';
import { describe, expect, test } from 'vitest';

const range = (low: { toString(): string }, high: { toString(): string } | null): string =>
  high === null ? `${low}` : `${low}-${high}`;

describe('an oven label', () => {
  const settings = (text: string): string[] =>
    readOven(text).map(({ low, high, unit, fan, impliedUnit }) => {
      return `${range(low, high)} ${unit}${fan ? ' fan' : ''}${impliedUnit ? ' implied' : ''}`;
    });

  test.for([
    ['400°F', ['400 F']],
    ['180 °C', ['180 C']],
    ['180 °C/160 °C fan/gas 4', ['180 C', '160 C fan', '4 gas']],
    ['180C/fan 160C/gas 4', ['180 C', '160 C fan', '4 gas']],
    ['180 °C/fan 160', ['180 C', '160 C fan']],
    ['350°F convection', ['350 F fan']],
    ['200C fan', ['200 C fan']],
    ['160°C fan-forced', ['160 C fan']],
    ['220c (fan), or gas mark 7', ['220 C fan', '7 gas']],
    ['gas mark 4', ['4 gas']],
    ['gas mark ½', ['0.5 gas']],
    ['400 degrees', ['400 F implied']],
    ['400', ['400 F implied']],
    ['180-200°C', ['180-200 C']],
    ['200°C (180°C fan)', ['200 C', '180 C fan']],
    ['350°F (180°C)', ['350 F', '180 C']],
    ['360ºF', ['360 F']],
    ['180 ℃', ['180 C']],
    ['a hot oven', []],
    ['at 400 for 20 minutes', []],
    ['gas 45', []],
  ] as const)('“%s” says %j', ([text, read]) => {
    expect(settings(text)).toEqual(read);
  });

  test('gives the stretch of each setting, with its fan word', () => {
    const text = '180 °C/160 °C fan/gas 4';
    expect(readOven(text).map(({ span }) => text.slice(span.start, span.end))).toEqual([
      '180 °C',
      '160 °C fan',
      'gas 4',
    ]);
  });
});

describe('a temperature label', () => {
  test.for([
    ['165°F', ['165 F']],
    ['74 °C', ['74 C']],
    ['165°F (74°C)', ['165 F', '74 C']],
    ['110 to 115°F', ['110-115 F']],
    ['80°-85°F (25°-30°C)', ['80-85 F', '25-30 C']],
    ['110 degrees F, 43 degrees C', ['110 F', '43 C']],
    ['-18 °C', ['-18 C']],
    ['3 minutes', []],
  ] as const)('“%s” says %j', ([text, read]) => {
    expect(readTemperature(text).map(({ low, high, unit }) => `${range(low, high)} ${unit}`)).toEqual(read);
  });

  test('without a letter leaves the unit to the kitchen', () => {
    expect(readTemperature('165').map(({ impliedUnit }) => impliedUnit)).toEqual([true]);
  });
});

describe('a pan label', () => {
  const pan = (text: string): string | null => {
    const read = readPan(text);
    if (read === null) return null;
    const size = read.capacity?.toString() ?? read.sides.join(' x ');
    const depth = read.depth === null ? '' : ` deep ${read.depth}`;
    return `${read.count === null ? '' : `${read.count} of `}${size} ${read.unit}${depth} ${read.shape}`;
  };

  test.for([
    ['9×13 in', '9 x 13 in rectangle'],
    ['13 x 9-inch', '9 x 13 in rectangle'],
    ['9-by-13-inch', '9 x 13 in rectangle'],
    ['9x13x2 inch', '9 x 13 in deep 2 rectangle'],
    ['9” x 13”', '9 x 13 in rectangle'],
    ["9'' x 13''", '9 x 13 in rectangle'],
    ['8 x 8 in', '8 x 8 in square'],
    ['9-inch round', '9 in round'],
    ['8-inch square', '8 in square'],
    ['two 8-inch round', '2 of 8 in round'],
    ['2 x 8-inch round tins', '2 of 8 in round'],
    ['9 x 5 inch loaf', '5 x 9 in loaf'],
    ['23 × 33 cm', '23 x 33 cm rectangle'],
    ['20cm round', '20 cm round'],
    ['23 cm springform, 6 cm deep', '23 cm deep 6 springform'],
    ['2 x 20cm sandwich tins', '2 of 20 cm unknown'],
    ['2 x 23 x 13 cm loaf tins', '2 of 13 x 23 cm loaf'],
    ['2 × 4 in', '2 x 4 in rectangle'],
    ['4 x 14 in tart pan', '4 x 14 in pie'],
    ['2 x 1 lb loaf tins', '2 of 1 lb loaf'],
    ['2-quart', '2 quart unknown'],
    ['10-cup Bundt pan', '10 cup tube'],
    ['Bundt pan (10-cup)', '10 cup tube'],
    ['10-inch tube pan', '10 in tube'],
    ['12-cup muffin pan', '12 count muffin'],
    ['12 cup muffin tin', '12 count muffin'],
    ['muffin pan (12-cup)', '12 count muffin'],
    ['12-hole bun tin', '12 count muffin'],
    ['12-hole muffin tin', '12 count muffin'],
    ['two 6-cup muffin tins', '2 of 6 count muffin'],
    ['24-cup mini muffin pan', '24 count mini-muffin'],
    ['a muffin pan', ' count muffin'],
    ['mini-muffin tin', ' count mini-muffin'],
    ['9x5 in loaf pan or a muffin tin', '5 x 9 in loaf'],
    ['1.5 l', '1.5 l unknown'],
    ['900 g loaf tin', '900 g loaf'],
    ['2 lb loaf tin', '2 lb loaf'],
    ['9x13', null],
    ['4 to 5 quart', null],
    ['a large dish', null],
  ] as const)('“%s” says %s', ([text, read]) => {
    expect(pan(text)).toBe(read);
  });
});

describe('a pan label with the same size twice', () => {
  test.for([
    ['two 20cm/8in sandwich tins', 'two 20cm/8in'],
    ['23 x 33cm / 9 x 13in', '23 x 33cm / 9 x 13in'],
    ['20 cm (8 in) springform', '20 cm (8 in)'],
    ['900g (2lb) loaf tin', '900g (2lb)'],
    ['2lb/900g loaf tin', '2lb/900g'],
    ['23 cm springform (6 cm deep)', '23 cm'],
    ['8-inch or 9-inch round', '8-inch'],
  ] as const)('“%s” has “%s” as its size', ([text, size]) => {
    const { start, end } = readPan(text)?.span ?? { start: 0, end: 0 };
    expect(text.slice(start, end)).toBe(size);
  });
});

describe('a length label', () => {
  test.for([
    ['2 in', '2 in'],
    ['2-inch', '2 in'],
    ['½ inch', '0.5 in'],
    ['half an inch', '0.5 in'],
    ['3/4 of an inch', '0.75 in'],
    ['5 cm', '5 cm'],
    ['1 to 2 inches', '1-2 in'],
    ['1/4"', '0.25 in'],
    ['1/4”', '0.25 in'],
    ['two fingers', null],
  ] as const)('“%s” says %s', ([text, read]) => {
    const length = readLength(text);
    expect(length === null ? null : `${range(length.low, length.high)} ${length.unit}`).toBe(read);
  });
});
