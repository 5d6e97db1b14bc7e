import { describe, expect, test } from 'vitest';
import { render, serving } from './pipeline.ts';

const told = 'There is egg in this that is eaten raw or barely cooked.';

function page(lines: readonly string[], method: string): string {
  const list = lines.map((line) => `- ${line}`).join('\n');
  return render(`:::ingredients{kitchen=us}\n${list}\n:::\n\n:::method\n${method}\n:::\n`, {
    options: serving('us', 'uk'),
  }).html;
}

describe('the caution on raw egg', () => {
  // That raw egg is a risk: USDA FSIS and UK FSA; which eggs are safe differs, so the reader's authority decides.
  test.for([
    ['1 egg', 'Blend the egg with lemon juice, then trickle in the oil.'],
    [
      '4 large eggs',
      'Boil the coffee and let it cool. Whisk the yolks with sugar, fold in the whites, layer and chill overnight.',
    ],
    ['3 egg yolks', 'Cook the pasta. Off the heat, toss it with the yolks and serve.'],
    ['2 egg whites', 'Melt the chocolate. Whip the whites and fold them in. Chill for 3 hours.'],
  ] as const)('is told, with the authority, of %s: %s', ([line, method]) => {
    const html = page([line, '1 cup sugar'], method);
    expect(html).toContain(told);
    expect(html.split(told)[1]).toMatch(/^[^<]*Follow your own food-safety authority\./);
  });

  test.for([
    ['2 large eggs', 'Heat the oven. Beat in the eggs. Bake for 30 minutes.'],
    ['4 egg yolks', 'Whisk the yolks, pour on the milk and cook, stirring, until it coats a spoon. Chill.'],
    ['4 eggs', 'Boil the eggs for ten minutes and cool them. Peel the eggs and chop them into the salad.'],
    ['1 egg', 'Dip the fish in beaten egg, then in crumbs. Fry until golden.'],
    ['3 hard-boiled eggs', 'Slice the eggs over the leaves.'],
    ['½ cup pasteurized egg whites', 'Shake the whites with the syrup.'],
    ['1 cup mayonnaise', 'Stir everything together.'],
    ['2 eggs', 'Whisk the eggs into the batter. Preheat a pan with butter. Turn when one side is turning brown.'],
  ] as const)('is not told of %s: %s', ([line, method]) => {
    expect(page([line, '1 cup sugar'], method)).not.toContain(told);
  });

  test('is not told where there is no method to judge by', () => {
    expect(render(':::ingredients{kitchen=us}\n- 2 eggs\n:::\n', { options: serving('us', 'uk') }).html).not.toContain(
      told,
    );
  });
});
