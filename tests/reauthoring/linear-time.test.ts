import { versionFor } from '@retare/core';
import { expect, test } from 'vitest';
import { leastGrowth } from '../growth.ts';
import { recipeOf } from './recipe-of.js';
import { setting } from './setting.js';

const lines: readonly { name: string; before: string; behind: string }[] = [
  { name: 'a number and what it counts', before: '3', behind: 'leaves gelatine' },
  { name: 'what is counted and its food', before: '3 leaves', behind: 'x gelatine' },
  { name: 'a number and its unit', before: '3', behind: 'cups flour' },
];

test.for(lines)('blanks between $name, twice as many, take at most 2.5 times as long', ({ before, behind }) => {
  const texts = [10_000, 20_000, 40_000].map((size) => `${before}${' '.repeat(size)}${behind}`);
  const version = (text: string): unknown =>
    versionFor(recipeOf({ kitchen: 'uk', lines: [text] }, setting), 'us', setting);
  expect(leastGrowth(version, texts, { runs: 2, goodEnough: 2.5 })).toBeLessThanOrEqual(2.5);
});
