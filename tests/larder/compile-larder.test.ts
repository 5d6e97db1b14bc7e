import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Compilation, compileLarder } from '../../packages/larder/src/compile/compile-larder.js';
import { sampleFoods } from './sample-foods.js';

const kitchenFiles = ['us', 'uk'].map((id) => ({
  path: `kitchens/${id}.yaml`,
  text: readFileSync(new URL(`../../packages/larder/kitchens/${id}.yaml`, import.meta.url), 'utf8'),
}));
const compiled = (foods: string, kitchens = kitchenFiles): Compilation =>
  compileLarder(kitchens, [{ path: 'foods/sample.yaml', text: foods }]);
const found = (foods: string) =>
  compiled(foods).problems.map(({ path, line, column, message }) => `${path}:${line}:${column} ${message}`);

describe('compiling the data files', () => {
  test('gives foods and kitchens by id', () => {
    const { data, problems } = compiled(sampleFoods);
    expect(problems).toEqual([]);
    expect(Object.keys(data.foods ?? {})).toEqual(['double-cream', 'plain-flour', 'tart']);
    expect(Object.keys(data.kitchens ?? {})).toEqual(['us', 'uk']);
  });

  test('refuses a key that it does not know, at its place', () => {
    expect(found(sampleFoods.replace('  pours: true', '  pour: true'))).toEqual([
      'foods/sample.yaml:14:3 `pour` is no key here. Write `pours`',
    ]);
  });

  const mistakes = [
    {
      written: 'role: flour',
      instead: 'role: flower',
      says: '6:9 `role` takes `flour`, `liquid`, `fat`, `sugar`, `egg`, `leavening`, `salt`, `gelling`, `cure`, `acid`, `bulk` or `seasoning`, not `flower`. Write `flour`',
    },
    {
      written: 'grams: 125',
      instead: 'grams: -125',
      says: '7:24 `grams` takes a number above 0, such as `14.175` or `1/3`, not `-125`',
    },
    {
      written: 'per: cup, source',
      instead: 'per: glass, source',
      says: '7:34 `per` takes `ml`, `tsp`, `tbsp`, `cup`, `floz`, `pint`, `quart` or `gallon`, not `glass`',
    },
    {
      written: 'size: 1 kg',
      instead: 'size: 1 kilo',
      says: '10:34 `size` takes a number and a unit, such as `400 g`, `15 oz`, `1 l` or `12 count`, not `1 kilo`',
    },
    {
      written: 'food: plain-flour',
      instead: 'food: wholemeal-flour',
      says: '26:22 There is no food `wholemeal-flour` in the larder. Add it, or name another',
    },
    {
      written: 'size: 1 kg, word: bag',
      instead: 'size: 12 count, word: bag',
      says: '10:34 The weight of a pack of `12 count` is not known. Write `grams`, the net weight',
    },
    {
      written: '{ size: 150 ml',
      instead: '{ size: 450 ml',
      says: '20:68 `packs` takes the smallest first: `300 ml` is smaller than the one before',
    },
    {
      written: 'singly: true, ',
      instead: '',
      says: '27:16 This says neither how the food is sold nor that it is not. Write `packs`, `loose`, `singly`, `tap` or `not-sold`',
    },
    {
      written: '{ size: 150 ml, word: pot, whole: no }, { size: 300 ml, word: pot, whole: no }',
      instead:
        '{ size: 150 ml, word: pot, whole: no, usual: true }, { size: 300 ml, word: tub, whole: no, usual: true }',
      says: '20:118 `packs` has two usual sizes of a tub. Keep one',
    },
    {
      written: 'share: 1/2',
      instead: 'share: 50%',
      says: '26:42 `share` takes a fraction from 0 to 1, not `50%`. Write `0.5`',
    },
    { written: 'id: tart', instead: 'id: double-cream', says: '21:7 There are two foods `double-cream`. Keep one' },
    {
      written: 'us: [all-purpose flour]',
      instead: 'fr: [farine]',
      says: '5:9 There is no kitchen `fr`. Use `us`, `uk`, or one from your larder file',
    },
  ] as const;

  test.for(mistakes)('says of `$instead`: $says', ({ written, instead, says }) => {
    expect(found(sampleFoods.replace(written, instead))).toEqual([`foods/sample.yaml:${says}`]);
  });

  test('asks for the source of a value', () => {
    const [problem] = compiled(sampleFoods.replace(", source: 'USDA SR26 20081, cup'", '')).problems;
    expect(problem).toMatchObject({ line: 7, key: '0.densities.0.source' });
    expect(problem?.message).toMatch(/^`source` is missing/);
  });

  test('places a mistake of YAML itself', () => {
    expect(found('- id: [tart\n- id: x\n')[0]).toMatch(/^foods\/sample\.yaml:\d+:\d+ This cannot be read as YAML: /);
  });

  test('takes a kitchen that extends another', () => {
    const text = 'extends: us\nname: Cabin\nscale: none\nfill: { as: heaped, source: from memory }\n';
    const { data, problems } = compiled(sampleFoods, [...kitchenFiles, { path: 'kitchens/cabin.yaml', text }]);
    expect(problems).toEqual([]);
    expect(data.kitchens?.cabin).toMatchObject({ extends: 'us', name: 'Cabin' });
  });

  test('refuses a kitchen that lacks a block and extends none', () => {
    const text = kitchenFiles[0]?.text.replace('scale: none\n', '') ?? '';
    const { problems } = compiled(sampleFoods, [{ path: 'kitchens/us.yaml', text }]);
    expect(problems.map(({ message }) => message)).toEqual(['`scale` is missing: it takes `none` or a block of keys']);
  });

  test('does not depend on the order of the files', () => {
    const files = [
      { path: 'a.yaml', text: sampleFoods.slice(0, sampleFoods.indexOf('- id: tart')) },
      { path: 'b.yaml', text: sampleFoods.slice(sampleFoods.indexOf('- id: tart')) },
    ];
    const [one, other] = [
      compileLarder(kitchenFiles, files),
      compileLarder(kitchenFiles.toReversed(), files.toReversed()),
    ];
    expect(JSON.stringify(one.data)).toBe(JSON.stringify(other.data));
  });
});
