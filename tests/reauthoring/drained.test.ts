import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { converted, recipeOf, textOf } from './recipe-of.js';
import { foodOf, larderOf, soldAs } from './sample-food.js';
import { setting } from './setting.js';

describe('a can that is drained, where its food comes in no can', () => {
  // A US can of beets holds 260 g without its water, a UK vacuum pack nothing else: common practice, no source.
  test.for([
    ['1 (15-oz) can beets, drained', '260 g beets, drained'],
    ['1–2 (15-oz) cans beets, drained', '260–525 g beets, drained'],
    ['1 (15-oz) can beets', '425 g beets'],
  ] as const)('%s is %s', ([line, becomes]) => {
    const result = converted(line, 'us', 'uk');
    expect(textOf(result)).toBe(becomes);
    expect(result.drift?.abs().toNumber()).toBeLessThan(0.02);
  });

  test('is re-authored from what is drained', () => {
    const result = reauthoredOf(
      recipeOf({ kitchen: 'us', lines: ['1 (15-oz) can beets, drained', '1 lb kale'] }),
      'uk',
      setting,
    );
    const grams = result.version.parts[0]?.lines[0]?.chosen.grams?.toNumber();
    expect(Math.abs(Math.log((grams ?? 0) / 260))).toBeLessThan(0.06);
  });

  test('of one or two cans, drained, the middle is compared with the middle of as many tins', () => {
    const recipe = recipeOf({ kitchen: 'us', lines: ['1–2 (15-oz) cans chickpeas, drained', '1 lb kale'] });
    const result = reauthoredOf(recipe, 'uk', setting);
    const [line] = result.version.parts[0]?.lines ?? [];
    expect(line === undefined ? '' : textOf(line)).toBe('1–2 × 400 g tins chickpeas, drained');
    expect(result.version.batchFactor.minus(1).abs().toNumber()).toBeLessThan(0.1);
  });

  const gloop = (uk: Parameters<typeof soldAs>[0]) =>
    larderOf(foodOf({ us: soldAs([{ size: 400, whole: 'yes', drained: 240 }]), any: soldAs(uk) }));
  const become = (uk: Parameters<typeof soldAs>[0]): string =>
    textOf(converted('2 (400-g) cans gloop, drained', 'us', 'uk', gloop(uk)));

  test('is compared can by can where cans are used whole, and stays where the shops have the same', () => {
    expect(become([{ size: 500, whole: 'yes', drained: 245 }])).toBe('2 × 500 g tins gloop, drained');
    expect(become([{ size: 400, drained: 240 }])).toBe('2 × 400 g tins gloop, drained');
    expect(become([{ size: 300 }])).toBe('480 g gloop, drained');
  });
});
