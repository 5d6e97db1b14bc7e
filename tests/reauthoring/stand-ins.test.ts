import { Exact, foodsIn } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { converted, rulesOf, textOf, versionOf } from './recipe-of.js';
import { foodOf, larderOf, soldAs } from './sample-food.js';

describe('a food that is not sold', () => {
  // Stand-ins of the larder: common practice, no source. Densities: USDA SR26 01049, 01077 and 01053; GNU Units 3.15.
  test.for([
    {
      line: '½ cup half-and-half',
      to: 'uk',
      becomes: '90 ml whole milk and 1½ tbsp double cream',
      by: '121 g: 96.8 g of milk are 93.9 ml, 24.2 g of cream 24.1 ml',
    },
    {
      line: '1½ tsp kosher salt',
      to: 'uk',
      becomes: '¾ tsp fine sea salt',
      by: '4.2 g of the lighter grain, 6 g a teaspoon',
    },
    {
      line: '1½ tsp (7.2 g) kosher salt',
      to: 'uk',
      becomes: '7 g fine sea salt',
      by: 'the author’s 7.2 g; 1¼ tsp would be 7.6',
    },
    {
      line: '½ cup half-and-half, warmed',
      to: 'uk',
      becomes: '90 ml whole milk and 1½ tbsp double cream, warmed',
      by: 'words are kept',
    },
    {
      line: '2 chipotle chiles in adobo, minced',
      to: 'uk',
      becomes: '25 g chipotle paste, minced',
      by: 'two of 12 g: UK shops have the paste and no tin of chiles',
    },
    { line: '½ cup half-and-half', to: 'ca', becomes: '120 ml half-and-half', by: 'it is sold there' },
  ])('$line reads $becomes in $to: $by', ({ line, to, becomes }) => {
    expect(textOf(converted(line, 'us', to))).toBe(becomes);
  });

  test('says what it stands in for, and where', () => {
    expect(converted('½ cup half-and-half', 'us', 'uk').notes).toEqual([
      { kind: 'stand-in', food: 'half-and-half', kitchen: 'United Kingdom', allergens: [] },
    ]);
  });

  test('weighs and buys each of its foods', () => {
    const line = converted('½ cup half-and-half', 'us', 'uk');
    const foods = foodsIn(line).map(({ food, chosen, native, bought, drift }) => [
      food?.id,
      native.grams?.toDecimalPlaces(1).toString(),
      chosen.millilitres?.toDecimalPlaces(6).toString(),
      drift?.times(100).toDecimalPlaces(0).toString(),
      bought?.packs.map(({ count, pack }) => `${count} × ${pack.size} ${pack.unit}`).join(),
    ]);
    // Four fifths and a fifth of 121 g: 96.8 g are 93.9 ml, 24.2 g are 24.1 ml.
    expect(foods).toEqual([
      ['whole-milk', '96.8', '90', '-4', '1 × 568 ml'],
      ['heavy-cream', '24.2', '22.5', '-6', '1 × 150 ml'],
    ]);
  });

  test.for([
    ['1 pinch kosher salt', '1 pinch fine sea salt'],
    ['4 slices salt pork, diced', '4 slices piece of streaky bacon, diced'],
  ] as const)('counts again what has no known weight: %s is %s', ([line, becomes]) => {
    expect(textOf(converted(line, 'us', 'uk'))).toBe(becomes);
  });

  test('measures what pours, though its larder entry counts pieces too', () => {
    // 0.1 of 8 × 34 g of tomatillos: a juice, not lemons or limes.
    expect(textOf(converted('8 tomatillos', 'us', 'uk'))).toBe('2 green tomatoes and 1 tbsp + 2 tsp lime juice');
  });

  test.for([
    ['1 cup graham cracker crumbs', '85 g crushed digestive biscuits'],
    ['1 cup graham crumbs, sifted', '85 g crushed digestive biscuits, sifted'],
    ['10 oz diced tomatoes with green chiles', '255 g chopped tomatoes and 30 g green chillies'],
    ['6 oz crushed butter crackers', '145 g crushed cream crackers and 25 g butter'],
    ['1 lb ground bison', '455 g minced beef'],
    ['8 oz shredded Mexican cheese', '135 g shredded mature cheddar and 90 g shredded mozzarella'],
  ] as const)('keeps the form in which it is measured: %s becomes %s', ([line, becomes]) => {
    expect(textOf(converted(line, 'us', 'uk'))).toBe(becomes);
  });
});

