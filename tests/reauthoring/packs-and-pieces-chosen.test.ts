import { Exact, type Food, type Reauthored, type ReauthorOptions } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { converted, recipeOf, rulesOf, textOf } from './recipe-of.js';
import { foodOf, larderOf, type ShortPack, soldAs } from './sample-food.js';

const whole = (...sizes: number[]): ShortPack[] => sizes.map((size) => ({ size, whole: 'yes' }));

interface Asked extends ReauthorOptions {
  lines: readonly string[];
  foods: readonly Food[];
  makes?: string;
}

function worked({ lines, foods, makes, ...options }: Asked): Reauthored {
  const within = larderOf(...foods);
  const recipe = { ...recipeOf({ kitchen: 'eu', lines }, within), makes: makes ?? null };
  return reauthoredOf(recipe, 'uk', within, options);
}

const textsOf = ({ version }: Reauthored): string[] => version.parts.flatMap(({ lines }) => lines.map(textOf));

/** Tins of 400 g, and by weight where they are written. */
const gloop = foodOf({ eu: soldAs([], { loose: true }), any: soldAs(whole(400)) });

describe('what is chosen', () => {
  test('is no row of small tins where a larger one is sold', () => {
    const foods = [foodOf({ eu: soldAs([], { loose: true }), any: soldAs(whole(250, 900)) })];
    expect(textsOf(worked({ lines: ['1000 g gloop'], foods }))).toEqual(['1 × 900 g tin gloop']);
    expect(textsOf(worked({ lines: ['750 g gloop'], foods }))).toEqual(['3 × 250 g tins gloop']);
  });

  test('is a range that begins far below its middle', () => {
    const foods = [foodOf({ any: soldAs(whole(400)) })];
    expect(textsOf(worked({ lines: ['1–4 (400 g) tins gloop'], foods }))[0]).toMatch(/^1–4 /);
  });

  test('is half of one of two pieces, and none of more', () => {
    const glop = foodOf({ any: soldAs([], { singly: true }) }, { id: 'glop' });
    const asked = (pieces: number) =>
      worked({ lines: ['533 g gloop', `${pieces} glop`], foods: [gloop, glop], anchor: 'gloop' });
    expect(textsOf(asked(2))[1]).toBe('1½ glop');
    expect(textsOf(asked(6))[1]).not.toMatch('½');
  });

  test('serves somebody, however small the batch', () => {
    expect(worked({ lines: ['530 g gloop'], foods: [gloop], anchor: 'gloop', makes: '1 serving' }).makes).toMatch(
      /\b1 serving$/,
    );
  });

  test('comes near to what is wanted where only a part of it may be left out', () => {
    const standIns = [{ parts: [{ food: 'gloop', share: new Exact(1) }], source: 'made up for a test' }];
    const glub = foodOf(
      { eu: soldAs([], { loose: true }), any: soldAs([], { sold: false, standIns }) },
      { id: 'glub' },
    );
    const asked = (...lines: string[]) => worked({ lines, foods: [gloop, glub] }).infeasible?.because ?? null;
    expect(asked('50 g glub (optional)', '50 g gloop (optional)')).toBeNull();
    expect(asked('50 g glub (optional)', '50 g gloop')).toMatchObject([{ kind: 'no-amount' }]);
    expect(asked('50 g gloop', '50 g glub (optional)')).toMatchObject([{ kind: 'no-amount' }]);
  });
});

describe('the least change', () => {
  test('is no other dish, and no tin of a third of what shops have', () => {
    const keeps = { where: 'fridge', days: 3, freezes: false, leastGrams: new Exact(0), source: 'made up' } as const;
    const foods = [foodOf({ eu: soldAs([], { loose: true }), any: soldAs(whole(400)) }, { keeps })];
    const kinds = (line: string) =>
      worked({ lines: [line], foods }).infeasible?.leastChange.map(({ kind }) => kind) ?? [];
    expect(kinds('130 g gloop')).toEqual(['own-version']);
    expect(kinds('180 g gloop')).toEqual(['pack-size']);
  });
});

