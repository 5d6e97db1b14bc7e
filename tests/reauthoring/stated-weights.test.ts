import { describe, expect, test } from 'vitest';
import { converted, textOf, versionOf } from './recipe-of.js';

const weightOf = (text: string, beside: string, id: string): string | undefined =>
  versionOf({ kitchen: id, lines: [text, beside] }, id)
    .parts[0]?.lines[0]?.native.grams?.toDecimalPlaces(1)
    .toString();

describe('what an author says that food weighs', () => {
  test.for([
    ['1 onion (150 g), chopped', '1 tsp salt', '150', 'the line itself'],
    ['2 onions', '1 onion (150 g), chopped', '300', 'another line of the recipe'],
    ['2 cups flour', '1 cup (130 g) flour', '260', 'a cup'],
    ['1 slice bread', '2 slices bread (70 g)', '35', 'a slice'],
    ['4 eggs (220 g without their shells)', '1 tsp salt', '220', 'what goes into the bowl'],
    ['4 eggs (225 g)', '1 tsp salt', '225', 'a weight without a word is what goes into the bowl'],
    ['4 eggs (250 g in their shells)', '1 tsp salt', '220', '0.88 of the weight in the shell'],
    ['4 eggs, 250 g in the shell', '1 tsp salt', '220', 'a clause'],
    ['4 eggs (280 g)', '1 tsp salt', '246.4', '70 g are no large egg without its shell, 59.8 g, and so weighed in it'],
    ['4 eggs (280 g, shelled)', '1 tsp salt', '280', 'unless the author says so'],
    ['3 eggs (60 g each)', '1 tsp salt', '180', 'each'],
    ['3 × 60 g eggs', '1 tsp salt', '180', 'each, before the name'],
    ['3 x 70 g eggs', '1 tsp salt', '184.8', 'each, in the shell'],
  ] as const)('sets it for the recipe: %s beside %s is %s g, %s', ([text, beside, grams]) => {
    expect(weightOf(text, beside, 'uk')).toBe(grams);
  });

  test('says nothing where the amount is a range, or the weight that of a pack', () => {
    const plain = weightOf('2 onions', '1 tsp salt', 'uk');
    expect(weightOf('2 onions', '2–3 onions (400 g)', 'uk')).toBe(plain);
    expect(weightOf('2 onions', '1 (400 g) tin onions', 'uk')).toBe(plain);
  });
});

describe('the weight of an author’s eggs', () => {
  test.for([
    // 60 g of an Australian egg are its weight in the shell: 52.8 g, and a UK medium egg has 51.04 g.
    ['2 x 60 g eggs', 'au', 'uk', '2 medium eggs', '-3.3'],
    ['2 eggs (60 g each)', 'au', 'us', '2 eggs', '-5.5'],
    // The author weighed 50 g of a large egg, out of its shell.
    ['2 large eggs (100 g)', 'us', 'uk', '2 medium eggs', '2.1'],
    ['2 large eggs (about 50 g each without shell)', 'us', 'eu', '2 medium eggs', '2.1'],
  ] as const)('is weighed out in eggs of another shop: %s from %s in %s', ([text, from, to, becomes, drift]) => {
    const version = converted(text, from, to);
    expect([textOf(version), version.drift?.times(100).toDecimalPlaces(1).toString()]).toEqual([becomes, drift]);
  });

  test('leaves the line where other shops sell other eggs, though their number is the same', () => {
    const version = converted('4 large eggs (220 g without their shells), beaten', 'uk', 'us');
    expect(textOf(version)).toBe('4 large eggs, beaten');
    // 4 × 49.9 g against 220 g.
    expect(version.drift?.times(100).toDecimalPlaces(1).toString()).toBe('-9.3');
  });

  test('stays and counts where the shops sell the same', () => {
    const version = converted('4 large eggs (220 g), beaten', 'us', 'us-scale');
    expect(textOf(version)).toBe('4 large eggs (220 g), beaten');
    expect(version.drift?.toString()).toBe('0');
  });

  test('lets an onion’s weight be', () => {
    expect(textOf(converted('2 onions (300 g), sliced', 'uk', 'au'))).toBe('2 onions (300 g), sliced');
  });
});
