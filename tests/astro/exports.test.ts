import * as astro from '@retare/astro';
import { expect, test } from 'vitest';

test('the package exports the integration alone', () => {
  expect(Object.keys(astro)).toEqual(['default']);
  expect(astro.default()).toMatchObject({ name: '@retare/astro' });
});
