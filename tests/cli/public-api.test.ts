import * as cli from '@retare/cli';
import { expect, test } from 'vitest';

test('the package exports what it says, and no more', () => {
  expect(Object.keys(cli).sort()).toEqual(['exitCodes', 'run']);
});
