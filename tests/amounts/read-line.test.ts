import { Exact, type LineReading, readLine } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { writtenLines } from './written-lines.js';

function amountsOf({ amounts }: LineReading): string[] {
  return amounts.map(({ low, high, unit, approx }) => {
    const upper = high === null ? '' : `-${high.toDecimalPlaces(4)}`;
    return `${low.toDecimalPlaces(4)}${upper} ${unit}${approx ? '~' : ''}`;
  });
}

function packOf({ pack }: LineReading): string | undefined {
  if (pack === null) return undefined;
  return `${pack.count ?? 1} x ${pack.size} ${pack.unit} ${pack.word}`.trim();
}

describe.for(Object.entries(writtenLines))('%s is read', ([, lines]) => {
  test.for(lines)('$line', ({ line, amounts, pack, food }) => {
    const read = readLine(line);
    expect({ amounts: amountsOf(read), pack: packOf(read), food: read.food?.text }).toEqual({ amounts, pack, food });
  });
});

describe('a line without an amount', () => {
  test.for([
    ['salt, to taste', 'salt'],
    ['a few sprigs of thyme', 'thyme'],
    ['a splash or two of vinegar', 'vinegar'],
    ['2 glugs olive oil', 'olive oil'],
    ['1 part vinegar', 'vinegar'],
    ['Sprigs of mint', 'mint'],
    ['half and half', 'half and half'],
    ['Sprinkles, if you like', 'Sprinkles'],
    ['Some number of pounds of clams. A pound of clams makes dinner for two.', 'clams'],
  ])('is %s', ([line = '', food]) => {
    const read = readLine(line);
    expect([read.kind, read.food?.text, read.doubt]).toEqual(['no-amount', food, null]);
  });
});

describe('what is no ingredient', () => {
  test.for([
    'For the crust:',
    'Toppings:',
    'Cut the dough into 2 inch squares.',
    'A slow cooker',
    'Wooden skewers',
    'Parchment paper',
    'A baking tray',
    'Special equipment: a 9-inch springform pan',
    'A lot of patience',
    'Good appetite.',
    '(The following can be made a day ahead)',
    'Apply the glaze to the top of the cake',
    '9x13 baking dish',
    'Add the cream; cook for 5 minutes',
  ])('is “%s”', (line) => {
    expect(readLine(line)).toMatchObject({ kind: 'not-an-ingredient', amounts: [], amountSpans: [], food: null });
  });
});

describe('a doubt', () => {
  test.for([
    ['5/6 bay leaves', '5/6'],
    ['2 tps salt', '2 tps'],
    ['3-2 cups flour', '3-2 cups'],
    ['2 cups minus 1 tbsp flour', '2 cups minus 1'],
    ['1.500 g flour', '1.500 g'],
    ['1 1/4 oz packet gelatin', '1 1/4 oz packet'],
    ['3/2 cups flour', '3/2 cups'],
  ])('is what “%s” leaves, rather than a guess', ([line = '', text]) => {
    const read = readLine(line);
    expect([read.kind, read.amounts, read.doubt?.text]).toEqual(['no-amount', [], text]);
  });
});

describe('an amount in two parts', () => {
  test.for([
    ['1/4 cup + 1/2 tsp lime juice', '12.5', 'tsp'],
    ['1 cup plus 2 tablespoons flour', '18', 'tbsp'],
    ['1 stick plus 2 tbsp butter', '10', 'tbsp'],
    ['2 sticks + 1 tablespoon unsalted butter', '17', 'tbsp'],
    ['1 lb 4 oz beef', '20', 'oz'],
    ['1/3 cup plus 1 tbsp sugar', '6.3333', 'tbsp'],
  ])('%s is %s %s in US measures', ([line = '', low, unit]) => {
    const [amount] = readLine(line).amounts;
    expect([amount?.low.toDecimalPlaces(4).toString(), amount?.unit]).toEqual([low, unit]);
  });

  test('is added up by the spoons of the kitchen: an Australian tablespoon is four teaspoons', () => {
    const kitchen = { tsp: new Exact(5), tbsp: new Exact(20), cup: new Exact(250) };
    const [spoons] = readLine('1 tbsp plus 1 tsp oil', { kitchen }).amounts;
    const [cups] = readLine('1 cup plus 2 tbsp oil', { kitchen }).amounts;
    expect([spoons?.low.toString(), cups?.low.toString()]).toEqual(['5', '14.5']);
  });
});

describe('the words around an amount', () => {
  test.for([
    ['3 large eggs', 'large', 'eggs'],
    ['2 eggs, large', 'large', 'eggs'],
    ['2 extra-large eggs', 'extra large', 'eggs'],
    ['1 medium-sized leek', 'medium', 'leek'],
    ['1 lg onion', 'large', 'onion'],
  ])('%s has the size %s', ([line = '', size, food]) => {
    const read = readLine(line);
    expect([read.size?.text, read.food?.text]).toEqual([size, food]);
  });

  test.for([
    ['1 cup walnuts, optional', true],
    ['(optional) 1 cup walnuts', true],
    ['dill, if you like', true],
    ['dill if needed', false],
    ['1 tsp chili, more if desired', false],
    ['1 cup sesame (optionally roasted)', false],
  ] as const)('%s: optional is %s', ([line, optional]) => {
    expect(readLine(line).optional).toBe(optional);
  });

  test.for([
    ['chicken or beef broth', 'chicken or beef broth'],
    ['butter or ghee', 'butter'],
    ['1 cup milk or cream', 'milk'],
    ['salt and pepper', 'salt and pepper'],
    ['salt and freshly ground pepper', 'salt and freshly ground pepper'],
    ['white or yellow corn kernels', 'white or yellow corn kernels'],
    ['1 tsp each: cumin, coriander, and salt', 'cumin, coriander, and salt'],
    ['[tomato sauce](/tomato-sauce), warmed', 'tomato sauce'],
    ['**1 kg** of _black_ beans, rinsed', 'black beans'],
    ['1 cup whole milk', 'whole milk'],
    ['1 large, ripe avocado', 'avocado'],
    ['2 onions sliced thin', 'onions'],
  ])('the food of “%s” is “%s”', ([line = '', food]) => {
    expect(readLine(line).food?.text).toBe(food);
  });

  test('what is left is the preparation', () => {
    expect(readLine('2 (15-oz) cans butter beans, drained (keep the liquid)').prep).toBe('drained; keep the liquid');
  });

  test('a task box before the line is passed over', () => {
    expect(amountsOf(readLine('[x] 2 cups flour'))).toEqual(['2 cup']);
  });
});
