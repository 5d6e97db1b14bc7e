import { baseArea, Exact, type PanReading, panFor, readPan, versionFor } from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCsv } from '../reference/read-csv.js';
import { reauthoredOf } from './reauthored.js';
import { recipeInPost } from './recipe-in-post.js';
import { mentionIn, panOf } from './recipe-of.js';
import { kitchen, kitchenIds, setting } from './setting.js';

const inch = '2.54';
const practice = 'common practice, no source';

const worked = [
  { from: 'us', pan: '9×13 in', to: 'uk', becomes: '23 × 33 cm', by: `the roasting tin; ${practice}` },
  { from: 'us', pan: '13×9 in', to: 'uk', becomes: '33 × 23 cm', by: 'the author’s order of sides' },
  { from: 'us', pan: '9 x 13 x 2 in', to: 'uk', becomes: '23 × 33 × 5 cm', by: 'the depth is stated again' },
  { from: 'us', pan: '8-inch round', to: 'uk', becomes: '20 cm round', by: `${practice}; 314.2 for 324.3 cm²` },
  { from: 'us', pan: '9-inch round', to: 'eu', becomes: '23 cm round', by: `${practice}; 415.5 for 410.4 cm²` },
  { from: 'us', pan: '8-inch square', to: 'au', becomes: '20 cm square', by: `${practice}; 400 for 412.9 cm²` },
  { from: 'us', pan: '8×8 in', to: 'au', becomes: '20 × 20 cm', by: 'two sides where two were written' },
  {
    from: 'us',
    pan: '9x5-inch loaf pan',
    to: 'uk',
    becomes: '23 × 13 cm loaf pan',
    by: 'conversion chart: the 2 lb tin',
  },
  { from: 'us', pan: 'two 8-inch rounds', to: 'uk', becomes: 'two 20 cm rounds', by: 'the number is kept' },
  { from: 'us', pan: '2 8-inch round pans', to: 'uk', becomes: '2 20 cm round pans', by: 'the number is kept' },
  { from: 'us', pan: 'two (8-inch) round pans', to: 'uk', becomes: 'two (20 cm) round pans', by: 'brackets are kept' },
  { from: 'uk', pan: '2 lb loaf tin', to: 'us', becomes: '5 × 9 in loaf tin', by: 'conversion chart: 23 × 13 × 7 cm' },
  { from: 'uk', pan: '900 g loaf tin', to: 'us', becomes: '5 × 9 in loaf tin', by: 'the same tin in grams' },
  { from: 'uk', pan: '20 cm round', to: 'us', becomes: '8 in round', by: practice },
  { from: 'ca', pan: '2 L square', to: 'us', becomes: '8 in square', by: 'Canadian household pan chart' },
  {
    from: 'us',
    pan: '2-quart baking dish',
    to: 'uk',
    becomes: '20 × 20 cm baking dish',
    by: 'no shape is said: both sides',
  },
  { from: 'us', pan: '1-quart dish', to: 'uk', becomes: '0.9 litre dish', by: '946 ml; no pan of that name' },
  { from: 'us', pan: '1-quart dish', to: 'ca', becomes: '0.9 litre dish', by: 'a Canadian quart is the imperial one' },
  { from: 'uk', pan: '2 litre dish', to: 'us', becomes: '2-quart dish', by: '2.11 US quarts' },
  {
    from: 'uk',
    pan: '1.2 litre pudding basin',
    to: 'us',
    becomes: '5-cup pudding basin',
    by: '5.07 US cups, 1.27 quarts',
  },
  { from: 'uk', pan: '2-pint pudding basin', to: 'us', becomes: '5-cup pudding basin', by: '1136 ml: 4.8 US cups' },
  { from: 'uk', pan: 'six 150 ml ramekins', to: 'us', becomes: 'six 5 fl oz ramekins', by: '5.07 US fl oz' },
  { from: 'us', pan: '6 fl oz ramekins', to: 'eu', becomes: '180 ml ramekins', by: '177 ml' },
  { from: 'us', pan: '10-cup Bundt pan', to: 'uk', becomes: '2.4 litre Bundt pan', by: '2366 ml: a ring holds cups' },
  { from: 'eu', pan: '2.4 litre Bundt tin', to: 'us', becomes: '10-cup Bundt tin', by: 'rings are known by cups' },
  { from: 'eu', pan: '22 cm Bundt tin', to: 'us', becomes: '8.5 in Bundt tin', by: 'no round pan stands for a ring' },
  { from: 'us', pan: '12-cup muffin pan', to: 'uk', becomes: '12-hole muffin pan', by: 'a hole is counted' },
  { from: 'us', pan: '6-cup muffin tin', to: 'au', becomes: '6-hole muffin tin', by: 'the author’s number' },
  { from: 'us', pan: 'two 12-cup muffin pans', to: 'eu', becomes: 'two 12-hole muffin pans', by: 'both numbers' },
  { from: 'uk', pan: '12-hole muffin tin', to: 'us', becomes: '12-cup muffin tin', by: practice },
  { from: 'uk', pan: '24-hole mini muffin tin', to: 'ca', becomes: '24-cup mini muffin tin', by: practice },
  { from: 'us', pan: 'muffin pan', to: 'uk', becomes: 'muffin pan', by: 'no number is written' },
  { from: 'us', pan: 'half sheet pan', to: 'uk', becomes: '33 × 46 cm sheet pan', by: `13 × 18 in; ${practice}` },
  {
    from: 'us',
    pan: 'two quarter-sheet pans',
    to: 'uk',
    becomes: 'two 23 × 33 cm sheet pans',
    by: `9 × 13 in; ${practice}`,
  },
  { from: 'us', pan: 'two half sheet pans', to: 'eu', becomes: 'two 33 × 46 cm sheet pans', by: 'not two and a half' },
  { from: 'us', pan: 'half sheet pan', to: 'ca', becomes: 'half sheet pan', by: 'the same name there' },
  { from: 'au', pan: 'lamington tin', to: 'uk', becomes: '20 × 30 cm lamington tin', by: 'no name there' },
  { from: 'us', pan: '12-inch skillet', to: 'uk', becomes: '30 cm skillet', by: 'no cake tin stands for it' },
  { from: 'us', pan: '10-inch skillet', to: 'eu', becomes: '25 cm skillet', by: 'though tins of 26 cm are usual' },
  { from: 'eu', pan: '28 cm tart tin', to: 'us', becomes: '11 in tart tin', by: 'tart tins for tart tins' },
  { from: 'uk', pan: '1 lb loaf tin', to: 'us', becomes: '4.5 × 6.5 in loaf tin', by: 'a US pound pan is another' },
  {
    from: 'au',
    pan: '28 × 38 cm roasting pan',
    to: 'us',
    becomes: '11 × 15 in roasting pan',
    by: 'no jelly-roll pan of 1 in',
  },
  { from: 'us', pan: 'a jelly-roll pan', to: 'uk', becomes: 'a 25 × 38 cm jelly-roll pan', by: '10 × 15 in' },
  { from: 'us', pan: 'pie plate', to: 'uk', becomes: '23 cm pie plate', by: '9 in' },
  { from: 'au', pan: 'lamington tin', to: 'us', becomes: '8 × 12 in lamington tin', by: '20 × 30 cm' },
  { from: 'uk', pan: 'two 20cm/8in sandwich tins', to: 'us', becomes: 'two 8 in sandwich tins', by: 'said once' },
  { from: 'uk', pan: '2 x 20cm sandwich tins', to: 'us', becomes: '2 x 8 in sandwich tins', by: 'a number, no side' },
  {
    from: 'eu',
    pan: '23 cm springform, 6 cm deep',
    to: 'us',
    becomes: '9 in springform, 2½ in deep',
    by: 'of 9 in pans the nearest rim: 2.5 in',
  },
];

