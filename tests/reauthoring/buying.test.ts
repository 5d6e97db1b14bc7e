import {
  buy,
  counterStepGrams,
  Exact,
  type Food,
  isRefusal,
  isUseWhole,
  reauthor,
  type Sold,
  type VersionLine,
} from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { converted, recipeOf, rulesOf, textOf, versionOf } from './recipe-of.js';
import { foodOf, larderOf, type ShortPack, soldAs } from './sample-food.js';
import { kitchen, setting } from './setting.js';

const step = new Exact(50);
const boughtOf = (grams: number, sizes: readonly number[]) =>
  buy(new Exact(grams), soldAs(sizes.map((size) => ({ size }))), step);
const inWords = (bought: ReturnType<typeof boughtOf>): string =>
  bought?.packs.map(({ count, pack }) => `${count} × ${pack.size}`).join(' + ') ?? 'nothing';

describe('the packs to buy', () => {
  /** Least left over and fewest packs, over all counts up to twelve of each size. */
  function byCounting(grams: number, sizes: readonly number[]): { left: number; packs: number } {
    let best = { left: Number.POSITIVE_INFINITY, packs: Number.POSITIVE_INFINITY };
    const count = (at: number, total: number, packs: number): void => {
      const size = sizes[at];
      if (size !== undefined) {
        for (let more = 0; more <= 12; more++) count(at + 1, total + more * size, packs + more);
      } else if (total >= grams * 0.97) {
        const left = Math.max(total - grams, 0);
        if (left < best.left || (left === best.left && packs < best.packs)) best = { left, packs };
      }
    };
    count(0, 0, 0);
    return best;
  }

  test('are those with the least left over, then the fewest, as counting them all out finds', () => {
    const size = fc.integer({ min: 5, max: 40 }).map((fives) => fives * 5);
    const sizes = fc.uniqueArray(size, { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 300 }), sizes, (grams, shelf) => {
        const bought = boughtOf(grams, shelf);
        const packs = bought?.packs.reduce((sum, { count }) => sum + count, 0);
        expect({ left: bought?.leftoverGrams.toNumber(), packs }).toEqual(byCounting(grams, shelf));
      }),
    );
  });

  test.for([
    { need: 400, sizes: [400, 800], buys: '1 × 400', left: '0', because: 'it fits' },
    { need: 800, sizes: [400, 800], buys: '1 × 800', left: '0', because: 'one pack, not two' },
    { need: 500, sizes: [400, 800], buys: '1 × 800', left: '300', because: 'two of 400 are one more pack for as much' },
    { need: 500, sizes: [200, 400], buys: '1 × 400 + 1 × 200', left: '100', because: 'two of 400 leave 300' },
    { need: 412, sizes: [400], buys: '1 × 400', left: '0', because: '2.9 % short counts as equal' },
    { need: 413, sizes: [400], buys: '2 × 400', left: '387', because: '3.1 % short does not' },
    {
      need: 1e9,
      sizes: [300, 400, 500],
      buys: '1940000 × 500',
      left: '0',
      because: 'a slip is not counted out pack by pack',
    },
    { need: 1, sizes: [400], buys: '1 × 400', left: '399', because: 'nobody sells less' },
  ])('for $need g out of $sizes are $buys: $because', ({ need, sizes, buys, left }) => {
    const bought = boughtOf(need, sizes);
    expect([inWords(bought), bought?.leftoverGrams.toString()]).toEqual([buys, left]);
  });

  test.for([
    { need: 150, drained: 160, buys: '1 × 340', left: '10', because: 'the brine is poured off' },
    { need: 200, drained: 160, buys: '2 × 340', left: '120', because: 'one jar holds too few olives' },
    { need: 200, drained: undefined, buys: '1 × 340', left: '140', because: 'nobody knows how much is brine' },
  ])(
    'for $need g measured out of jars of 340 g, $drained g drained, are $buys: $because',
    ({ need, drained, buys, left }) => {
      const jar = { size: 340, word: 'jar', whole: 'no', ...(drained === undefined ? {} : { drained }) } as const;
      const bought = buy(new Exact(need), soldAs([jar]), step);
      expect([inWords(bought), bought?.leftoverGrams.toString()]).toEqual([buys, left]);
    },
  );

  test('are none where nothing is sold by weight', () => {
    expect(buy(new Exact(100), soldAs([], { singly: true }), step)).toBeNull();
  });
});

