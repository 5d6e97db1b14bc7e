import { gramsIn, isMassUnit, isRefusal, reauthor, type Version, versionFor } from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeOf, textOf } from './recipe-of.js';
import { foodOf, soldAs } from './sample-food.js';
import { kitchenIds, setting } from './setting.js';

const cure = '2.5 g pink curing salt #1';

/** How far the lines are from what was written, in a converted and a re-authored version. */
function driftsOf(lines: readonly string[], from: string, to: string): number[] {
  const recipe = recipeOf({ kitchen: from, lines: [...lines, cure] });
  const result = reauthor(recipe, to, setting);
  const versions: Version[] = [versionFor(recipe, to, setting)];
  if (!isRefusal(result) && result.infeasible === null) versions.push(result.version);
  const all = versions.flatMap(({ parts }) => parts.flatMap((part) => part.lines));
  const cured = all.filter(({ line }) => line.food?.role !== 'sugar');
  return cured.flatMap(({ drift }) => drift?.toNumber() ?? []);
}

// The dose of nitrite is by the weight of the meat (common practice, from memory): less meat for as much cure is more of it in the meat.
describe('beside a cure', () => {
  test('no weight or volume of meat, brine and salt is rounded down, in any kitchen', () => {
    const tens = fc.integer({ min: 20, max: 300 });
    fc.assert(
      fc.property(tens, tens, fc.constantFrom(...kitchenIds), (meat, water, to) => {
        const from = to === 'eu' ? 'uk' : 'eu';
        const lines = [`${meat * 10} g pork loin`, `${water * 10} ml water`, '40 g table salt', '15 g caster sugar'];
        const drifts = driftsOf(lines, from, to);
        // Of the meat, the water and the salt, converted and re-authored.
        expect(drifts.length).toBe(6);
        for (const drift of drifts) expect(drift).toBeGreaterThan(-1e-9);
      }),
      { numRuns: 60 },
    );
  });

  test.for([
    ['eu', '620 g pork loin', 'us', '1½ lb pork loin'],
    ['us', '5 lb pork loin', 'uk', '2.3 kg pork loin'],
  ] as const)('%s %s is in %s %s, and without one the nearest', ([from, line, to, becomes]) => {
    const version = versionFor(recipeOf({ kitchen: from, lines: [line, cure] }), to, setting);
    expect(version.parts[0]?.lines.map(textOf)[0]).toBe(becomes);
    const without = versionFor(recipeOf({ kitchen: from, lines: [line] }), to, setting);
    expect(without.parts[0]?.lines.map(textOf)[0]).not.toBe(becomes);
  });

  test.for([
    ['eu', '600 g pork loin', 'uk'],
    ['eu', '1 kg pork loin', 'au'],
  ] as const)('%s %s is what %s weighs too, and no more', ([from, line, to]) => {
    const version = versionFor(recipeOf({ kitchen: from, lines: [line, cure] }), to, setting);
    expect(version.parts[0]?.lines.map(textOf)[0]).toBe(line);
  });

  test.for(kitchenIds.filter((id) => id !== 'eu'))('a range stays as it is written in %s', (to) => {
    const line = '615–735 g pork loin';
    const version = versionFor(recipeOf({ kitchen: 'eu', lines: [line, cure] }), to, setting);
    expect(version.parts[0]?.lines.map(textOf)[0]).toBe(line);
  });

  test('whole packs hold as much as is written, and no pack that is a little smaller takes its place', () => {
    const packs = (size: number) => soldAs([{ size, word: 'pack', whole: 'yes' }]);
    const gloop = foodOf({ eu: packs(430), uk: packs(400), ca: packs(450) }, { coreClass: 'pork' });
    const foods = new Map([...setting.foods, [gloop.id, gloop]]);
    const within = { ...setting, foods };
    const linesIn = (to: string, lines: readonly string[]) =>
      versionFor(recipeOf({ kitchen: 'eu', lines }, within), to, within).parts[0]?.lines ?? [];
    const line = '1 (430 g) pack gloop';
    expect(linesIn('uk', [line, cure])[0]?.drift?.toNumber()).toBeGreaterThanOrEqual(0);
    expect(linesIn('uk', [line]).map(textOf)).toEqual(['1 × 400 g pack gloop']);
    expect(linesIn('ca', [line, cure]).map(textOf)[0]).toBe('1 (450-g) pack gloop');
  });

  test('what whole packs come nowhere near is weighed, and rounded up too, in any kitchen', () => {
    const packs = (size: number) => soldAs([{ size, word: 'pack', whole: 'yes' }]);
    const gloop = foodOf({ any: packs(400) }, { coreClass: 'pork' });
    const within = { ...setting, foods: new Map([...setting.foods, [gloop.id, gloop]]) };
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 9000 }), fc.constantFrom(...kitchenIds), (halves, to) => {
        const from = to === 'eu' ? 'uk' : 'eu';
        const recipe = recipeOf({ kitchen: from, lines: [`${halves / 2} g gloop`, cure] }, within);
        const [line] = versionFor(recipe, to, within).parts[0]?.lines ?? [];
        expect(line?.drift?.toNumber()).toBeGreaterThan(-1e-9);
      }),
    );
  });

  // 18 g a tablespoon of table salt; a US spoon is 1.4 % smaller than a Canadian one; 1.1 kg are 38.8 oz.
  test.for([
    ['uk', '1.1 kg conger loin', 'us', '39 oz conger loin', 'what no tool measures is not less either'],
    ['uk', '45 g table salt', 'us', '2½ tbsp table salt', 'a division’s last digit is no reason for a fifth more'],
    ['us', '3 (13-oz) packs pork sausages', 'uk', '1.15 kg pork sausages', 'no packs come near, and 1.1 kg are less'],
  ] as const)('%s %s is in %s %s: %s', ([from, line, to, becomes]) => {
    const version = versionFor(recipeOf({ kitchen: from, lines: [line, cure] }), to, setting);
    expect(version.parts[0]?.lines.map(textOf)[0]).toBe(becomes);
  });

  test('a heaped spoon is no smaller one', () => {
    const lineIn = (...lines: string[]) =>
      versionFor(recipeOf({ kitchen: 'ca', lines }), 'us', setting).parts[0]?.lines.map(textOf)[0];
    expect(lineIn('1 heaped tbsp table salt')).toBe('1 heaped tbsp table salt');
    // Two tablespoons are 30 ml in Canada and 29.6 here: a teaspoon more is the least that is no less.
    expect(lineIn('1 heaped tbsp table salt', cure)).toBe('2 tbsp + 1 tsp table salt');
  });

  test.for(kitchenIds.filter((id) => id !== 'us'))('no range begins lower, in %s', (to) => {
    const result = reauthoredOf(recipeOf({ kitchen: 'us', lines: ['4 to 5 lb pork belly', cure] }), to, setting);
    const [term] = result.version.parts[0]?.lines[0]?.stated?.statements[0] ?? [];
    const grams = term === undefined || !isMassUnit(term.unit) ? null : term.low.times(gramsIn(term.unit));
    expect(grams?.toNumber()).toBeGreaterThanOrEqual(4 * 453.59237 - 1e-9);
  });

  test('an anchor comes in no smaller packs: there is no version, and its packs are why', () => {
    const recipe = recipeOf({ kitchen: 'us', lines: ['1 (16-oz) pack pork sausages', cure] });
    const result = reauthoredOf(recipe, 'ca', setting, { anchor: 'pork sausages' });
    // A pound is 453.6 g, and Canadian packs hold 375 g: one is too little, and two are another dish.
    expect(result.infeasible?.because).toMatchObject([{ kind: 'no-amount', isAnchor: true, batchFactor: 1 }]);
  });
});
