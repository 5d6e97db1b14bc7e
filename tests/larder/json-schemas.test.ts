import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { jsonSchemas } from '../../packages/larder/src/schema/json-schemas.js';
import { fitsSchema } from './fits-schema.ts';
import { sampleFoods } from './sample-foods.js';

const folder = new URL('../../packages/larder/', import.meta.url);
const schemas = jsonSchemas();
const fits = (name: string, value: unknown) => fitsSchema(schemas[`${name}.schema.json`] ?? { type: 'none' }, value);
const yamlIn = (name: string) =>
  readdirSync(new URL(`${name}/`, folder)).map((file) => ({
    file,
    value: parse(readFileSync(new URL(`${name}/${file}`, folder), 'utf8')) as Record<string, unknown>,
  }));

describe('the JSON Schemas for editors', () => {
  test('are written as they are made', () => {
    const written = Object.keys(schemas).map((name) => [
      name,
      JSON.parse(readFileSync(new URL(`dist/${name}`, folder), 'utf8')),
    ]);
    expect(Object.fromEntries(written)).toEqual(JSON.parse(JSON.stringify(schemas)));
  });

  test.for(yamlIn('foods'))('take foods/$file', ({ value }) => {
    expect(fits('foods', value)).toBe(true);
  });

  test.for(yamlIn('kitchens'))('take kitchens/$file', ({ value }) => {
    expect(fits('kitchen', value)).toBe(true);
  });

  test('take the files that the README shows', () => {
    const readme = readFileSync(new URL('README.md', folder), 'utf8');
    const [settings = '', site = ''] = readme
      .split('```')
      .flatMap((text) => (text.startsWith('yaml\n') ? [text.slice(5)] : []));
    expect([fits('retare', parse(settings)), fits('larder', parse(site))]).toEqual([true, true]);
  });

  const mistakes = [
    { written: 'role: flour', instead: 'role: flower' },
    { written: 'grams: 125', instead: 'grams: -125' },
    { written: 'grams: 125', instead: 'grams: heavy' },
    { written: 'per: cup', instead: 'per: glass' },
    { written: 'size: 1 kg', instead: 'size: 1 kilo' },
    { written: '  pours: true', instead: '  pour: true' },
    { written: 'share: 1/2', instead: 'share: 50%' },
    { written: "source: 'USDA SR26 20081, cup'", instead: 'form: sifted' },
  ] as const;

  test.for(mistakes)('refuse `$instead`', ({ written, instead }) => {
    expect(fits('foods', parse(sampleFoods))).toBe(true);
    expect(fits('foods', parse(sampleFoods.replace(written, instead)))).toBe(false);
  });

  test('ask a kitchen for every block, unless it extends another', () => {
    const kitchen = { name: 'Cabin', adjective: 'cabin' };
    expect([fits('kitchen', kitchen), fits('kitchen', { extends: 'us', ...kitchen })]).toEqual([false, true]);
  });

  test.for([{ tolerance: 5 }, { kitchens: [] }, { colour: 'red' }, { severity: { unbuyable: 'fatal' } }])(
    'refuse the settings %j',
    (settings) => {
      expect(fits('retare', settings)).toBe(false);
    },
  );
});
