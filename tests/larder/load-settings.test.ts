import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { builtInLarder, defaultSettings, loadSettings } from '@retare/larder';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';

let root = '';
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'retare-'));
});
afterEach(() => {
  rmSync(root, { recursive: true });
});

/** Loads a site of these files. */
function load(files: Record<string, string>) {
  for (const [name, text] of Object.entries(files)) writeFileSync(join(root, name), text);
  return loadSettings(root);
}

const found = (files: Record<string, string>) =>
  load(files).problems.map(({ path, line, column, message }) => `${path}:${line}:${column} ${message}`);
const cabin = 'kitchens: { cabin: { extends: us, name: Cabin } }\n';

describe('loading settings', () => {
  test('gives the defaults where there is no file', () => {
    expect(load({})).toMatchObject({ settings: defaultSettings, problems: [] });
    expect(loadSettings(root).larder).toBe(builtInLarder());
  });

  test('says so where the file is there but cannot be read', () => {
    mkdirSync(join(root, 'retare.yaml'));
    expect(loadSettings(root).problems.map(({ message }) => message)).toEqual([
      '`retare.yaml` is there but cannot be read. Make it a file that this user may read',
    ]);
  });

  test("takes a kitchen of the site's own", () => {
    const { settings, larder, problems } = load({
      'retare.yaml': 'larder: larder.yaml\nkitchens: [us, cabin]\n',
      'larder.yaml': cabin,
    });
    expect(problems).toEqual([]);
    expect(settings.kitchens).toEqual(['us', 'cabin']);
    expect(larder.kitchens.get('cabin')?.name).toBe('Cabin');
  });

  test('says of an unknown kitchen that there is none, among those of the site', () => {
    expect(found({ 'retare.yaml': 'larder: larder.yaml\nkitchen: cabbin\n', 'larder.yaml': cabin })).toEqual([
      'retare.yaml:2:10 There is no kitchen `cabbin`. Use `us`, `ca`, `uk`, `eu`, `au`, `nz`, `us-scale`, `cabin`, or one from your larder file',
    ]);
  });

  test('says where a missing larder file was named', () => {
    expect(found({ 'retare.yaml': 'kitchen: uk\nlarder: data/larder.yaml\n' })).toEqual([
      'retare.yaml:2:9 There is no larder file `data/larder.yaml`. Write its path from the folder of `retare.yaml`',
    ]);
  });

  test('names the larder file in its problems, and does not blame the settings for them', () => {
    expect(
      found({
        'retare.yaml': 'larder: larder.yaml\nkitchens: [us, cabin]\n',
        'larder.yaml': cabin.replace('us', 'usa'),
      }),
    ).toEqual([
      'larder.yaml:1:31 There is no kitchen `usa`. Use `us`, `ca`, `uk`, `eu`, `au`, `nz`, `us-scale`, or one from your larder file',
    ]);
  });

  test("hands on the site's larder file as plain data", () => {
    const files = { 'retare.yaml': 'larder: larder.yaml\n', 'larder.yaml': cabin };
    expect(load(files).siteLarder).toEqual({ kitchens: { cabin: { extends: 'us', name: 'Cabin' } } });
  });

  test('goes on with the built-in larder where the own one has problems', () => {
    expect(load({ 'retare.yaml': 'larder: larder.yaml\n', 'larder.yaml': 'foods: [a]' }).larder).toBe(builtInLarder());
  });

  test('gives a digest that changes with the settings and with the larder', () => {
    const settings = 'larder: larder.yaml\n';
    const digests = [
      load({ 'retare.yaml': settings, 'larder.yaml': cabin }).digest,
      load({ 'retare.yaml': `${settings}tolerance: 0.1\n`, 'larder.yaml': cabin }).digest,
      load({ 'retare.yaml': settings, 'larder.yaml': cabin.replace('Cabin', 'Hut') }).digest,
    ];
    expect(new Set(digests).size).toBe(3);
  });

  test('gives the same digest twice', () => {
    expect(load({ 'retare.yaml': 'kitchen: uk\n' }).digest).toBe(loadSettings(root).digest);
  });
});