describe('what is converted', () => {
  test('is no pack that holds over twice as much', () => {
    const food = foodOf({ any: soldAs([{ size: 250 }]) }, { densities: [] });
    expect(textOf(converted('100 g gloop', 'eu', 'us', larderOf(food)))).toBe('3½ oz gloop');
    expect(textOf(converted('130 g gloop', 'eu', 'us', larderOf(food)))).toMatch('250');
  });

  test('is told to the author where it is a fifth more or less', () => {
    const food = foodOf({ any: soldAs([{ size: 250 }]) });
    const rules = (line: string) => rulesOf(converted(line, 'eu', 'us', larderOf(food)));
    // ¼ tsp is 1.23 ml.
    expect(rules('0.9 ml gloop')).toEqual(['unmeasurable between-measures']);
    expect(rules('1.1 ml gloop')).toEqual([]);
  });
});

describe('what is stated twice, or stands for pieces', () => {
  test('is what comes first, where the second is another amount', () => {
    const food = foodOf({ any: soldAs([], { loose: true, singly: true }) });
    const there = (line: string) => textOf(converted(line, 'us', 'eu', larderOf(food)));
    expect(there('10 oz (300 g) gloop')).toMatch(/^300 g/);
    expect(there('10 oz (350 g) gloop')).toMatch(/^28\d g/);
  });

  test('is weighed where whole pieces are a third more or less', () => {
    const pieces = (grams: number) =>
      [{ unit: 'count', size: null, grams: new Exact(grams), source: 'made up' }] as const;
    const standIns = [{ parts: [{ food: 'glop', share: new Exact(1) }], source: 'made up for a test' }];
    const glub = foodOf(
      { eu: soldAs([], { singly: true }), any: soldAs([], { sold: false, standIns }) },
      { id: 'glub', pieces: [...pieces(25)] },
    );
    const glop = foodOf({ any: soldAs([], { singly: true }) }, { id: 'glop', pieces: [...pieces(100)] });
    const there = (line: string) => textOf(converted(line, 'eu', 'uk', larderOf(glub, glop)));
    expect(there('4 glub')).toBe('1 glop');
    expect(there('3 glub')).toBe('75 g glop');
  });
});

describe('parts of packs', () => {
  test('are half ones only where the other half is enough to keep', () => {
    const food = (least: number) =>
      foodOf(
        { any: soldAs([{ size: 400, whole: 'half' }]) },
        { keeps: { where: 'fridge', days: 10, freezes: false, leastGrams: new Exact(least), source: 'made up' } },
      );
    const there = (least: number) => textOf(converted('200 g gloop', 'eu', 'uk', larderOf(food(least))));
    expect(there(150)).toMatch(/^½ /);
    expect(there(250)).toBe('200 g gloop');
  });

  test('need no scale where halves are used', () => {
    const rules = (use: NonNullable<ShortPack['whole']>) =>
      rulesOf(
        converted(
          '4 oz gloop',
          'us',
          'us',
          larderOf(foodOf({ any: soldAs([{ size: 8, unit: 'oz', grams: 226.8, whole: use }]) })),
        ),
      );
    expect(rules('half')).toEqual([]);
    expect(rules('yes')).not.toEqual([]);
  });

  test('are not found by eye beside three whole ones', () => {
    const food = foodOf({ any: soldAs([{ size: 100, word: 'pack' }]) }, { byEye: 'only' });
    const there = (line: string) => textOf(converted(line, 'eu', 'us', larderOf(food)));
    expect(there('250 g gloop')).toMatch(/^2½ /);
    expect(there('350 g gloop')).toMatch(/^[34] /);
  });

  test('of butter are halves of a mark only up to four', () => {
    const there = (line: string) => textOf(converted(line, 'eu', 'us'));
    expect(there('50 g butter')).toMatch(/^3½ tbsp/);
    expect(there('78 g butter')).not.toMatch('½');
    expect(there('92 g butter')).not.toMatch('½');
  });

  test('and packs of a hundredth more than the usual ones are as good as those', () => {
    const food = foodOf({
      eu: soldAs([], { loose: true }),
      any: soldAs([
        { size: 400, whole: 'yes', usual: true },
        { size: 405, whole: 'yes' },
      ]),
    });
    expect(textsOf(worked({ lines: ['405 g gloop'], foods: [food] }))).toEqual(['1 × 405 g tin gloop']);
  });
});

test('a volume of what comes in whole packs stands in the way only where the dish needs it', () => {
  const foods = [foodOf({ eu: soldAs([], { loose: true }), any: soldAs(whole(400)) }, { densities: [] })];
  const because = (line: string) => worked({ lines: [line], foods }).infeasible?.because.map(({ kind }) => kind) ?? [];
  expect(because('250 ml gloop')).toEqual(['no-weight']);
  expect(because('250 ml gloop (optional)')).toEqual([]);
});
