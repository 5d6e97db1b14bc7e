import { readMentions } from '@retare/core';
import { describe, expect, test } from 'vitest';

const mentions = (line: string): string[] =>
  readMentions(line).map(({ kind, low, high, unit, impliedUnit }) => {
    return `${kind} ${low.toDecimalPlaces(4)}${high === null ? '' : `-${high.toDecimalPlaces(4)}`} ${impliedUnit ? 'implied' : unit}`;
  });

describe('running text', () => {
  test.for([
    ['Heat the oven to 180°C (160°C fan), gas mark 4.', ['oven 180 C', 'oven 160 C', 'oven 4 gas']],
    ['Preheat your oven to 400 degrees.', ['oven 400 implied']],
    ['Bake at 275°F for 2 hours or until the inside reads 135°F.', ['oven 275 F', 'core 135 F']],
    ['Heat oil to 350F and fry until the chicken reaches 165°F.', ['temp 350 F', 'core 165 F']],
    ['Let it rise in a warm place (75-80°F).', ['temp 75-80 F']],
    ['Warm the milk to 43 °C.', ['temp 43 C']],
    ['Butter a 9x13-inch baking dish.', ['pan 9-13 in']],
    ['Use a 12-inch (30 cm) skillet.', ['pan 12 in', 'pan 30 cm']],
    ['Pour it into a 2 quart glass jar.', ['pan 2 quart']],
    ['Grease a 900 g loaf tin.', ['pan 900 g']],
    ['Grease a 900g/2lb loaf tin.', ['pan 900 g', 'pan 2 lb']],
    ['Bake at 375 for 25 minutes.', ['oven 375 implied']],
    ['Cut into 1x1 inch cubes.', ['length 1-1 in']],
    ['Slice ½" thick, leaving an inch or two.', ['length 0.5 in', 'length 1-2 in']],
  ] as const)('“%s” mentions %j', ([line, read]) => {
    expect(mentions(line)).toEqual(read);
  });

  test.for([
    'Simmer on medium (3-4) for 20 minutes.',
    'Let it come to room temperature.',
    'Give it a sensible 90-degree twist.',
    'Rotate the pan 180 degrees.',
    'Pour 1 liter of water into a large pot.',
    'Add 2 cups of stock to the pan.',
    'We baked for up to 180 people.',
    'Roast potatoes at 250 g a head.',
    '“Serves 4” it said.',
  ])('“%s” mentions nothing', (line) => {
    expect(mentions(line)).toEqual([]);
  });
});
