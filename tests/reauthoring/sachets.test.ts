import { applyEdits } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeOf } from './recipe-of.js';
import { setting } from './setting.js';

function drafted(line: string, from: string, to: string): string | undefined {
  const result = reauthoredOf(recipeOf({ kitchen: from, lines: [line, '500 g flour'] }), to, setting);
  const [first] = result.version.parts.flatMap(({ lines }) => lines);
  return first && applyEdits(first.line.text, first.edits);
}

describe('a pack that is emptied, of a food that also comes in others', () => {
  test.for([
    ['us', 'uk', '1 (¼-oz) packet instant yeast', '1 × 7 g sachet fast-action dried yeast'],
    ['us', 'eu', '2 packets instant yeast', '2 × 7 g sachets fast-action dried yeast'],
    ['us', 'au', '1 packet active dry yeast', '1 × 7 g sachet dried active yeast'],
    ['us', 'uk', '2¼ tsp instant yeast', '1 × 7 g sachet fast-action dried yeast'],
    ['uk', 'eu', '7 g fast-action dried yeast', '1 × 7 g sachet fast-action dried yeast'],
    ['uk', 'us', '7 g fast-action dried yeast', '1 (¼-oz) envelope instant yeast'],
    ['uk', 'eu', '10 g fast-action dried yeast', '10 g fast-action dried yeast'],
    // UK shops have active dry yeast in tins of 125 g only.
    ['us', 'uk', '1 packet active dry yeast', '7 g dried active yeast'],
  ] as const)('from %s to %s, %s is %s', ([from, to, line, becomes]) => {
    expect(drafted(line, from, to)).toBe(becomes);
  });

  test('is a larger can of soup only in part', () => {
    // A US can of 10.5 oz is 298 g; Australian shops have cans of 420 g.
    expect(drafted('1 (10.5-oz) can condensed cream of mushroom soup', 'us', 'au')).toMatch(/^(?:29|30)\d g /);
  });
});
