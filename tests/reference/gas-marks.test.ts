import { Exact } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { expect, test } from 'vitest';
import { readCsv } from './read-csv.js';

const oven = builtInLarder().kitchens.get('uk')?.oven;
const table = readCsv('gas-marks.csv');

test.for(table)('gas mark $mark is $celsius °C on the dial: $source', ({ mark, celsius }) => {
  expect(oven?.gas.find((gas) => gas.mark === mark)?.celsius.toString()).toBe(celsius);
});

test.for(table)('a fan oven for gas mark $mark is set to $fan_celsius °C: $source', ({ mark, fan_celsius }) => {
  const celsius = oven?.gas.find((gas) => gas.mark === mark)?.celsius;
  expect(celsius?.minus(oven?.fanDifference ?? 0).toString()).toBe(fan_celsius);
});

test.for(table)('gas mark $mark is $fahrenheit °F to the nearest 10 °C: $source', ({ mark, fahrenheit = '' }) => {
  const celsius = oven?.gas.find((gas) => gas.mark === mark)?.celsius ?? new Exact(0);
  const exact = new Exact(fahrenheit).minus(32).times(5).dividedBy(9);
  expect(celsius.minus(exact).abs().toNumber()).toBeLessThan(10);
});

test('there are as many gas marks as in the table', () => {
  expect(oven?.gas).toHaveLength(table.length);
});
