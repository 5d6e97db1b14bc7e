import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from '../reauthoring/recipe-in-post.js';
import { runOn, testFolder } from './draft-command.js';

const folder = testFolder();
const posts = new URL('../../site-example/src/content/posts/', import.meta.url);

async function versionsOf(post: string, ...args: readonly string[]) {
  const { code, out } = await runOn(folder, post, ['draft', ...args, '--format', 'json']);
  return { code, files: JSON.parse(out) };
}

const decimal = /^-?\d+(?:\.\d{1,6})?$/u;

const stew = `:::ingredients[For the pot]{kitchen=us anchor="butter beans"}
- 2 (15-oz) cans butter beans
- 1 cup heavy cream
- 1 tsp table salt
- parsley, to serve
:::

:::method
Heat to :oven[400°F], and bake in a :pan[8×8 in] until :core[165°F]{of=casserole}.
:::
`;

describe('retare draft --format json', () => {
  test('gives the file and its versions', async () => {
    const { files } = await versionsOf(stew, '--for', 'uk,au');
    expect(files).toHaveLength(1);
    expect(files[0].file).toBe('post.md');
    expect(files[0].versions.map(({ kitchen }: { kitchen: string }) => kitchen)).toEqual(['uk', 'au']);
    expect(Object.keys(files[0].versions[0])).toEqual(
      'kitchen standing anchor batchFactor makes lines ratios pans ovens cores cost runnerUp infeasible'.split(' '),
    );
  });

  test('gives each line from native over exact to chosen', async () => {
    const { files } = await versionsOf(stew, '--for', 'uk');
    const [beans, cream, , parsley] = files[0].versions[0].lines;
    expect(beans).toEqual({
      line: 2,
      part: 'For the pot',
      food: 'butter beans',
      native: '2 (15-oz) cans',
      exact: '800 g',
      chosen: {
        text: '2 × 400 g tins',
        low: '2',
        high: null,
        unit: 'count',
        grams: '800',
        millilitres: expect.stringMatching(decimal),
        count: '2',
        packs: [{ count: '2', size: '400', unit: 'g', word: 'tin' }],
      },
      becomes: '2 × 400 g tins butter beans',
      drift: '0',
      measurable: true,
      buyable: true,
      buy: { packs: [{ count: '2', size: '400', unit: 'g', word: 'tin' }], looseGrams: null },
      leftover: { grams: '0', days: expect.stringMatching(/^\d+$/u) },
    });
    expect(cream.chosen).toMatchObject({ unit: 'ml', count: null, packs: [] });
    expect(cream.exact).toMatch(/^\d+(?:\.\d)? ml$/u);
    for (const number of [cream.drift, cream.chosen.low, cream.chosen.grams, cream.leftover.grams])
      expect(number).toMatch(decimal);
    expect(parsley).toMatchObject({ native: null, exact: null, chosen: null, becomes: 'parsley, to serve' });
  });

  test('adds up an amount of two tools in the unit of the first', async () => {
    const { files } = await versionsOf(':::ingredients{kitchen=uk}\n- 265 ml milk\n:::\n', '--for', 'us');
    const [{ chosen }] = files[0].versions[0].lines;
    expect(chosen).toMatchObject({ text: '1 cup + 2 tbsp', low: '1.125', unit: 'cup' });
  });

  test('gives ratios, pans, ovens, cores, cost and runner-up', async () => {
    const [version] = (await versionsOf(stew, '--for', 'uk')).files[0].versions;
    for (const { native, version: here, limit } of version.ratios)
      for (const number of [native, here, limit]) expect(number).toMatch(decimal);
    expect(version.ratios[0]).toMatchObject({ name: 'salt : whole', part: 'For the pot' });
    expect(version.pans).toMatchObject([{ native: '8×8 in', version: '20 × 20 cm', count: '1' }]);
    expect(version.ovens).toEqual([{ native: '400°F', version: '200°C/180°C fan/gas 6' }]);
    expect(version.cores).toEqual([{ native: '165°F', version: '74°C', of: 'casserole', hold: 'hold 2 min' }]);
    expect(version.cost).toMatch(decimal);
    expect(version.runnerUp.cost).toMatch(decimal);
    expect(version.infeasible).toBeNull();
  });

  test('tells of an infeasible version what stands in the way, and its nearest lines', async () => {
    const post = ':::ingredients{kitchen=us}\n- 2 cups milk\n- 1 (¼-oz) envelope unflavored gelatin\n:::\n';
    const { code, files } = await versionsOf(post, '--for', 'uk');
    const [version] = files[0].versions;
    expect(code).toBe(1);
    expect(version.infeasible.because.length).toBeGreaterThan(0);
    expect(version.infeasible.leastChange.limit).toMatch(decimal);
    expect(version.lines.map(({ becomes }: { becomes: string }) => becomes)).toHaveLength(2);
  });

  test('has no versions for a preserve', async () => {
    const { code, files } = await versionsOf(`---\nretare:\n  preserve: true\n---\n\n${stew}`, '--for', 'uk');
    expect([code, files]).toEqual([1, [{ file: 'post.md', versions: [] }]]);
  });
});

/** Every post of the example site but the preserve, without the versions that it has. */
const rows = readdirSync(posts)
  .filter((name) => name.endsWith('.md'))
  .map((name) => ({ name, text: readFileSync(new URL(name, posts), 'utf8') }))
  .filter(({ text }) => !text.includes('preserve: true'))
  .map(({ name, text }) => ({ name, text: withoutVersions(text) }));

function withoutVersions(text: string): string {
  const { kitchen } = recipeInPost(text);
  return text.replace(/:::\w+[^\n]*kitchen=(\w+)[\s\S]*?\n:::\n/gu, (block, id) => (id === kitchen ? block : ''));
}

describe('what is drafted for the example posts', () => {
  test.for(rows)('reads back as it was chosen, and passes the check: $name', { timeout: 60_000 }, async ({ text }) => {
    const own = recipeInPost(text).kitchen;
    for (const kitchen of ['us', 'ca', 'uk', 'eu', 'au'].filter((id) => id !== own)) {
      const { files } = await versionsOf(text, '--for', kitchen);
      const [version] = files[0].versions;
      const { code, after, err } = await runOn(folder, text, ['draft', '--for', kitchen, '--write']);
      expect([code, err]).toEqual([0, `Wrote the version for \`${kitchen}\` into post.md.\n`]);
      const lines = recipeInPost(after).parts.flatMap(
        ({ authored }) => authored.find((each) => each.kitchen === kitchen)?.lines ?? [],
      );
      const becomes = version.lines.flatMap((line: { becomes: string | null }) => line.becomes ?? []);
      expect(lines.map((line) => line.text)).toEqual(becomes);
      const checked = await runOn(folder, after, ['check', '--kitchen', kitchen, '--format', 'json']);
      const about = JSON.parse(checked.out).filter(
        ({ severity, rule }: { severity: string; rule: string }) =>
          ['stale-version', 'ratio-drift', 'missing-from', 'annotation'].includes(rule) || severity === 'error',
      );
      expect(about).toEqual([]);
    }
  });
});