describe('a stand-in made up for a test', () => {
  const standIns = [
    {
      parts: [
        { food: 'glop', share: new Exact('0.5') },
        { food: 'glub', share: new Exact('0.5') },
      ],
      source: 'made up',
    },
  ];
  const gone = soldAs([], { sold: false, standIns });
  const gloop = foodOf({ us: soldAs([]), any: gone }, { allergens: ['milk'] });
  const tins = soldAs([{ size: 100 }]);
  const larder = (glop: readonly string[], glub: readonly string[]) =>
    larderOf(
      gloop,
      foodOf({ any: tins }, { id: 'glop', allergens: glop }),
      foodOf({ any: tins }, { id: 'glub', allergens: glub }),
    );
  const allergensOf = (...each: [readonly string[], readonly string[]]): string[] =>
    converted('8 oz gloop', 'us', 'uk', larder(...each)).notes.flatMap((note) =>
      note.kind === 'stand-in' ? note.allergens : [],
    );

  test.for<[string, string[], string[], string[]]>([
    ['of either food', ['nuts'], ['fish'], ['nuts', 'fish']],
    ['once where both have it', ['nuts'], ['nuts'], ['nuts']],
    ['not where the food itself has it', ['milk'], [], []],
    ['none where there is none', [], [], []],
  ])('names an allergen that it adds: %s', ([, glop, glub, added]) => {
    expect(allergensOf(glop, glub)).toEqual(added);
  });

  test('takes each share by weight', () => {
    // 8 oz are 226.8 g, half of it 113.4: 115 g on a scale of 5 g steps.
    expect(textOf(converted('8 oz gloop', 'us', 'uk', larder([], [])))).toBe('115 g glop and 115 g glub');
  });

  test('keeps both ends of a range', () => {
    expect(textOf(converted('8–16 oz gloop', 'us', 'uk', larder([], [])))).toBe('115–225 g glop and 115–225 g glub');
  });

  test('is not there where one of its foods is unknown: then the food is a finding', () => {
    const line = converted('8 oz gloop', 'us', 'uk', larderOf(gloop, foodOf({ any: tins }, { id: 'glop' })));
    expect([rulesOf(line), textOf(line)]).toEqual([['unbuyable not-sold'], '225 g gloop']);
  });

  test('is not put where the food is sold, though the larder lists one', () => {
    const sold = foodOf({ any: soldAs([{ size: 100 }], { standIns }) });
    const setting = larderOf(sold, ...['glop', 'glub'].map((id) => foodOf({ any: tins }, { id })));
    expect(textOf(converted('8 oz gloop', 'us', 'uk', setting))).toBe('225 g gloop');
  });

  test('is not put for a line without an amount, which is a finding', () => {
    expect(rulesOf(converted('gloop, to serve', 'us', 'uk', larder([], [])))).toEqual(['unbuyable not-sold']);
  });

  test('is not put into what the author wrote for that kitchen', () => {
    const post = { kitchen: 'us', lines: ['8 oz gloop'], versions: [{ kitchen: 'uk', lines: ['225 g gloop'] }] };
    const [line] = versionOf(post, 'uk', larder([], [])).parts[0]?.lines ?? [];
    expect([line && textOf(line), line && rulesOf(line)]).toEqual(['225 g gloop', ['unbuyable not-sold']]);
  });

  test('never takes the place of a cure, nor does another name', () => {
    const names = { us: [{ one: 'gloop', many: 'gloop' }], uk: [{ one: 'glue', many: 'glue' }] };
    const cure = foodOf({ us: soldAs([]), any: gone }, { role: 'cure', names });
    const larderWithCure = larderOf(cure, ...['glop', 'glub'].map((id) => foodOf({ any: tins }, { id })));
    expect(textOf(converted('2 oz gloop', 'us', 'uk', larderWithCure))).toBe('2 oz gloop');
  });
});

describe('a stand-in of what is counted', () => {
  // Pieces: one gloop weighs 10 g, one glob 25 g.
  const pieces = (grams: number) => [
    { unit: 'count' as const, size: null, grams: new Exact(grams), source: 'made up' },
  ];
  const standIns = [{ parts: [{ food: 'glob', share: new Exact(1) }], source: 'made up' }];
  const gone = { ...soldAs([]), sold: false, standIns };
  const loose = { ...soldAs([]), loose: true, singly: true };
  const plural = (one: string) => ({ any: [{ one, many: `${one}s` }] });
  const larder = larderOf(
    foodOf({ us: loose, any: gone }, { names: plural('gloop'), pieces: pieces(10) }),
    foodOf({ any: loose }, { id: 'glob', names: plural('glob'), pieces: pieces(25) }),
  );

  test.for([
    ['5 gloops', '2 globs', 'two of 25 g for five of 10'],
    ['8 gloops', '3 globs', '75 g for 80'],
    ['1 gloop', '½ glob', 'half of one, which is one'],
    ['2–5 gloops', '1–2 globs', 'both ends of a range'],
    ['4 gloops, halved', '1½ globs, halved', '37.5 g for 40'],
  ] as const)('is counted too: %s are %s, %s', ([line, becomes]) => {
    expect(textOf(converted(line, 'us', 'uk', larder))).toBe(becomes);
  });
});

// The lighter kosher salt has 2.8 g a teaspoon, fine salt 6: two tablespoons are 16.8 g, under three teaspoons.
test.for([
  ['1 cup kosher salt plus 2 tbsp', /^\d+ g fine sea salt plus (?:1 tbsp|2¾ tsp)$/u],
  ['1 cup kosher salt plus 2 tbsp sugar', /plus 2 tbsp granulated sugar$/u],
] as const)('what a line adds without naming a food is converted to the one that stands in: %s', ([line, becomes]) => {
  expect(textOf(converted(line, 'us', 'uk'))).toMatch(becomes);
});
