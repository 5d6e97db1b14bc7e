import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { converted } from '../reauthoring/recipe-of.js';

// Packs as shoppers of each country know them, a kitchen and a line each. Common practice, no source.
const packs = readFileSync(new URL('usual-packs.txt', import.meta.url), 'utf8')
  .trim()
  .split('\n');
const each = packs.map((row) => ({ kitchen: row.slice(0, 2), line: row.slice(3) }));

test('a pack that shops have is no finding in its own kitchen', () => {
  expect(each.length).toBeGreaterThan(150);
  const found = each.flatMap(({ kitchen, line }) => {
    const { food, problems } = converted(line, kitchen, kitchen);
    const rules = problems.flatMap(({ problem }) => (problem.rule === 'unbuyable' ? [problem.reason] : []));
    return food === null ? [`${kitchen}: ${line}: unknown`] : rules.map((reason) => `${kitchen}: ${line}: ${reason}`);
  });
  expect(found).toEqual([]);
});

test.for([
  ['us', '1 (13-oz) can kidney beans'],
  ['ca', '1 (300 ml) can diced tomatoes'],
  ['uk', '1 x 500g tin chickpeas'],
  ['eu', '1 350 g tin chopped tomatoes'],
  ['au', '1 500 g tin chickpeas'],
] as const)('a pack that no %s shop has is one: %s', ([kitchen, line]) => {
  const { problems } = converted(line, kitchen, kitchen);
  expect(problems.map(({ problem }) => problem.rule === 'unbuyable' && problem.reason)).toContain('pack-size');
});