describe('a pan of another kitchen', () => {
  test.for(worked)('$pan from $from reads $becomes in $to: $by', ({ from, pan, to, becomes }) => {
    expect(mentionIn(panOf(pan, from), from, to).text).toBe(becomes);
  });

  test.for([
    ['us', '8-inch round', 'ca'],
    ['us', '9×13 in', 'ca'],
    ['uk', '23 x 33 cm', 'au'],
    ['us', 'two 8-inch rounds', 'ca'],
  ] as const)('keeps the %s words %s in %s, where the very size is sold', ([from, pan, to]) => {
    expect(mentionIn(panOf(pan, from), from, to).text).toBe(pan);
  });

  test.for([
    { pan: '4-inch round', from: 'us', to: 'uk', becomes: '10 cm round' },
    { pan: '14-inch round', from: 'us', to: 'uk', becomes: '36 cm round' },
    { pan: '30 cm round', from: 'uk', to: 'us', becomes: '12 in round' },
  ])('names the plain size where nothing is near: $pan reads $becomes', ({ pan, from, to, becomes }) => {
    const reading = readPan(pan);
    const choice = reading === null ? null : panFor(reading, kitchen(from), kitchen(to));
    expect([mentionIn(panOf(pan, from), from, to).text, choice?.pan]).toEqual([becomes, null]);
  });

  test('is the usual one for cakes whose base is nearest, and never more than 15 % off', () => {
    const side = fc.integer({ min: 10, max: 45 });
    const shape = fc.constantFrom('round', 'square');
    fc.assert(
      fc.property(fc.constantFrom(...kitchenIds), side, shape, (id, cm, form) => {
        const reading = readPan(`${cm} cm ${form}`);
        const choice = reading === null ? null : panFor(reading, kitchen('uk'), kitchen(id));
        const areas = kitchen(id)
          .pans.filter((pan) => pan.shape === form && !/\b(?:pie|tart|flan)\b/.test(pan.name))
          .map(({ sides, unit }) => new Exact(sides[0] ?? 0).times(unit === 'in' ? inch : 1).pow(2));
        const off = areas.map((area) =>
          area
            .dividedBy(cm * cm)
            .minus(1)
            .abs()
            .toNumber(),
        );
        const least = Math.min(...off);
        // With nothing near, the author's own words hold where the kitchen measures in the same unit, else the plain size.
        const isPlain = choice?.pan === null && choice.areaDrift === null;
        const isOwnSize = choice?.text === null && !isPlain;
        expect(isPlain ? 'plain' : (choice?.areaDrift?.abs().toNumber() ?? Number.NaN)).toBe(
          least > 0.15 ? 'plain' : isOwnSize ? 0 : least,
        );
      }),
    );
  });

  test.for(kitchenIds)('is never a muffin pan, nor a loaf pan for a round one, in %s', (id) => {
    const choice = panFor(readPan('7 cm round') as PanReading, kitchen('uk'), kitchen(id));
    expect(choice?.pan).toBeNull();
  });
});

