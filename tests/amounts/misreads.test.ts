import { readLine } from '@retare/core';
import { describe, expect, test } from 'vitest';

describe('what only looks like an amount', () => {
  test.for([
    'a good quality olive oil',
    'a good-quality balsamic vinegar, to serve',
    'a dry white wine',
    'a mature cheddar, grated',
  ])('an article before what nobody counts: %s', (line) => {
    expect(readLine(line)).toMatchObject({ kind: 'no-amount', amounts: [], amountSpans: [], doubt: null });
  });

  test.for([
    ['an onion', 'count'],
    ['a cup of olive oil', 'cup'],
    ['a 400 ml can coconut milk', 'can'],
  ] as const)('an article that counts is an amount: %s', ([line, unit]) => {
    expect(readLine(line).amounts.map((amount) => amount.unit)).toEqual([unit]);
  });

  test.for([
    ['1 1 cup flour', '1 1 cup'],
    ['2 1 tbsp sugar', '2 1 tbsp'],
    ['1 cup to 2 tbsp milk', '1 cup to 2 tbsp'],
    ['500 g to 1 oz flour', '500 g to 1 oz'],
  ] as const)('numbers that cannot both be meant: %s', ([line, text]) => {
    expect(readLine(line)).toMatchObject({ amounts: [], doubt: { text } });
  });

  test.for(['1 1/2 cups flour', '1 7oz can tuna', '1 cup to 2 cups milk', '2 tbsp to ¼ cup oil'])(
    'and numbers that can: %s',
    (line) => {
      expect(readLine(line).doubt).toBeNull();
      expect(readLine(line).amounts).toHaveLength(1);
    },
  );
});
