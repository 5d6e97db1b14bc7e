import { type LineReading, readLine } from '@retare/core';
import { describe, expect, test } from 'vitest';

const amounts = ({ amounts: all }: LineReading): string[] => all.map(({ low, unit }) => `${low} ${unit}`);
/** What stays of a line when its amounts are taken away. */
const rest = ({ text, amountSpans }: LineReading): string =>
  amountSpans.reduceRight((left, { start, end }) => left.slice(0, start) + left.slice(end), text).trim();

describe('what is added to an amount before the food is named', () => {
  test.for([
    ['1 stick (½ cup) plus 2 tbsp butter', '10 tbsp'],
    ['½ cup (1 stick) plus 2 tablespoons butter', '10 tbsp'],
    ['2 sticks (1 cup) plus 1 tbsp butter', '17 tbsp'],
    ['1 cup (120 g) plus 2 tbsp (15 g) flour', '18 tbsp = 135 g'],
    ['1 cup plus 2 tbsp (135 g) flour', '18 tbsp = 135 g'],
  ] as const)('%s is %s', ([line, sum]) => {
    const reading = readLine(line);
    expect(amounts(reading).join(' = ')).toBe(sum);
    expect(reading.plus).toBeUndefined();
    expect(rest(reading)).toBe(reading.food?.text);
  });

  test.for([
    ['1 can (15 oz) plus 2 tbsp black beans', '2 tbsp', null],
    ['1 (14-oz) can plus ¼ cup coconut milk', '0.25 cup', null],
    ['1 (14-oz) can coconut milk plus ¼ cup', '0.25 cup', null],
    ['1 (14-oz) can coconut milk, plus ¼ cup', '0.25 cup', null],
    ['1 x 400 g tin plus 3 tbsp coconut milk', '3 tbsp', null],
    ['1 (14.5-oz) can plus 1 (8-oz) can tomato sauce', '1 can', '8 oz'],
    ['1 large can (28 oz) plus 1 small can (14 oz) tomatoes', '1 can', '14 oz'],
  ] as const)('a can and more, %s', ([line, more, size]) => {
    const reading = readLine(line);
    expect(`${reading.plus?.amount.low} ${reading.plus?.amount.unit}`).toBe(more);
    expect(reading.plus?.pack == null ? null : `${reading.plus.pack.size} ${reading.plus.pack.unit}`).toBe(size);
    expect(amounts(reading)).toHaveLength(1);
    expect(reading.further).toEqual([]);
    expect(rest(reading)).toBe(reading.food?.text);
  });

  test.for([
    ['2 cups flour plus 2 tbsp', 1],
    ['1 cup sugar, plus 2 tbsp for dusting', 1],
    ['1 (15-oz) can black beans plus 2 tbsp water', 1],
    ['1 (14-oz) can coconut milk, plus ¼ cup for serving', 1],
    ['1 can tomatoes and 2 tbsp', 1],
    ['1 (1-inch) piece ginger, plus 1 tsp grated', 1],
  ] as const)('stays where it is in %s', ([line, further]) => {
    const reading = readLine(line);
    expect(reading.plus).toBeUndefined();
    expect(reading.further).toHaveLength(further);
  });
});

describe('other packs of as much', () => {
  test.for([
    ['1 (28-oz) can or 2 (14.5-oz) cans diced tomatoes', '28'],
    ['1 28-ounce can or two 14-ounce cans crushed tomatoes', '28'],
    ['1 (28-oz) can (or 2 (14.5-oz) cans) diced tomatoes', '28'],
    ['1 (28-oz) can diced tomatoes or 2 (14.5-oz) cans', '28'],
    ['2 (14.5-oz) cans or 1 (28-oz) can diced tomatoes', '14.5'],
    ['1 x 800 g tin or 2 x 400 g tins chopped tomatoes', '800'],
  ] as const)('fall away in %s', ([line, size]) => {
    const reading = readLine(line);
    expect(reading.pack?.size.toString()).toBe(size);
    expect(amounts(reading)).toHaveLength(1);
    expect(reading.food?.text).toContain('tomatoes');
    expect(rest(reading)).toMatch(/^(?:diced |crushed |chopped )?tomatoes$/);
  });

  test.for([
    '1 cup (one 8-oz can) tomato sauce',
    '2½ cups (from 1 (20-oz) can) tomato sauce',
    '1 cup (8 oz) tomato sauce',
  ])('in a bracket behind a cup, %s', (line) => {
    const reading = readLine(line);
    expect(reading.pack).toBeNull();
    expect(reading.food?.text).toBe('tomato sauce');
  });

  test('fall away behind a cup', () => {
    expect(rest(readLine('1 cup (one 8-oz can) tomato sauce'))).toBe('tomato sauce');
  });

  test('are no other food', () => {
    const reading = readLine('1 (15-oz) can black beans or 1 (15-oz) can pinto beans');
    expect(reading.food?.text).toBe('black beans');
    expect(reading.text.slice(reading.amountSpans.at(-1)?.start, reading.amountSpans.at(-1)?.end)).not.toContain('or');
  });
});