describe('the base of a pan', () => {
  test.for(readCsv('pan-volumes.csv'))('$country $name: base times depth is $volume_ml ml: $source', (row) => {
    const { sides = '', shape, unit, depth = '' } = row;
    const cm = (value: string): Exact => new Exact(value).times(unit === 'in' ? inch : 1);
    const area = baseArea(sides.split(' x ').map(cm), shape === 'round' ? 'round' : 'rectangle');
    // The table rounds volumes to a millilitre.
    const volume = area?.times(cm(depth)).toNumber() ?? 0;
    expect(Math.abs(volume - Number(row.volume_ml))).toBeLessThanOrEqual(0.51);
  });

  test('of no sides is not known', () => {
    expect(baseArea([], 'round')).toBeNull();
  });

  test('of a square by one side is that side squared, not a circle', () => {
    expect(baseArea([new Exact(20)], 'square')?.toString()).toBe('400');
  });
});

describe('what stands beside a label', () => {
  const pansIn = (method: string, from: string, to: string): string => {
    const recipe = recipeInPost(`:::ingredients{kitchen=${from}}\n- 4 eggs\n:::\n\n:::method\n${method}\n:::\n`);
    const mentions = versionFor(recipe, to, setting).steps[0]?.mentions ?? [];
    return mentions.map(({ text, pan }) => `${text}${(pan?.count ?? 1) > 1 ? ` × ${pan?.count}` : ''}`).join(', ');
  };

  // A US quart is 946 ml, a fluid ounce 29.6 ml. UK springforms are 20, 23 and 26 cm, EU tart tins 24 and 28 cm (common practice, no source).
  test.for([
    { from: 'us', method: 'Bake in a :pan[9-inch] round cake pan.', to: 'eu', becomes: '23 cm', by: 'a cake tin' },
    { from: 'us', method: 'Bake in a :pan[9-inch] pie plate.', to: 'eu', becomes: '24 cm', by: 'a pie in a tart tin' },
    { from: 'us', method: 'Bake in a :pan[10-inch] springform pan.', to: 'uk', becomes: '26 cm', by: 'a springform' },
    {
      from: 'us',
      method: 'Bake in a :pan[10-inch] round cake pan.',
      to: 'uk',
      becomes: '25 cm',
      by: 'a deep round tin',
    },
    {
      from: 'us',
      method: 'Bake in a :pan[10-inch] Bundt pan.',
      to: 'eu',
      becomes: '25 cm',
      by: 'no round tin is a ring',
    },
    { from: 'eu', method: 'Bake in a :pan[2.4 litre] Bundt tin.', to: 'us', becomes: '10-cup', by: 'rings hold cups' },
    { from: 'us', method: 'Fry in a :pan[10-inch] cast-iron skillet.', to: 'eu', becomes: '25 cm', by: 'no cake tin' },
    {
      from: 'us',
      method: 'Warm it in a :pan[3-quart] saucepan.',
      to: 'uk',
      becomes: '2.8 litre',
      by: 'no baking dish',
    },
    { from: 'us', method: 'Warm it in a :pan[2-quart] pot.', to: 'au', becomes: '1.9 litre', by: 'no baking dish' },
    { from: 'us', method: 'Bake in a :pan[3-quart] baking dish.', to: 'uk', becomes: '23 × 33 cm', by: '9 × 13 in' },
    {
      from: 'us',
      method: 'Bake in a :pan[3-quart] casserole.',
      to: 'uk',
      becomes: '2.8 litre',
      by: 'a pot with a lid',
    },
    { from: 'us', method: 'Bake in a :pan[3-quart] casserole dish.', to: 'uk', becomes: '23 × 33 cm', by: 'a dish' },
    {
      from: 'us',
      method: 'Bake in a :pan[2-quart] soufflé dish.',
      to: 'eu',
      becomes: '1.9 litre',
      by: 'deep and round',
    },
    {
      from: 'us',
      method: 'Fill six :pan[6-oz] ramekins.',
      to: 'uk',
      becomes: '180 ml × 6',
      by: '6 fl oz, and no grams',
    },
    { from: 'us', method: 'Fill a :pan[12-cup] muffin tin.', to: 'uk', becomes: '12-hole', by: 'no 2.8 litres' },
    { from: 'us', method: 'Line a loaf pan (:pan[9×5 in]).', to: 'uk', becomes: '23 × 13 cm', by: 'said before it' },
    { from: 'us', method: 'Butter a pie plate, :pan[9 in].', to: 'eu', becomes: '24 cm', by: 'said before it' },
    {
      from: 'us',
      method: 'Wipe the pie plate. Grease :pan[9 in] pans.',
      to: 'eu',
      becomes: '23 cm',
      by: 'another sentence',
    },
    {
      from: 'us',
      method: 'Grease *two* :pan[8 in] round cake pans.',
      to: 'eu',
      becomes: '20 cm × 2',
      by: 'and their number',
    },
    {
      from: 'uk',
      method: 'Bake in a :pan[20 cm]{depth="7.5 cm"} cake tin.',
      to: 'us',
      becomes: '8 in',
      by: 'the deep one',
    },
  ])('says what pan it is: $method in $to is $becomes: $by', ({ from, method, to, becomes }) => {
    expect(pansIn(method, from, to)).toBe(becomes);
  });

  test('says which of the rims of one base is meant', () => {
    const recipe = recipeInPost('Bake in a :pan[8 in]{depth="3 in"} round cake pan.');
    const rims = ['uk', 'eu', 'au'].map((to) => versionFor(recipe, to, setting).steps[0]?.mentions[0]?.pan?.rim?.low);
    // Round tins of 20 cm are 4 and 7.5 cm deep in the UK, 5 and 7.5 in the EU, 4 and 7.5 in Australia.
    expect(rims.map(String)).toEqual(['7.5', '7.5', '7.5']);
  });
});

