import { readFileSync } from 'node:fs';
import { defaultWeights } from '@retare/core';
import * as larder from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { jsonSchemas } from '../../packages/larder/src/schema/json-schemas.js';

const readme = readFileSync(new URL('../../packages/larder/README.md', import.meta.url), 'utf8');

/** The code blocks of the README in one language. */
const blocks = (language: string): string[] =>
  readme.split('```').flatMap((text) => (text.startsWith(`${language}\n`) ? [text.slice(language.length + 1)] : []));

describe('the README', () => {
  test('shows the default settings', () => {
    expect(larder.readSettings(blocks('yaml')[0] ?? '', 'retare.yaml')).toEqual({
      settings: larder.defaultSettings,
      problems: [],
    });
  });

  test('of the core names every weight and limit with its default', () => {
    const core = readFileSync(new URL('../../packages/core/README.md', import.meta.url), 'utf8');
    const rows = [...core.matchAll(/^\| (`\w+`(?:, `\w+`)*) \| ([\d., ]+) \|/gmu)].flatMap(
      ([, names = '', values = '']) =>
        names.split(', ').map((name, at) => [name.slice(1, -1), Number(values.split(', ')[at])]),
    );
    const { limits, ...weights } = defaultWeights;
    // `salt` and `seasoning` are the names of a weight and of a limit.
    const sorted = (pairs: (readonly [string, number] | (string | number)[])[]) => pairs.map(String).toSorted();
    expect(sorted(rows)).toEqual(sorted([...Object.entries(weights), ...Object.entries(limits)]));
  });

  test("shows a site's larder file that can be read", () => {
    const { data, problems } = larder.readSiteLarder(blocks('yaml')[1] ?? '', 'larder.yaml');
    expect(problems).toEqual([]);
    const { foods, kitchens } = larder.extendLarder(larder.builtInLarder(), data ?? {});
    expect([foods.has('sea-beet'), kitchens.get('cabin')?.scale?.unit]).toEqual([true, 'g']);
  });

  test('shows the kitchen of a US cook with a scale as its file has it', () => {
    const file = readFileSync(new URL('../../packages/larder/kitchens/us-scale.yaml', import.meta.url), 'utf8');
    expect(blocks('yaml')[2]).toBe(file);
  });

  test('shows the butter of New Zealand as the food has it', () => {
    const [, shown = ''] = (blocks('yaml')[3] ?? '').split('\n');
    const file = readFileSync(new URL('../../packages/larder/foods/fat-and-oil.yaml', import.meta.url), 'utf8');
    expect(file).toContain(`\n    ${shown}\n`);
  });

  test('names only JSON Schemas that there are', () => {
    const named = [...readme.matchAll(/\b([a-z]+\.schema\.json)/g)].map(([, name = '']) => name);
    expect([...new Set(named)].toSorted()).toEqual(Object.keys(jsonSchemas()).toSorted());
  });

  test('shows code that gives what it says', () => {
    const [code = ''] = blocks('js');
    // Each line that ends in a comment is an expression, the comment its value.
    const run = code
      .replace(/^import .*$/m, '')
      .replace(/^(\S.*); \/\/ ('.*'|\[.*\])$/gm, 'seen.push([$1, $2]);')
      .replace(/^(read.*);\n\/\/ (.*)$/gm, 'seen.push([$1, $2]);');
    const seen: [unknown, unknown][] = [];
    new Function(...Object.keys(larder), 'seen', run)(...Object.values(larder), seen);
    expect(seen).toHaveLength(4);
    for (const [value, said] of seen) expect(value).toEqual(said);
  });

  test('names every export', () => {
    const unnamed = Object.keys(larder).filter((name) => !readme.includes(`\`${name}`));
    expect(unnamed).toEqual([]);
  });
});
