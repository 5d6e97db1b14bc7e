import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { converted, recipeOf, rulesOf, textOf } from './recipe-of.js';
import { foodOf, larderOf, soldAs } from './sample-food.js';
import { setting } from './setting.js';

const reauthored = (lines: readonly string[], from: string, to: string): string[] => {
  const result = reauthoredOf(recipeOf({ kitchen: from, lines }), to, setting);
  return result.version.parts.flatMap((part) => part.lines.map(textOf));
};

describe('a can without a size', () => {
  // The usual cans of a US shop, common practice; 14.5 fl oz are 428.8 ml, 12 fl oz of evaporated milk 378 g by USDA SR26 01153.
  test.for([
    ['us', 'uk', '1 can chicken broth', '425 ml chicken stock', '428.8 ml, where stock is sold in no tin'],
    ['us', 'ca', '1 can chicken broth', '425 ml chicken broth', 'a Canadian can is of 284 ml'],
    ['us', 'uk', '1 can evaporated milk', '1 × 410 g tin evaporated milk', 'the usual can of 12 fl oz'],
    ['us', 'uk', '1 can crushed tomatoes', '2 × 400 g tins crushed tomatoes', 'the usual can of 28 oz'],
    ['us', 'uk', '½ can tomato paste', '85 g tomato purée', 'the only can, 6 oz, beside a tube'],
    ['us', 'ca', '1 can pineapple chunks', '1 (540-ml) can pineapple chunks', '20 oz'],
    ['us', 'uk', '1 jar salsa', '450 g salsa', '16 oz, 453.6 g, to a round weight'],
    ['us', 'uk', '1 package tofu', '1 × 400 g block tofu', '14 oz: any container may be called a package'],
    ['us', 'ca', '1 large can tuna', '2 (170-g) cans tuna', 'the larger can, 12 oz'],
    ['uk', 'us', '2 tins chopped tomatoes', '2 (14½-oz) cans diced tomatoes', '2 × 400 g'],
    ['uk', 'au', '1 small tin chopped tomatoes', '225 g diced tomatoes', 'the smaller tin, 227 g'],
    ['us', 'uk', '1 can (8 oz) diced tomatoes', '1 × 227 g tin chopped tomatoes', 'the author says what it weighs'],
  ] as const)('from %s to %s: %s is %s: %s', ([from, to, line, becomes]) => {
    expect(textOf(converted(line, from, to))).toBe(becomes);
  });

  test('goes with the batch as any other amount does', () => {
    const lines = ['2 (15-oz) cans butter beans', '1 can chicken broth'];
    expect(reauthored(lines, 'us', 'uk')).toEqual(['2 × 400 g tins butter beans', '400 ml chicken stock']);
  });

  test('of eggs is a dozen eggs of the country', () => {
    // 12 large US eggs, 49.9 g each without the shell, are ten of the UK middle of 59.84 g: 598.8 and 598.4 g.
    expect(textOf(converted('1 carton eggs', 'us', 'uk'))).toBe('10 eggs');
    expect(textOf(converted('1 carton eggs', 'us', 'us'))).toBe('1 carton eggs');
  });

  test('is bought as the usual one', () => {
    const bought = converted('1 can evaporated milk', 'us', 'us').bought;
    expect(bought?.packs.map(({ count, pack }) => `${count} × ${pack.size} ${pack.unit}`)).toEqual(['1 × 12 floz']);
  });

  test.for([
    ['uk', 'uk', '1 tin chicken stock'],
    ['uk', 'au', '1 tin chicken stock'],
  ] as const)('from %s to %s: %s is a finding where no shop sells it in one', ([from, to, line]) => {
    expect(rulesOf(converted(line, from, to))).toEqual(['unbuyable pack-size']);
  });

  test('says nothing of what may be any of several sizes where there are such cans', () => {
    const sizes = soldAs([{ size: 100 }, { size: 200 }]);
    expect(rulesOf(converted('1 tin gloop', 'us', 'uk', larderOf(foodOf({ any: sizes }))))).toEqual([]);
  });

  test('is never a jar', () => {
    const jars = soldAs([{ size: 100, word: 'jar', usual: true }]);
    const line = converted('1 tin gloop', 'us', 'uk', larderOf(foodOf({ any: jars })));
    expect([textOf(line), rulesOf(line)]).toEqual(['1 tin gloop', ['unbuyable pack-size']]);
  });
});