describe('a pan that carries the batch', () => {
  const cake = ['2 cups all-purpose flour', '1 cup sugar', '1 cup unsalted butter', '4 large eggs'];
  const reported = (method: string, to: string) => {
    const lines = cake.map((line) => `- ${line}\n`).join('');
    const result = reauthoredOf(
      recipeInPost(`:::ingredients{kitchen=us}\n${lines}:::\n\n:::method\n${method}\n:::\n`),
      to,
      setting,
    );
    return { pans: result.pans, batch: result.version.batchFactor.toNumber() };
  };

  test('is none that stands on the stove', () => {
    const { pans } = reported('Pour the milk into a :pan[2-quart] saucepan. Bake it in a :pan[9×13 in] dish.', 'eu');
    expect(pans.map(({ native }) => native)).toEqual(['9×13 in']);
  });

  test('is one for a joint, which no two pans share', () => {
    const roast = (where: string) => reported(`Roast in a :pan[12 × 16 in]{depth="3 in"} ${where}.`, 'uk').pans;
    expect(roast('cake pan').map(({ count }) => count.toString())).toEqual(['2']);
    expect(roast('roasting pan')).toEqual([]);
  });

  test('is not one of five times its size: a tart tin is no tartlet tin', () => {
    const { pans, batch } = reported('Divide between four :pan[4-inch] tart pans and bake.', 'eu');
    expect(pans).toEqual([]);
    expect(batch).toBe(1);
  });

  test('has a rim that holds a deep pie', () => {
    // A deep-dish plate is 2 in deep: two thirds of it, 3.4 cm, stand too high in the EU tin of 3 cm and 1.1 of the base, unless there is less.
    const { pans, batch } = reported('Pour into a :pan[9-inch] deep-dish pie plate and bake.', 'eu');
    expect(pans.map(({ version }) => version)).toEqual(['24 cm']);
    expect(((2 / 3) * 5.08 * batch) / 1.1025).toBeLessThanOrEqual(3);
  });

  test('is named in the singular where one takes the place of two', () => {
    const lines = ['225 g plain flour', '225 g caster sugar', '225 g butter', '4 medium eggs'];
    const text = lines.map((line) => `- ${line}\n`).join('');
    const post = `:::ingredients{kitchen=uk}\n${text}:::\n\n:::method\nBake in :pan[2 x 450 g loaf tins].\n:::\n`;
    const result = reauthoredOf(recipeInPost(post), 'eu', setting);
    // Two of 11 × 16 cm are 352 cm², one of 11 × 30 cm is 330.
    expect(result.version.steps[0]?.mentions[0]?.text).toBe('one 11 × 30 cm loaf tin');
    expect(result.pans[0]?.depthDrift).toBeCloseTo(352 / 330 - 1, 9);
  });
});

// A rim of an inch is that of a sheet, and one of 3 cm holds a batter: common practice, no source.
test.for([
  ['9 × 13 × 1¼ in pan', 'us', 'uk', '23 × 33 × 5 cm pan'],
  ['23 × 33 × 3 cm pan', 'uk', 'us', '9 × 13 × 2 in pan'],
  ['9 × 13 × 1 in pan', 'us', 'uk', '23 × 33 × 2 cm pan'],
] as const)('a rim of over an inch is none of a sheet: %s from %s in %s', ([text, from, to, becomes]) => {
  expect(mentionIn(panOf(text, from), from, to).text).toBe(becomes);
});

test('a size that the author’s shops have with either rim is baked in a pan that is not flat', () => {
  expect(mentionIn(panOf('25 × 30 cm cake pan', 'au'), 'au', 'nz').text).toBe('23 × 33 cm cake pan');
});