describe('the counter', () => {
  // Common practice, no source: 50 g, or a quarter pound of 453.59237 g (international pound, 1959).
  test.for([
    { id: 'uk', grams: '50' },
    { id: 'us', grams: '113.3980925' },
  ])('of the $id kitchen weighs off by $grams g', ({ id, grams }) => {
    expect(counterStepGrams(kitchen(id)).toString()).toBe(grams);
  });

  test.for([
    { need: '450', weighed: '450', left: '0' },
    { need: '451', weighed: '500', left: '49' },
    { need: '1', weighed: '50', left: '49' },
    { need: '450.00001', weighed: '450', left: '0' },
  ])('weighs off $weighed g for $need g', ({ need, weighed, left }) => {
    const bought = buy(new Exact(need), soldAs([], { loose: true }), step);
    expect([bought?.looseGrams?.toString(), bought?.leftoverGrams.toDecimalPlaces(3).abs().toString()]).toEqual([
      weighed,
      left,
    ]);
  });
});

describe('a food is used whole', () => {
  const whole: ShortPack = { size: 400, whole: 'yes' };
  test.for<[string, Sold | null, boolean]>([
    ['where all its packs are', soldAs([whole]), true],
    ['where they are used by halves', soldAs([{ ...whole, whole: 'half' }]), true],
    ['not where one of them is poured from', soldAs([whole, { size: 800 }]), false],
    ['not where the shop weighs it off too', soldAs([whole], { loose: true }), false],
    ['not where nothing is known of its packs', soldAs([]), false],
    ['not where nothing is known of it', null, false],
  ])('%s', ([, sold, expected]) => {
    expect(isUseWhole(sold)).toBe(expected);
  });
});

/** A native UK line of a made-up food, judged. */
function ukLine(text: string, sold: Sold, more: Partial<Food> = {}): VersionLine {
  const food = foodOf({ any: sold }, more);
  const line = versionOf({ kitchen: 'uk', lines: [text] }, 'uk', larderOf(food)).parts[0]?.lines[0];
  if (line?.food !== food) throw new RangeError(`${text} is not read as the made-up food.`);
  return line;
}

const tins = soldAs([{ size: 400, whole: 'yes' }]);
const halves = soldAs([{ size: 400, whole: 'half' }]);
const poured = soldAs([{ size: 400 }]);
const loose = soldAs([], { loose: true });

interface Case {
  line: string;
  sold: Sold;
  fault: 'none' | 'pack-size' | 'part-of-pack' | 'counter-step' | 'not-sold';
  because: string;
}

