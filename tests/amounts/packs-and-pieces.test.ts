import { readLine } from '@retare/core';
import { expect, test } from 'vitest';

test.for([
  ['1 pack of 6 tortilla wraps', '1', '6 count pack', 'tortilla wraps'],
  ['2 packs of 6 bread rolls', '2', '6 count pack', 'bread rolls'],
  ['1 pack of 500 g mince', '1', '500 g pack', 'mince'],
  ['1 pottle (250 g) sour cream', '1', '250 g pot', 'sour cream'],
] as const)('%s', ([line, count, pack, food]) => {
  const reading = readLine(line);
  expect(reading.amounts[0]?.low.toString()).toBe(count);
  expect(`${reading.pack?.size} ${reading.pack?.unit} ${reading.pack?.word}`).toBe(pack);
  expect(reading.food?.text).toBe(food);
});

test.for([
  ['2 lg. eggs', 'lg.'],
  ['1 sm. onion', 'sm.'],
  ['3 large eggs', 'large'],
] as const)('the size of %s is %s', ([line, size]) => {
  const { start, end } = readLine(line).size?.span ?? { start: 0, end: 0 };
  expect(line.slice(start, end)).toBe(size);
});

test('a brick is a block, but for the cheese of that name', () => {
  expect(readLine('1 brick cream cheese').food?.text).toBe('cream cheese');
  expect(readLine('8 oz brick cheese').food?.text).toBe('brick cheese');
});

test('what is used of another fruit ends the name', () => {
  expect(readLine('zest of 2 lemons and juice of 1').food?.text).toBe('lemons');
});