describe('whole packs', () => {
  const gloop = (...[sizes]: Parameters<typeof soldAs>) =>
    larderOf(foodOf({ us: soldAs([{ size: 850, whole: 'yes' }]), any: soldAs(sizes) }));
  const become = (...[sizes]: Parameters<typeof soldAs>): string =>
    textOf(converted('850 g gloop', 'us', 'uk', gloop(sizes)));
  const small = { size: 125, whole: 'yes' } as const;

  test('are of the usual size, though many small ones come nearer', () => {
    expect(become([small, { size: 420, whole: 'yes', usual: true }])).toBe('2 × 420 g tins gloop');
    // 875 g are 2.9 % more, 800 g 5.9 % less.
    expect(become([small, { size: 400, whole: 'yes' }])).toBe('7 × 125 g tins gloop');
    expect(become([small, { size: 400, whole: 'yes', usual: true }])).toBe('2 × 400 g tins gloop');
  });

  test('are of another size where the usual one is over a tenth off', () => {
    expect(become([small, { size: 600, whole: 'yes', usual: true }])).toBe('7 × 125 g tins gloop');
  });

  test('are the fewest of those that count as equal', () => {
    expect(
      become([
        { size: 425, whole: 'yes', usual: true },
        { size: 850, whole: 'yes' },
      ]),
    ).toBe('1 × 850 g tin gloop');
    // 875 g are 2.9 % more than 850.
    expect(
      become([
        { size: 425, whole: 'yes' },
        { size: 875, whole: 'yes' },
      ]),
    ).toBe('1 × 875 g tin gloop');
  });

  test('of kidney beans are two tins of 420 g in Australia, not seven of 125 g', () => {
    const line = '2 (15-oz) cans kidney beans, drained';
    expect(textOf(converted(line, 'us', 'au'))).toBe('2 × 420 g cans kidney beans, drained');
    expect(reauthored([line, '1 onion'], 'us', 'au')[0]).toBe('2 × 420 g cans kidney beans, drained');
  });

  test('are bought as the line names them', () => {
    const bought = converted('2 × 400 g cans diced tomatoes', 'au', 'au').bought;
    expect(bought?.packs.map(({ count, pack }) => `${count} × ${pack.size} ${pack.unit}`)).toEqual(['2 × 400 g']);
    const half = converted(
      '½ × 400 g tin gloop',
      'uk',
      'uk',
      larderOf(foodOf({ any: soldAs([{ size: 400 }]) })),
    ).bought;
    expect([half?.packs[0]?.count, half?.leftoverGrams.toNumber()]).toEqual([1, 200]);
  });
});

test('one of a container is the usual one, if any, in every kitchen that sells several sizes of a can that is used up', () => {
  const unmarked = [...setting.foods.values()].flatMap((food) =>
    ['us', 'ca', 'uk', 'eu', 'au', 'nz'].flatMap((kitchen) => {
      const cans = (food.sold[kitchen]?.packs ?? []).filter(
        ({ word, whole }) => (word === 'can' || word === 'tin') && whole !== 'no',
      );
      return cans.length > 1 && cans.filter(({ usual }) => usual).length !== 1 ? [`${food.id} in ${kitchen}`] : [];
    }),
  );
  expect(unmarked).toEqual([]);
});

describe('a container of no known size', () => {
  test('is no can for being called a packet', () => {
    const line = converted('1 packet baking powder', 'us', 'uk');
    expect(line.chosen.grams).toBeNull();
    expect(rulesOf(line)).toEqual(['unbuyable pack-size']);
  });

  test.for([
    ['1 pot double cream', 'uk', 'us'],
    ['1 pot double cream', 'uk', 'eu'],
    ['1 packet baking powder', 'us', 'eu'],
  ] as const)('is a finding for those who have other ones: %s from %s in %s', ([text, from, to]) => {
    expect(rulesOf(converted(text, from, to))).toEqual(['unbuyable pack-size']);
    const result = reauthoredOf(recipeOf({ kitchen: from, lines: [text, '1 onion'] }), to, setting);
    const [line] = result.version.parts[0]?.lines ?? [];
    expect(line === undefined ? [] : rulesOf(line)).toEqual(['unbuyable pack-size']);
  });

  test('is the author’s own at home', () => {
    expect(rulesOf(converted('1 pot double cream', 'uk', 'uk'))).toEqual([]);
  });

  test.for([
    '1 sachet fast-action dried yeast',
    '1 packet spaghetti',
    '1 jar marinara sauce',
    '1 carton chicken stock',
  ])('but not of %s', (text) => {
    expect(rulesOf(converted(text, 'uk', 'au')).filter((rule) => rule.startsWith('unbuyable'))).toEqual([]);
  });
});