const cases: Case[] = [
  { line: '1 × 400 g tin gloop', sold: poured, fault: 'none', because: 'the shop has it' },
  { line: '1 × 390 g tin gloop', sold: poured, fault: 'none', because: '2.6 % off counts as equal' },
  { line: '1 × 388 g tin gloop', sold: poured, fault: 'pack-size', because: '3.1 % off does not' },
  { line: '1 × 200 g tin gloop', sold: poured, fault: 'pack-size', because: 'no shop has it' },
  {
    line: '2 × 200 g fillets gloop',
    sold: soldAs([{ size: 500 }], { loose: true }),
    fault: 'none',
    because: 'the size of a piece is no label',
  },
  { line: '1 tin gloop', sold: tins, fault: 'none', because: 'one whole' },
  { line: '½ tin gloop', sold: tins, fault: 'part-of-pack', because: 'a half is no whole' },
  { line: '½ tin gloop', sold: halves, fault: 'none', because: 'halves are used' },
  { line: '¼ tin gloop', sold: halves, fault: 'part-of-pack', because: 'a quarter is no half' },
  { line: '1½ tins gloop', sold: halves, fault: 'none', because: 'three halves' },
  { line: '½ tin gloop', sold: poured, fault: 'none', because: 'any part may be poured' },
  { line: '800 g gloop', sold: tins, fault: 'none', because: 'two tins' },
  { line: '399 g gloop', sold: tins, fault: 'none', because: 'a quarter per cent off a tin is on it' },
  { line: '395 g gloop', sold: tins, fault: 'part-of-pack', because: 'over half a per cent off is not' },
  { line: '200 g gloop', sold: tins, fault: 'part-of-pack', because: 'half a tin' },
  { line: '200 g gloop', sold: halves, fault: 'none', because: 'half a tin, and halves are used' },
  { line: '450 g gloop', sold: loose, fault: 'none', because: 'nine steps' },
  { line: '452 g gloop', sold: loose, fault: 'none', because: '0.44 % off the step is on it' },
  { line: '453 g gloop', sold: loose, fault: 'counter-step', because: '0.66 % off the step is not' },
  { line: '475 g gloop', sold: loose, fault: 'counter-step', because: 'between two steps' },
  {
    line: '475 g gloop',
    sold: soldAs([{ size: 500 }], { loose: true }),
    fault: 'none',
    because: 'it comes in packs too',
  },
  {
    line: '475 g gloop',
    sold: soldAs([], { loose: true, singly: true }),
    fault: 'none',
    because: 'it is bought by the piece',
  },
  { line: '100 g gloop', sold: soldAs([], { sold: false }), fault: 'not-sold', because: 'no shop has it' },
  {
    line: 'gloop, to serve',
    sold: soldAs([], { sold: false }),
    fault: 'not-sold',
    because: 'it is needed all the same',
  },
  { line: 'gloop, to serve', sold: tins, fault: 'none', because: 'any of it will do' },
];

describe('what cannot be bought', () => {
  test.for(cases)('$line: $fault, because $because', ({ line, sold, fault }) => {
    const buying = rulesOf(ukLine(line, sold)).filter((rule) => rule.startsWith('unbuyable'));
    expect(buying).toEqual(fault === 'none' ? [] : [`unbuyable ${fault}`]);
  });

  test.for([
    ['1 egg', []],
    ['½ egg', ['1']],
    ['1½ eggs', ['1', '2']],
  ] as const)('%s: the nearest eggs are %s', ([text, nearest]) => {
    const line = ukLine(text, soldAs([], { singly: true }), {
      id: 'egg',
      names: { any: [{ one: 'egg', many: 'eggs' }] },
    });
    const faults = line.problems.flatMap(({ problem }) =>
      problem.rule === 'unbuyable' && problem.reason === 'part-of-piece' ? problem.nearest : [],
    );
    expect(faults.map(({ statements }) => statements[0]?.[0]?.low.toString())).toEqual(nearest);
  });

  test.for([
    ['475 g gloop', loose, ['450 g', '500 g']],
    ['760 g gloop', tins, ['2 count']],
  ] as const)('for %s the nearest that can be are named', ([text, sold, nearest]) => {
    const faults = ukLine(text, sold).problems.flatMap(({ problem }) =>
      problem.rule === 'unbuyable' && 'nearest' in problem ? problem.nearest : [],
    );
    const words = faults.map(({ statements }) => `${statements[0]?.[0]?.low} ${statements[0]?.[0]?.unit}`);
    expect(words).toEqual(nearest);
  });

  test('stands in no cure’s way: its packs are a specialist’s', () => {
    expect(rulesOf(ukLine('5 g gloop', soldAs([], { sold: false }), { role: 'cure' }))).toEqual([]);
  });
});

