import { Exact, type Food, type Kitchen, type Setting, type VersionLine } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { amountOf, recipeOf, textOf, versionOf } from './recipe-of.js';
import { foodOf, larderOf, type ShortPack, soldAs } from './sample-food.js';
import { setting } from './setting.js';

/** The lines of a recipe as re-authored. */
function reauthored(
  lines: readonly string[],
  from: string,
  to: Kitchen['id'],
  within: Setting = setting,
): VersionLine[] {
  const result = reauthoredOf(recipeOf({ kitchen: from, lines }, within), to, within);
  expect(result.infeasible).toBeNull();
  return result.version.parts.flatMap((part) => part.lines);
}

function boughtFor({ bought }: VersionLine): string {
  const packs = bought?.packs.map(({ count, pack }) => `${count} × ${pack.size} ${pack.unit}`).join(' + ');
  return `${packs ?? 'nothing'}, ${bought?.leftoverGrams.toDecimalPlaces(0) ?? 'nothing'} left`;
}

/** A line with what is bought for it. */
const shopping = (line: VersionLine): string => `${textOf(line)}: ${boughtFor(line)}`;

const inFridge = (days: number, freezes: boolean): Partial<Food> => ({
  keeps: { where: 'fridge', days, freezes, leastGrams: new Exact(0), source: 'made up for a test' },
});

function gloop(us: readonly ShortPack[], uk: readonly ShortPack[], more: Partial<Food> = {}): Setting {
  return larderOf(foodOf({ us: soldAs(us), uk: soldAs(uk) }, more));
}

const half = { whole: 'half' } as const;
const whole = { whole: 'yes' } as const;

test('half a can is not converted to where the other half would go off', () => {
  const inHalves = (keeps: Partial<Food>): Setting => gloop([{ size: 200, ...whole }], [{ size: 400, ...half }], keeps);
  const post = { kitchen: 'us', lines: ['1 × 200 g can gloop'] };
  const lines = [inFridge(3, true), inFridge(2, false)].map((keeps) => versionOf(post, 'uk', inHalves(keeps)));
  expect(lines.flatMap(({ parts }) => parts.flatMap((part) => part.lines.map(textOf)))).toEqual([
    '½ × 400 g tin gloop',
    '200 g gloop',
  ]);
});

