import { near } from '@retare/core';
import { expect, test } from 'vitest';

test.each([
  ['UK', ['us', 'uk'], 'uk'],
  ['usa', ['us', 'uk'], 'us'],
  ['cl', ['ml', 'g'], undefined],
  ['ovne', ['oven', 'core'], 'oven'],
  ['stand_ins', ['sold', 'stand-ins'], 'stand-ins'],
  ['ingredeints', ['ingredients', 'method'], 'ingredients'],
  ['parsnip', ['oven', 'method'], undefined],
  ['o'.repeat(41), ['o'.repeat(40)], undefined],
])('of what might be meant by `%s`, %j, it is %s', (written, words, meant) => {
  expect(near(written, words)).toBe(meant);
});
