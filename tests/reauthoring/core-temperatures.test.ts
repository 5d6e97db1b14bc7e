import { celsiusOf, coreFor, Exact, fahrenheitOf, isUnderdone, safeMinimum, versionFor } from '@retare/core';
import { safeClasses } from '@retare/larder';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from './recipe-in-post.js';
import { coreOf, mentionIn, rulesOfMention, versionOf } from './recipe-of.js';
import { kitchen, kitchenIds, setting } from './setting.js';

const unit = fc.constantFrom('C', 'F');
const id = fc.constantFrom(...kitchenIds);
const foodClass = fc.constantFrom(...safeClasses);
const tenths = fc.integer({ min: 300, max: 2500 }).map((value) => new Exact(value).dividedBy(10));

describe('a core temperature in any kitchen', () => {
  test('is never below what the author wrote', () => {
    fc.assert(
      fc.property(id, fc.option(foodClass), tenths, unit, (to, of, value, scale) => {
        const core = coreFor(value, scale, kitchen(to), of);
        expect(celsiusOf(core.value, core.unit).minus(celsiusOf(value, scale)).toNumber()).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 500 },
    );
  });

  test('is never below what the reader’s authority publishes', () => {
    fc.assert(
      fc.property(id, foodClass, tenths, unit, (to, of, value, scale) => {
        const core = coreFor(value, scale, kitchen(to), of);
        const minimum = safeMinimum(kitchen(to), of);
        if (minimum === null) throw new RangeError(`${to} has no minimum for ${of}.`);
        const spare = celsiusOf(core.value, core.unit).minus(celsiusOf(minimum.temperature, minimum.unit));
        expect(spare.toNumber()).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 500 },
    );
  });

  test('is a whole degree of the kitchen’s own scale, and the least that will do', () => {
    fc.assert(
      fc.property(id, foodClass, tenths, unit, (to, of, value, scale) => {
        const core = coreFor(value, scale, kitchen(to), of);
        const minimum = safeMinimum(kitchen(to), of);
        const inScale = core.unit === 'C' ? celsiusOf : fahrenheitOf;
        const needs = [inScale(value, scale), minimum && inScale(minimum.temperature, minimum.unit)];
        const isEnough = (degrees: Exact): boolean => needs.every((need) => need?.lessThanOrEqualTo(degrees) ?? true);
        expect([core.unit, core.value.isInteger()]).toEqual([kitchen(to).writes.temperature, true]);
        expect([isEnough(core.value), isEnough(core.value.minus(1))]).toEqual([true, false]);
      }),
      { numRuns: 500 },
    );
  });

  test('carries the hold of the kitchen’s minimum', () => {
    fc.assert(
      fc.property(id, foodClass, tenths, (to, of, value) => {
        expect(coreFor(value, 'C', kitchen(to), of).hold).toBe(safeMinimum(kitchen(to), of)?.hold);
      }),
    );
  });

  test('of no class keeps to the author’s value, rounded up, with no hold', () => {
    expect(coreFor(new Exact(145), 'F', kitchen('uk'), null)).toMatchObject({ hold: '', minimum: null });
  });
});

const usda = 'US FoodSafety.gov and USDA FSIS chart, 2019';
const worked = [
  {
    from: 'us',
    text: '165°F',
    of: 'poultry',
    to: 'uk',
    becomes: '74°C',
    hold: 'hold 2 min',
    by: '73.9 °C, rounded up',
  },
  {
    from: 'us',
    text: '160°F',
    of: 'ground-meat',
    to: 'uk',
    becomes: '72°C',
    hold: 'hold 2 min',
    by: '71.1 °C: 71 would be under',
  },
  {
    from: 'us',
    text: '160°F',
    of: 'ground-meat',
    to: 'ca',
    becomes: '72°C',
    hold: '',
    by: '71.1 °C, above Health Canada’s 71',
  },
  {
    from: 'us',
    text: '145°F',
    of: 'fish',
    to: 'uk',
    becomes: '70°C',
    hold: 'hold 2 min',
    by: 'UK Food Standards Agency: 70 °C for 2 min',
  },
  {
    from: 'us',
    text: '145°F',
    of: 'whole-meat',
    to: 'au',
    becomes: '63°C',
    hold: 'rest 5 min',
    by: 'Food Safety Information Council',
  },
  {
    from: 'us',
    text: '165°F',
    of: 'poultry',
    to: 'ca',
    becomes: '82°C',
    hold: '',
    by: 'Government of Canada, whole poultry',
  },
  { from: 'uk', text: '70 °C', of: 'poultry', to: 'us', becomes: '165°F', hold: '', by: usda },
  { from: 'uk', text: '75 °C', of: 'poultry', to: 'us', becomes: '167°F', hold: '', by: '167 °F exactly, above 165' },
  {
    from: 'uk',
    text: '71 °C',
    of: 'whole-meat',
    to: 'us',
    becomes: '160°F',
    hold: 'rest 3 min',
    by: '159.8 °F, rounded up',
  },
  {
    from: 'us',
    text: '160–165°F',
    of: 'egg-dish',
    to: 'eu',
    becomes: '72–74°C',
    hold: 'hold 2 min',
    by: 'both ends rounded up',
  },
  {
    from: 'us',
    text: '145–150°F',
    of: 'fish',
    to: 'uk',
    becomes: '70°C',
    hold: 'hold 2 min',
    by: 'both ends below 70 °C',
  },
  { from: 'us', text: '203°F', of: null, to: 'uk', becomes: '95°C', hold: '', by: '95 °C exactly' },
  { from: 'us', text: '190°F', of: null, to: 'uk', becomes: '88°C', hold: '', by: '87.8 °C, rounded up' },
] as const;

test.for(worked)('$text for $of from $from reads $becomes in $to: $by', ({ from, text, of, to, becomes, hold }) => {
  const mention = mentionIn(coreOf(text, of), from, to);
  expect([mention.text, mention.hold]).toEqual([becomes, hold]);
});

describe('the words of a core temperature', () => {
  // 165 °F are 73.9 °C; 75 °C is the Australian figure for poultry.
  test.for([
    { text: 'at least 165°F in the thigh', to: 'uk', becomes: 'at least 74°C in the thigh' },
    { text: '165°F (74°C)', to: 'uk', becomes: '74°C' },
    { text: '165°F (75°C)', to: 'uk', becomes: '75°C' },
    { text: '160°F/75°C', to: 'uk', becomes: '75°C' },
    { text: '165°F breast, 175°F thigh', to: 'uk', becomes: '74°C breast, 80°C thigh' },
    { text: '165°F breast, 175°F thigh', to: 'au', becomes: '75°C breast, 80°C thigh' },
    { text: '75–80°C (167–176°F)', to: 'us', becomes: '167–176°F' },
    { text: '165–170°F (74–75°C)', to: 'eu', becomes: '74–77°C' },
    { text: '165–168°F (74–77°C)', to: 'uk', becomes: '74–77°C' },
  ])('are kept, and of two statements the higher counts: $text reads $becomes in $to', ({ text, to, becomes }) => {
    const from = to === 'us' ? 'uk' : 'us';
    expect(mentionIn(coreOf(text, 'poultry'), from, to).text).toBe(becomes);
  });
});

describe('underdone', () => {
  // 165 °F is 73.89 °C (USDA FSIS, poultry); the border in Celsius is 74, as the authority prints whole degrees upward.
  test.for([
    { in: 'us', text: '164°F', of: 'poultry', underdone: true },
    { in: 'us', text: '165°F', of: 'poultry', underdone: false },
    { in: 'us', text: '73 °C', of: 'poultry', underdone: true },
    { in: 'us', text: '73.8 °C', of: 'poultry', underdone: true },
    { in: 'us', text: '73.9 °C', of: 'poultry', underdone: false },
    { in: 'us', text: '74 °C', of: 'poultry', underdone: false },
    { in: 'us', text: '71 °C', of: 'ground-meat', underdone: true },
    { in: 'us', text: '72 °C', of: 'ground-meat', underdone: false },
    { in: 'uk', text: '69 °C', of: 'sausage', underdone: true },
    { in: 'uk', text: '70 °C', of: 'sausage', underdone: false },
    { in: 'us', text: '150–170°F', of: 'poultry', underdone: true },
    { in: 'us', text: '120°F', of: null, underdone: false },
  ] as const)('$text for $of in a $in kitchen: $underdone', ({ in: native, text, of, underdone }) => {
    expect(rulesOfMention(mentionIn(coreOf(text, of), native, native))).toEqual(underdone ? ['underdone'] : []);
  });

  test('is never lifted in silence: the native text stays, and what to write is named', () => {
    const { text, problems } = mentionIn(coreOf('160°F', 'poultry'), 'us', 'us');
    expect([text, problems[0]?.problem]).toMatchObject(['160°F', { rule: 'underdone', write: '165°F' }]);
  });

  test('is found in every version, while the reader gets a safe value', () => {
    const mention = mentionIn(coreOf('150°F', 'poultry'), 'us', 'uk');
    expect([mention.text, rulesOfMention(mention)]).toEqual(['70°C', ['underdone']]);
  });

  test('holds for any value: found if and only if it is below the minimum', () => {
    fc.assert(
      fc.property(id, foodClass, tenths, unit, (to, of, value, scale) => {
        const minimum = safeMinimum(kitchen(to), of);
        if (minimum === null) throw new RangeError(`${to} has no minimum for ${of}.`);
        const isBelow = celsiusOf(value, scale).lessThan(celsiusOf(minimum.temperature, minimum.unit));
        expect(isUnderdone(value, scale, minimum)).toBe(isBelow);
      }),
    );
  });
});

test.for(kitchenIds)('a version of the %s kitchen with a core temperature names its authority', (to) => {
  const mentions = [coreOf('165°F', 'poultry')];
  const { cautions } = versionOf({ kitchen: 'us', lines: ['1 egg'], mentions }, to);
  expect(cautions).toEqual([{ kind: 'core-temperature', authority: kitchen(to).safe[0]?.authority }]);
});

// Government of Canada: whole poultry 82 °C, pieces 74 °C. USDA FSIS: ground meat 160 °F, whole cuts 145 °F.
test.for([
  { line: '1 whole chicken (4 lb)', of: 'chicken', text: '165°F', to: 'ca', here: '82°C' },
  { line: '6 chicken thighs', of: 'chicken', text: '165°F', to: 'ca', here: '74°C' },
  { line: '1 lb ground lamb', of: 'lamb', text: '160°F', to: 'au', here: '75°C' },
])('$text of $of is that of $line in $to', ({ line, of, text, to, here }) => {
  const post = `:::ingredients{kitchen=us}\n- ${line}\n:::\n\n:::method\nCook to :core[${text}]{of=${of}}.\n:::\n`;
  expect(versionFor(recipeInPost(post), to, setting).steps[0]?.mentions[0]?.text).toBe(here);
});
