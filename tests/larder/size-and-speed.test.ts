import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { findFood } from '@retare/core';
import { builtInLarder } from '@retare/larder/built-in';
import { describe, expect, test } from 'vitest';
import { larderFile, median, phrases, timeFinding, timeLoading } from '../bench/larder-times.ts';

const text = readFileSync(larderFile, 'utf8');
const whole = JSON.parse(text) as {
  foods: Record<string, { role: string }>;
  kitchens: Record<string, object>;
  digest: string;
};

describe('the compiled larder', () => {
  test('is under 150 kB gzipped', () => {
    expect(gzipSync(text, { level: 9 }).length).toBeLessThan(150_000);
  });

  test('holds line by line what it holds as one JSON text', () => {
    const { foods, kitchens, digest } = builtInLarder();
    expect([...foods].map(([id, { role }]) => [id, role])).toEqual(
      Object.entries(whole.foods).map(([id, { role }]) => [id, role]),
    );
    expect([[...kitchens.keys()], digest]).toEqual([Object.keys(whole.kitchens), whole.digest]);
  });

  test("is read without the libraries that check a site's files", () => {
    const imports = (name: string, seen = new Set<string>()): Set<string> => {
      if (seen.has(name) || !name.startsWith('.')) return seen.add(name);
      seen.add(name);
      const url = new URL(name, new URL('../../packages/larder/dist/', import.meta.url));
      for (const [, from = ''] of readFileSync(url, 'utf8').matchAll(/from '([^']+)'/g)) {
        const inner = from.startsWith('.') ? `./${new URL(from, url).pathname.split('/larder/dist/')[1]}` : from;
        imports(inner, seen);
      }
      return seen;
    };
    const packages = [...imports('./built-in-larder.js')].filter((name) => !name.startsWith('.'));
    expect(packages.toSorted()).toEqual(['@retare/core', 'node:fs']);
  });

  // Times differ between machines and moments, ratios to a floor in the same run hardly: here a failure is a slip of ten times.
  test('loads in less than one parse of its bytes', () => {
    const loads = timeLoading(3);
    expect(median(loads.map(({ larder, floor }) => larder / floor))).toBeLessThan(1);
  });

  // Of 20 µs on a slow machine: a plain look-up takes 5 to 10 ns.
  test.for(['hits', 'misses'] as const)('looks up %s in less than 2000 plain look-ups', (kind) => {
    for (const { words, finding, floor } of timeFinding(findFood, phrases[kind])) {
      expect(finding / floor, words).toBeLessThan(2000);
    }
  });

  test('finds what the bench says that it finds', () => {
    const { foods } = builtInLarder();
    const isFound = (words: string): boolean => findFood(words, foods, 'us') !== null;
    expect(phrases.hits.filter((words) => !isFound(words))).toEqual([]);
    expect(phrases.misses.filter(isFound)).toEqual([]);
  });
});
