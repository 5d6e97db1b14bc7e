import { expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeOf, textOf } from './recipe-of.js';
import { setting } from './setting.js';

// A US envelope holds 7 g (USDA SR26 19177), a UK sachet 12, an EU one 9: cooks there weigh or spoon a part of one out.
test.for([
  ['us', 'uk', '1 (¼-oz) envelope unflavored gelatin', '7 g powdered gelatine'],
  ['us', 'eu', '2 (¼-oz) envelopes unflavored gelatin', '14 g powdered gelatine'],
  ['uk', 'us', '1 × 12 g sachet powdered gelatine', '3¾ tsp unflavored gelatin'],
] as const)('from %s to %s: %s can be had, and keeps its ratio to what it sets', ([from, to, line, becomes]) => {
  const lines = [line, from === 'us' ? '2 cups milk' : '500 ml milk'];
  const result = reauthoredOf(recipeOf({ kitchen: from, lines }), to, setting);
  expect(result.infeasible).toBeNull();
  expect(result.version.parts.flatMap((part) => part.lines.map(textOf))[0]).toBe(becomes);
  const ratio = result.ratios.find(({ name }) => name === 'gelling agent : liquid');
  expect(Math.abs((ratio?.version ?? 0) / (ratio?.native ?? 1) - 1)).toBeLessThanOrEqual(ratio?.limit ?? 0);
});