describe('what is bought is what the line says', () => {
  const native = [{ size: 400, ...whole }];
  const keeps = inFridge(3, true);
  test.for<[string, string, Setting, string]>([
    [
      'a small tin rather than half a large one',
      '1 × 400 g can gloop',
      gloop(
        native,
        [
          { size: 400, ...half },
          { size: 800, ...half },
        ],
        keeps,
      ),
      '1 × 400 g tin gloop: 1 × 400 g, 0 left',
    ],
    [
      'half a tin, the other half told, where it is kept',
      '1 × 400 g can gloop',
      gloop(native, [{ size: 800, ...half }], keeps),
      '½ × 800 g tin gloop: 1 × 800 g, 400 left',
    ],
    [
      'a whole tin where half a one would go off',
      '1 × 400 g can gloop',
      gloop(
        native,
        [
          { size: 800, ...half },
          { size: 350, ...whole },
        ],
        inFridge(2, false),
      ),
      '1 × 350 g tin gloop: 1 × 350 g, 0 left',
    ],
    [
      'the shop’s size of an equal pack',
      '1 × 400 g can gloop',
      gloop(native, [{ size: 390, ...whole }], keeps),
      '1 × 390 g tin gloop: 1 × 390 g, 0 left',
    ],
  ])('%s', ([, line, within, expected]) => {
    expect(reauthored([line], 'us', 'uk', within).map(shopping)).toEqual([expected]);
  });

  test.for<[string, readonly ShortPack[], string]>([
    [
      '½ × 800 g tin gloop',
      [
        { size: 400, ...half },
        { size: 800, ...half },
      ],
      '1 × 800 g, 400 left',
    ],
    [
      '2 × 400 g tins gloop',
      [
        { size: 400, ...whole },
        { size: 800, ...whole },
      ],
      '2 × 400 g, 0 left',
    ],
    ['1 × 390 g tin gloop', [{ size: 400, ...whole }], '1 × 400 g, 0 left'],
    ['1½ × 400 g tins gloop', [{ size: 400, ...half }], '2 × 400 g, 200 left'],
    [
      '800 g gloop',
      [
        { size: 400, ...whole },
        { size: 800, ...whole },
      ],
      '1 × 800 g, 0 left',
    ],
  ])('%s in an author’s own words', ([line, packs, bought]) => {
    const native = versionOf({ kitchen: 'uk', lines: [line] }, 'uk', gloop([], packs, keeps));
    expect(native.parts.flatMap((part) => part.lines.map(boughtFor))).toEqual([bought]);
  });

  const counted = (packs: readonly ShortPack[], more: Partial<Food>): Setting =>
    larderOf(
      foodOf(
        { any: soldAs(packs) },
        { pieces: [{ unit: 'count', size: null, grams: new Exact(24), source: 'made up for a test' }], ...more },
      ),
    );
  test.for<[string, string, string]>([
    ['12 gloop', 'a dozen, though a dozen of the usual weigh less than the pack', '1 × 12 count, 0 left'],
    ['10 gloop', 'a dozen, of which two are left', '1 × 12 count, 50 left'],
    ['13 gloop', 'two dozen', '2 × 12 count, 275 left'],
  ])('%s: %s', ([line, , bought]) => {
    const dozens = counted([{ size: 12, unit: 'count', grams: 300 }], inFridge(5, false));
    const native = versionOf({ kitchen: 'uk', lines: [line] }, 'uk', dozens);
    expect(native.parts.flatMap((part) => part.lines.map(boughtFor))).toEqual([bought]);
  });

  test('one bunch is one bunch, whatever it weighs there', () => {
    const pieces = [{ unit: 'bunch', size: null, grams: new Exact(60), source: 'made up for a test' } as const];
    const bunches = counted([{ size: 1, unit: 'count', word: 'bunch', grams: 50 }], { ...inFridge(5, true), pieces });
    const native = versionOf({ kitchen: 'uk', lines: ['1 bunch gloop'] }, 'uk', bunches);
    expect(native.parts.flatMap((part) => part.lines.map(boughtFor))).toEqual(['1 × 1 count, 0 left']);
  });
});

test('seven small tins are not opened where a large one is sold', () => {
  const shelf = [
    { size: 125, ...whole },
    { size: 400, ...whole },
  ];
  const within = gloop([{ size: 440, ...whole }], shelf);
  expect(reauthored(['2 × 440 g cans gloop'], 'us', 'uk', within).map(textOf)).toEqual(['2 × 400 g tins gloop']);
  const ranged = gloop(
    [{ size: 420, ...whole }],
    [
      { size: 227, ...whole },
      { size: 400, ...whole },
    ],
  );
  expect(reauthored(['1–2 × 420 g cans gloop'], 'us', 'uk', ranged).map(textOf)).toEqual(['1–2 × 400 g tins gloop']);
  // Three are.
  const three = gloop([{ size: 375, ...whole }], [...shelf.slice(0, 1), { size: 450, ...whole }]);
  expect(reauthored(['1 × 375 g can gloop'], 'us', 'uk', three).map(textOf)).toEqual(['3 × 125 g tins gloop']);
});

test('a piece of a length is a piece of about that length, whatever is known of its food', () => {
  expect(reauthored(['1 (2-inch) piece ginger', '1 (3-inch) piece gloop'], 'us', 'uk').map(textOf)).toEqual([
    '1 × 5 cm piece ginger',
    '1 × 7.5 cm piece gloop',
  ]);
});