describe('a remainder is awkward', () => {
  const fridge = (days: number, freezes: boolean, least: number): Partial<Food> => ({
    keeps: { where: 'fridge', days, freezes, leastGrams: new Exact(least), source: 'made up for a test' },
  });
  const cupboard: Partial<Food> = {
    keeps: { where: 'cupboard', days: 3, freezes: true, leastGrams: new Exact(100), source: 'made up for a test' },
  };
  const hundred = soldAs([{ size: 100 }]);

  test.for<[string, string, Partial<Food>, boolean]>([
    ['where it spoils within six days', '80 g gloop', fridge(6, false, 0), true],
    ['not where it keeps a week', '80 g gloop', fridge(7, false, 0), false],
    ['not where it freezes', '80 g gloop', fridge(2, true, 0), false],
    ['where it is too little to keep', '80 g gloop', fridge(30, true, 21), true],
    ['not where it is just enough to keep', '80 g gloop', fridge(30, true, 20), false],
    ['not where it stands in a cupboard', '80 g gloop', cupboard, false],
    ['not where it clings to the pack: a twentieth', '95 g gloop', fridge(2, false, 50), false],
    ['where it is just more than that', '90 g gloop', fridge(2, false, 50), true],
    ['not where there is none', '100 g gloop', fridge(2, false, 50), false],
  ])('%s', ([, line, keeps, awkward]) => {
    expect(rulesOf(ukLine(line, hundred, keeps))).toEqual(awkward ? ['awkward-leftover'] : []);
  });

  test('of what the shop weighs off it never is: it weighs off what is wanted', () => {
    const both = soldAs([{ size: 500 }], { loose: true });
    expect(rulesOf(ukLine('475 g gloop', both, fridge(1, false, 500)))).toEqual([]);
  });

  test('says how much is left of which packs', () => {
    const [found] = ukLine('250 g gloop', hundred, fridge(2, false, 0)).problems;
    const problem = found?.problem.rule === 'awkward-leftover' ? found.problem : null;
    expect([problem?.grams.toString(), problem?.packs.map(({ count }) => count), problem?.spoils]).toEqual([
      '50',
      [3],
      true,
    ]);
  });
});

describe('a use-whole food in another kitchen', () => {
  const between = (native: ShortPack, there: ShortPack[], line: string): VersionLine =>
    converted(line, 'us', 'uk', larderOf(foodOf({ us: soldAs([{ whole: 'yes', ...native }]), uk: soldAs(there) })));
  const whole = { whole: 'yes' } as const;

  test.for<[string, ShortPack, ShortPack[], string, string]>([
    [
      'comes in whole packs within a tenth',
      { size: 440 },
      [{ ...whole, size: 400 }],
      '1 × 440 g can gloop',
      '1 × 400 g tin gloop',
    ],
    ['is stated by weight beyond it', { size: 445 }, [{ ...whole, size: 400 }], '1 × 445 g can gloop', '445 g gloop'],
    [
      'takes the nearest size',
      { size: 425 },
      [
        { ...whole, size: 200 },
        { ...whole, size: 400 },
      ],
      '1 × 425 g can gloop',
      '1 × 400 g tin gloop',
    ],
    [
      'takes fewer packs of two sizes that are as near',
      { size: 400 },
      [
        { ...whole, size: 200 },
        { ...whole, size: 400 },
      ],
      '1 × 400 g can gloop',
      '1 × 400 g tin gloop',
    ],
    [
      'takes halves where they are used',
      { size: 200 },
      [{ size: 400, whole: 'half' }],
      '1 × 200 g can gloop',
      '½ × 400 g tin gloop',
    ],
    [
      'takes a whole small pack rather than half a large one',
      { size: 400 },
      [
        { size: 400, whole: 'half' },
        { size: 800, whole: 'half' },
      ],
      '1 × 400 g can gloop',
      '1 × 400 g tin gloop',
    ],
    [
      'goes by drained weight where both packs have one',
      { size: 425, drained: 255 },
      [{ ...whole, size: 400, drained: 300 }],
      '1 × 425 g can gloop, drained',
      '425 g gloop, drained',
    ],
    [
      'goes by net weight where one has none',
      { size: 425, drained: 255 },
      [{ ...whole, size: 400 }],
      '1 × 425 g can gloop, drained',
      '1 × 400 g tin gloop, drained',
    ],
    [
      'goes by net weight where the line does not say drained',
      { size: 425, drained: 255 },
      [{ ...whole, size: 400, drained: 300 }],
      '1 × 425 g can gloop',
      '1 × 400 g tin gloop',
    ],
    [
      'is left in its pack where it is poured, if an equal one is sold',
      { size: 400, whole: 'no' },
      [{ size: 390 }],
      '1 × 400 g can gloop',
      '1 × 390 g tin gloop',
    ],
    [
      'is weighed out where it is poured and no equal pack is sold',
      { size: 400, whole: 'no' },
      [{ size: 380 }],
      '1 × 400 g can gloop',
      '400 g gloop',
    ],
    [
      'keeps both ends of a range in one size',
      { size: 400 },
      [
        { ...whole, size: 150 },
        { ...whole, size: 390 },
      ],
      '1–2 × 400 g cans gloop',
      '1–2 × 390 g tins gloop',
    ],
  ])('%s', ([, native, there, line, becomes]) => {
    expect(textOf(between(native, there, line))).toBe(becomes);
  });

  test('that no whole packs come near carries a finding', () => {
    expect(rulesOf(between({ size: 445 }, [{ ...whole, size: 400 }], '1 × 445 g can gloop'))).toEqual([
      'unbuyable part-of-pack',
    ]);
  });
});

