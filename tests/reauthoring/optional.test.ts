import type { Reauthored } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeOf, textOf } from './recipe-of.js';
import { kitchenIds, setting } from './setting.js';

function drafted(lines: readonly string[], from: string, to: string): Reauthored {
  return reauthoredOf(recipeOf({ kitchen: from, lines }), to, setting);
}

const textsOf = ({ version }: Reauthored): string[] => version.parts.flatMap(({ lines }) => lines.map(textOf));

describe('what a dish does without stands in no version’s way', () => {
  const lines = [
    '½ can (15-oz) black beans (optional)',
    '¼ (15-oz) can black beans, optional',
    '1 (8-oz) can corn, optional',
    '2 tbsp canned chickpeas, to serve',
  ];
  const others = kitchenIds.filter((id) => id !== 'us' && id !== 'us-scale');

  test.for(lines.flatMap((line) => others.map((to) => [line, to] as const)))('%s for %s', ([line, to]) => {
    const result = drafted([line, '2 (15-oz) cans kidney beans', '1 onion'], 'us', to);
    expect(result.infeasible).toBeNull();
    const [optional] = result.version.parts[0]?.lines ?? [];
    expect(optional?.problems.map(({ problem }) => problem.rule)).toEqual([]);
    // Whole, in what that kitchen’s shops sell.
    const count = optional?.stated?.statements[0]?.[0]?.low;
    expect(count?.isInteger()).toBe(true);
    expect(optional?.stated?.pack?.word).toMatch(/^(?:can|tin)$/);
  });

  test('half an optional tin is a tin, and sets no batch', () => {
    const result = drafted(['½ can (15-oz) black beans (optional)', '1 lb kale'], 'us', 'uk');
    expect(textsOf(result)).toEqual(['1 × 400 g tin black beans (optional)', '450 g kale']);
    expect(result.version.batchFactor.toString()).toBe('1');
  });

  test('what is not optional still does', () => {
    expect(drafted(['½ (15-oz) can black beans', '1 lb kale'], 'us', 'uk').infeasible).not.toBeNull();
  });
});