describe('a line asks for no more than its packs hold', () => {
  test('a carton of 284 ml, not 290 ml of it', () => {
    const cartons = larderOf(
      foodOf({ any: soldAs([{ size: 284, unit: 'ml', word: 'carton' }]) }, { pours: true, ...inFridge(5, false) }),
    );
    expect(reauthored(['290 ml gloop'], 'eu', 'uk', cartons).map(shopping)).toEqual([
      '1 × 284 ml carton gloop: 1 × 284 ml, 0 left',
    ]);
  });

  test('one carton rather than two of half its size', () => {
    const packs = [142, 284].map((size) => ({ size, unit: 'ml', word: 'carton' }) as const);
    const cartons = larderOf(foodOf({ any: soldAs(packs) }, { pours: true, ...inFridge(5, false) }));
    expect(reauthored(['290 ml gloop'], 'eu', 'uk', cartons).map(shopping)).toEqual([
      '1 × 284 ml carton gloop: 1 × 284 ml, 0 left',
    ]);
  });

  test('in a cup where the label says a weight: a cup of sugar may fill a shop’s packet', () => {
    const bag = larderOf(foodOf({ uk: soldAs([{ size: 500 }]), us: soldAs([{ size: 8.1, unit: 'oz', grams: 230 }]) }));
    // 235 ml are 0.99 cup, and a cup 2.8 % more than the bag.
    expect(reauthored(['235 g gloop'], 'uk', 'us', bag).map(textOf)).toEqual(['1 cup gloop']);
  });
});

// A quarter cup of chopped coriander weighs 4 g (USDA SR26 11165, cup): less than a kitchen scale shows well.
test.for([
  ['us', 'us-scale', '¼ cup fresh cilantro, chopped'],
  ['us', 'au', '3 tbsp coriander leaves, chopped'],
  ['us', 'uk', '3½ tbsp fresh coriander, chopped'],
] as const)('a few leaves are too light for a scale, from %s to %s', ([from, to, becomes]) => {
  expect(reauthored(['¼ cup fresh cilantro, chopped'], from, to).map(textOf)).toEqual([becomes]);
});

describe('a food that the larder does not know', () => {
  test.for([
    ['700 g frostwort', 'uk', 'us', '1½ lb frostwort'],
    ['225 g frostwort', 'uk', 'us', '½ lb frostwort'],
    ['600 g frostwort', 'uk', 'us', '21 oz frostwort'],
    ['40 g frostwort', 'uk', 'us', '1½ oz frostwort'],
    ['100–150 g frostwort', 'uk', 'us', '3½–5¼ oz frostwort'],
    ['3½ tbsp frostwort', 'uk', 'us', '3½ tbsp frostwort'],
    ['1½ lb frostwort', 'us', 'ca', '675 g frostwort'],
    ['1 (12-oz) bag frostwort', 'us', 'uk', '340 g frostwort'],
    ['⅓ cup frostwort (optional)', 'us', 'uk', '80 ml frostwort (optional)'],
    ['10 cups frostwort', 'us', 'uk', '2.25 l frostwort'],
  ] as const)('%s from %s is in %s %s', ([line, from, to, becomes]) => {
    expect(reauthored([line], from, to).map(textOf)).toEqual([becomes]);
  });
});

describe('shares of a carton', () => {
  const carton = { size: 237, unit: 'ml', word: 'carton' } as const;

  test.for<[string, readonly [string, string], readonly [string, string], boolean]>([
    ['of what pours by the jug', ['½ cup', '½ cup'], ['120 ml', 'the rest'], true],
    ['of what pours in the author’s proportion', ['⅓ cup', '⅔ cup'], ['80 ml', 'the rest'], true],
    ['of what does not by halves', ['½ cup', '½ cup'], ['½ (237-ml) carton', '½ (237-ml) carton'], false],
    ['or by the cup where they are none', ['⅓ cup', '⅔ cup'], ['¼ cup + 1 tbsp', 'the rest'], false],
  ])('are measured %s', ([, shares, become, pours]) => {
    const cartons = larderOf(foodOf({ us: soldAs([]), ca: soldAs([carton]) }, { pours, ...inFridge(4, false) }));
    const mentions = shares.map((text, at) => amountOf(text, 'gloop', 'us', `share ${at}`));
    const post = recipeOf({ kitchen: 'us', lines: ['1 cup gloop'], mentions }, cartons);
    const result = reauthoredOf(post, 'ca', cartons);
    expect(result.version.parts[0]?.lines.map(textOf)).toEqual(['1 (237-ml) carton gloop']);
    expect(result.version.steps[0]?.mentions.map(({ text }) => text)).toEqual(become);
  });
});