test('a label in millilitres carries its grams', () => {
  // Butter beans in a Canadian can: 398 ml hold 398 g (common practice, no source); by the cup they would weigh 316 g.
  const line = converted('1 (398-ml) can butter beans', 'ca', 'uk');
  expect([line.native.grams?.toString(), textOf(line)]).toEqual(['398', '1 × 400 g tin butter beans']);
});

test('what comes in whole packs only is told to be bought otherwise, and not to be measured by cups', () => {
  const within = larderOf(
    foodOf({ us: soldAs([{ size: 400, whole: 'yes' }]), ca: soldAs([{ size: 540, whole: 'yes' }]) }),
  );
  const [line] = versionOf({ kitchen: 'us', lines: ['1 × 400 g can gloop'] }, 'ca', within).parts.flatMap(
    ({ lines }) => lines,
  );
  expect(line === undefined ? [] : rulesOf(line)).toEqual(['unbuyable part-of-pack']);
});

// A UK counter weighs off 50 g at the least, and a scale at home what is used of it: common practice, no source.
test('less than a counter weighs off is weighed at home: fresh yeast', () => {
  expect(rulesOf(ukLine('20 g gloop', loose))).toEqual([]);
  expect(rulesOf(ukLine('70 g gloop', loose))).toEqual(['unbuyable counter-step']);
  const lines = ['500 g strong white bread flour', '300 ml water', '20 g fresh yeast', '10 g salt'];
  for (const kitchen of ['uk', 'au']) {
    const yeast = versionOf({ kitchen: 'eu', lines }, kitchen).parts[0]?.lines[2];
    expect(yeast === undefined ? '' : textOf(yeast)).toBe('20 g fresh yeast');
    expect(yeast?.bought?.looseGrams?.toString()).toBe('50');
    const result = reauthor(recipeOf({ kitchen: 'eu', lines }), kitchen, setting);
    expect(isRefusal(result) || result.infeasible).toBeNull();
  }
});

// Steps of 50 g: common practice, no source. The larder weighs the cranberries.
test.for([
  ['¾ cup cranberries', '100 g cranberries'],
  ['1 cup cranberries', '100 g cranberries'],
  ['1½ cups cranberries', '150 g cranberries'],
] as const)('a cup of what shops only weigh off lands on their steps, never between: %s', ([line, becomes]) => {
  const cranberries = converted(line, 'ca', 'au');
  expect(textOf(cranberries)).toBe(becomes);
  expect(rulesOf(cranberries)).not.toContain('unbuyable counter-step');
});
