import { findFoodOfLine, readLine } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { converted, rulesOf, textOf } from '../reauthoring/recipe-of.js';

const { foods } = builtInLarder();
const roleOf = (line: string): string | undefined => findFoodOfLine(readLine(line), foods, 'us')?.food.role;

describe('a cure, by whatever name', () => {
  // Names: common practice, no source.
  const cures = [
    '4 tsp pink curing salt #1',
    '1 tsp pink curing salt no. 2',
    '1 tsp Prague powder #1',
    '2.5 g quick cure',
    '1 oz nitrite cure',
    '1 tsp salt (with nitrite)',
    '5 g curing mix',
  ];

  test.for(cures)('%s is one, and no kitchen reads another amount', (line) => {
    expect(roleOf(line)).toBe('cure');
    for (const kitchen of ['uk', 'eu', 'ca', 'au']) expect(textOf(converted(line, 'us', kitchen))).toBe(line);
  });

  test('is an error by the spoon, and none by weight', () => {
    expect(rulesOf(converted('4 tsp pink curing salt #1', 'us', 'uk')).join(' ')).toContain('curing-salt');
    expect(rulesOf(converted('2.5 g quick cure', 'us', 'uk'))).toEqual([]);
  });

  test.for(['1 lb nitrate-free bacon', '8 oz dry-cured ham', '1 tsp salt', '2 lb bacon, no nitrites'])(
    '%s is none',
    (line) => {
      expect(roleOf(line)).not.toBe('cure');
    },
  );
});
