import { Exact, type UnitId, writeLabel, writeStated } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { expect, test } from 'vitest';

const labels: readonly { size: string; unit: UnitId; written: string }[] = [
  { size: '400', unit: 'g', written: '400 g' },
  { size: '1.136', unit: 'l', written: '1.136 l' },
  { size: '0.035', unit: 'oz', written: '0.035 oz' },
  { size: '0.5', unit: 'gallon', written: '½ gallon' },
  { size: '2', unit: 'quart', written: '2 quart' },
  { size: '8', unit: 'floz', written: '8 fl oz' },
  { size: '6', unit: 'count', written: '6' },
];

test.for(labels)('a label of $size $unit keeps all its digits and is read as $written', ({ size, unit, written }) => {
  expect(writeLabel({ size: new Exact(size), unit })).toBe(written);
});

test('a carton of two quarts is a 2-quart carton', () => {
  const us = builtInLarder().kitchens.get('us');
  if (us === undefined) throw new Error('The larder has a US kitchen.');
  const pack = { size: new Exact(2), unit: 'quart', word: 'carton' } as const;
  const stated = {
    statements: [[{ low: new Exact(1), high: null, unit: 'count' as const }]],
    pack,
    eggSize: null,
    approx: false,
  };
  expect(writeStated(stated, us)).toBe('1 (2-quart) carton');
});
