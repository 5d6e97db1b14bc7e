import { describe, expect, test } from 'vitest';
import { converted, rulesOf, textOf } from './recipe-of.js';

// A US stick and a Canadian block are marked in tablespoons of 14.2 g: common practice, no source.
describe('butter that is cut by the marks on its wrapper', () => {
  test.for([
    ['uk', '5 g butter', 'us', '1 tsp butter', 'less than half a mark is spooned'],
    ['uk', '20 g butter', 'us', '1½ tbsp butter', 'a mark and a half'],
    ['uk', '125 g butter', 'us', '9 tbsp butter', '127.6 g'],
    ['uk', '225 g butter', 'us', '1 (8-oz) box butter', 'a whole box'],
    ['uk', '255 g butter', 'us', '1 cup + 2 tbsp butter', '18 marks'],
    ['uk', '400 g butter', 'ca', '1¾ cups butter', '28 marks: 397 g, not the 419 g of 1¾ metric cups'],
    ['us', '3 cups butter', 'ca', '3 cups butter', '48 marks are more than one block'],
    ['us', '2 sticks butter', 'ca', '1 cup butter', '16 marks'],
  ] as const)('%s: %s reads in %s %s, %s', ([from, line, to, becomes]) => {
    const version = converted(line, from, to);
    expect([textOf(version), rulesOf(version)]).toEqual([becomes, []]);
  });

  test('can be measured up to both ends of a range', () => {
    const version = converted('6–9 tbsp butter', 'us', 'ca');
    expect([textOf(version), rulesOf(version)]).toEqual(['6–9 tbsp butter', []]);
  });

  test('weighs in Canada what the wrapper says, and not what a metric cup holds', () => {
    expect(converted('½ cup butter', 'us', 'ca').chosen.grams?.toDecimalPlaces(1).toString()).toBe('113.5');
  });
});