describe('what is optional or served beside', () => {
  test.for([
    ['⅓ cup gloop, to serve', 'us', 'us-scale', '⅓ cup gloop, to serve'],
    ['80 g gloop, to serve', 'uk', 'us', '⅓ cup gloop, to serve'],
    ['1⅔ cups gloop (optional)', 'us', 'us-scale', '1⅔ cups gloop (optional)'],
    ['130 ml gloop, to serve', 'uk', 'au', '130 ml gloop, to serve'],
  ] as const)('%s is landed as near as any other line', ([line, from, to, becomes]) => {
    const poured = larderOf(foodOf({ any: soldAs([{ size: 500 }]) }, { pours: true }));
    expect(reauthored([line], from, to, poured).map(textOf)).toEqual([becomes]);
  });

  test('makes no room for what is in the dish', () => {
    // An eighth too much of a seasoning that comes in packets: more bread beside the dish does not thin it.
    const mix = foodOf(
      { us: soldAs([{ size: 28, ...whole }]), uk: soldAs([{ size: 31.5, ...whole }]) },
      { id: 'mix', role: 'seasoning' },
    );
    const loaf = foodOf(
      { any: soldAs([], { singly: true }) },
      { id: 'loaves', pieces: [{ unit: 'count', size: null, grams: new Exact(100), source: 'made up for a test' }] },
    );
    const gloops = foodOf({ any: soldAs([{ size: 400, ...whole }]) });
    const lines = ['1 × 28 g packet mix', '1 × 400 g can gloop', '6 loaves, to serve'];
    const within = larderOf(mix, loaf, gloops);
    const result = reauthoredOf(recipeOf({ kitchen: 'us', lines }, within), 'uk', within);
    expect(result.infeasible?.because.map((each) => (each.kind === 'ratio' ? each.name : each.kind))).toEqual([
      'mix : whole',
    ]);
    expect(result.version.parts[0]?.lines.map(textOf).at(-1)).toBe('6 loaves, to serve');
  });

  test('is not enlarged to use a pack up, but for its last splash', () => {
    const pots = larderOf(foodOf({ any: soldAs([{ size: 150, unit: 'ml' }]) }, { pours: true, ...inFridge(5, true) }));
    const amounts = ['120 ml gloop, to serve', '145 ml gloop, to serve'];
    expect(amounts.flatMap((line) => reauthored([line], 'uk', 'eu', pots).map(textOf))).toEqual([
      '120 ml gloop, to serve',
      '150 ml gloop, to serve',
    ]);
  });
});

describe('what is bought for a range covers its upper end', () => {
  test('in tins', () => {
    const within = gloop([{ size: 400, ...whole }], [{ size: 400, ...whole }]);
    expect(reauthored(['2–3 × 400 g cans gloop', '1 l water'], 'us', 'uk', within).map(shopping)[0]).toBe(
      '2–3 × 400 g tins gloop: 3 × 400 g, 0 left',
    );
  });

  test('by weight', () => {
    const within = gloop([{ size: 250 }], [{ size: 250 }]);
    expect(reauthored(['400–600 g gloop'], 'us', 'uk', within).map(shopping)).toEqual([
      '400–600 g gloop: 3 × 250 g, 150 left',
    ]);
  });
});
