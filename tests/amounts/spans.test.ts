import { readLine, type Span } from '@retare/core';
import { describe, expect, test } from 'vitest';

const cut = (line: string, spans: readonly Span[]): string[] => spans.map(({ start, end }) => line.slice(start, end));

describe('the stretches that a rewritten amount replaces', () => {
  test.for([
    ['2 (15-oz) cans butter beans, drained', ['2 (15-oz) cans']],
    ['3 aubergines (900g)', ['3', ' (900g)']],
    ['1 cup (240 ml) cream', ['1 cup (240 ml)']],
    ['Flour, 500 g', ['500 g']],
    ['500 g of flour', ['500 g of']],
    ['**500 g** of flour', ['500 g']],
    ['3 large eggs', ['3']],
    ['3 garlic cloves, minced', ['3', ' cloves']],
    ['half an onion', ['half an']],
    ['about 2 cups of peas', ['about 2 cups of']],
    ['~800g cod', ['~800g']],
    ['6 or so potatoes', ['6 or so']],
    ['1/4 cup + 1/2 tsp lime juice', ['1/4 cup + 1/2 tsp']],
    ['14 oz or 400 g of cod', ['14 oz or 400 g of']],
    ['Chocolate (70 g) (optional)', ['70 g']],
    ['Oats (270 g - 800 mL)', ['270 g - 800 mL']],
    ['1 jar sauce (16 oz)', ['1 jar', ' (16 oz)']],
    ['1 bunch parsley (about 1.5 cups, loosely packed)', ['1 bunch', 'about 1.5 cups, ']],
    ['4 chicken thighs, about 150 g each', ['4', ', about 150 g each']],
    ['Garlic cloves 3, minced', ['cloves 3']],
  ] as const)('of “%s” are %j', ([line, spans]) => {
    expect(cut(line, readLine(line).amountSpans)).toEqual(spans);
  });
});

describe('the further quantities of a line', () => {
  test.for([
    ['1 tbsp oil, plus 1 tbsp for the pan', ['1 tbsp']],
    ['2 carrots, cut into 2-inch pieces', ['2-inch']],
    ['2 carrots, cut into half-inch pieces', ['half-inch']],
    ['30 g butter or 30 g lard', ['30 g']],
    ['1 cup water at 110°F', ['110°F']],
    ['1 cup water (110 to 115 °F)', ['110 to 115 °F']],
    ['1 sheet puff pastry, rolled to 9 x 13 inch', ['9', '13 inch']],
    ['1/2 cup water mixed with a teaspoon of salt', ['a teaspoon']],
    ['about 2 lb pork, about 1 cup per person', ['1 cup']],
    ['2 eggs, beaten for 2 minutes', []],
    ['1 cup milk (2%), 3 spoons', []],
    ['2 cups flour (250 g), sifted', []],
    ['Cut the dough into 2-inch squares.', ['2-inch']],
  ] as const)('of “%s” are %j', ([line, spans]) => {
    expect(
      cut(
        line,
        readLine(line).further.map(({ span }) => span),
      ),
    ).toEqual(spans);
  });

  test('hold each side of a pan in the unit that stands behind the last', () => {
    const { further } = readLine('1 sheet pastry, rolled to 9 x 13 inch');
    expect(further.map(({ low, unit }) => `${low} ${unit}`)).toEqual(['9 in', '13 in']);
  });
});

test('keeps a number that runs on into the amount out of the further quantities', () => {
  const { amountSpans, further } = readLine('x 1/2 — 1 cup flour');
  expect(amountSpans).toHaveLength(1);
  expect(further).toEqual([]);
});
