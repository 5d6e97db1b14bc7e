import * as check from '@retare/check';
import { expect, test } from 'vitest';

test('the package exports what it says, and no more', () => {
  expect(Object.keys(check).sort()).toEqual([
    'checkFiles',
    'checkPost',
    'jsonReport',
    'packWords',
    'parsePost',
    'preserveQuestion',
    'summarise',
    'summaryLine',
    'textReport',
  ]);
});
