import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from '../reauthoring/recipe-in-post.js';
import { rowsIn, runOn, testFolder } from './draft-command.js';
import { setMilk, siteWithWholeGelatine } from './whole-gelatine.js';

const folder = testFolder();
const posts = new URL('../../site-example/src/content/posts/', import.meta.url);

async function versionsOf(post: string, ...args: readonly string[]) {
  const { code, out } = await runOn(folder, post, ['draft', ...args, '--format', 'json']);
  return { code, files: JSON.parse(out) };
}

const decimal = /^-?\d+(?:\.\d+)?$/u;

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
      standIn: null,
      allergensAdded: [],
      native: '2 (15-oz) cans',
      exact: { low: '800', high: null, unit: 'g' },
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
      buy: { packs: [{ count: '2', size: '400', unit: 'g', word: 'tin' }], looseGrams: null, pieces: null },
      leftover: { grams: '0', days: expect.stringMatching(/^\d+$/u) },
    });
    expect(cream.chosen).toMatchObject({ unit: 'ml', count: null, packs: [] });
    expect(cream.exact).toMatchObject({ low: expect.stringMatching(decimal), high: null, unit: 'ml' });
    for (const number of [cream.drift, cream.chosen.low, cream.chosen.grams, cream.leftover.grams])
      expect(number).toMatch(decimal);
    expect(parsley).toMatchObject({ native: null, exact: null, chosen: null, becomes: 'parsley, to serve' });
  });

  test.each(['uk', 'au', 'eu', 'us-scale'])(
    'drifts by chosen over exact, drained beans too, for %s',
    async (kitchen) => {
      const post =
        ':::ingredients{kitchen=us}\n- 2 (15-oz) cans butter beans, drained\n- 1 cup heavy cream\n- 8 oz kale\n:::\n';
      const { files } = await versionsOf(post, '--for', kitchen);
      for (const { exact, chosen, drift } of files[0].versions[0].lines) {
        const own = exact.unit === 'ml' ? chosen.millilitres : chosen.grams;
        expect(Number(own) / Number(exact.low) - 1).toBeCloseTo(Number(drift), 9);
      }
    },
  );

  test('buys once what two lines ask for', async () => {
    const post = ':::ingredients{kitchen=us}\n- ½ cup heavy cream\n- ¾ cup heavy cream, whipped\n:::\n';
    const { files } = await versionsOf(post, '--for', 'uk');
    const [first, second] = files[0].versions[0].lines;
    expect(first.buy).toEqual({
      packs: [{ count: '1', size: '300', unit: 'ml', word: 'pot' }],
      looseGrams: null,
      pieces: null,
    });
    expect(second).toMatchObject({
      buy: { packs: [], looseGrams: null, pieces: null },
      leftover: { grams: '0' },
      buyable: true,
    });
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
    expect(version.ovens).toEqual([{ native: '400°F', version: '200°C/180°C fan/gas 6', beyondDial: null }]);
    expect(version.cores).toEqual([{ native: '165°F', version: '74°C', of: 'casserole', hold: 'hold 2 min' }]);
    expect(version.cost).toMatch(decimal);
    expect(version.runnerUp.cost).toMatch(decimal);
    expect(version.infeasible).toBeNull();
  });

  test('tells of a version that the check would refuse why it is none', async () => {
    const { code, files } = await versionsOf(
      stew.replace('1 cup heavy cream', '1 tsp pink curing salt'),
      '--for',
      'uk',
    );
    expect(code).toBe(1);
    expect(files[0].versions[0].infeasible).toEqual({
      because: [
        {
          kind: 'finding',
          line: null,
          name: 'curing-salt',
          part: null,
          text: expect.stringContaining('Write it in grams'),
        },
      ],
      leastChange: null,
    });
  });

  test('tells of an infeasible version what stands in the way, and its nearest lines', async () => {
    const { code, out } = await runOn(siteWithWholeGelatine(), setMilk, ['draft', '--for', 'uk', '--format', 'json']);
    const [version] = JSON.parse(out)[0].versions;
    expect(code).toBe(1);
    expect(version.infeasible.because.length).toBeGreaterThan(0);
    expect(version.infeasible.because[0]).toMatchObject({ kind: 'no-amount', line: 3, name: 'gelatin', part: null });
    expect(version.infeasible.leastChange.changes).toEqual([
      {
        kind: 'native-amount',
        line: 3,
        name: 'gelatin',
        from: '1 (¼-oz) envelope',
        to: '2¾ tsp',
        text: expect.stringContaining('write `2¾ tsp` for'),
      },
    ]);
    expect(version.lines.map(({ becomes }: { becomes: string }) => becomes)).toHaveLength(2);
  });

  test('counts what is bought singly, a whole one for a half, and what is weighed off by weight', async () => {
    const post =
      ':::ingredients{kitchen=us}\n- 3 large eggs\n- ½ onion\n- 1–2 lemons\n- 1 lb potatoes\n- 1 cup water\n:::\n';
    const { lines } = (await versionsOf(post, '--for', 'uk')).files[0].versions[0];
    const none = { packs: [], looseGrams: null, pieces: null };
    // In steps of 50 g: common practice, no source.
    const weighedOff = Math.ceil(Number(lines[3].chosen.grams) / 50) * 50;
    expect(lines.map(({ buy }: { buy: unknown }) => buy)).toEqual([
      { ...none, pieces: '3' },
      { ...none, pieces: '1' },
      { ...none, pieces: '2' },
      { ...none, looseGrams: `${weighedOff}` },
      null,
    ]);
    const { out } = await runOn(folder, post, ['draft', '--for', 'uk']);
    expect(rowsIn(out).map((cells) => cells[5])).toEqual(['3 medium', '1', '2', `${weighedOff} g`, '']);
  });

  test('gives each food of a stand-in an entry, what it is bought in and what is left of it', async () => {
    const post = ':::ingredients{kitchen=us}\n- 2 cups half-and-half, warm\n- 2 lb potatoes\n:::\n';
    const [milk, cream] = (await versionsOf(post, '--for', 'uk')).files[0].versions[0].lines;
    // Four fifths and a fifth of 484 g by weight: common practice, no source; 244 and 238 g a US cup: USDA SR26 01077 and 01053.
    expect(milk).toMatchObject({
      line: 2,
      food: 'half-and-half',
      standIn: 'whole milk',
      native: '2 cups',
      becomes: '375 ml whole milk, warm',
      exact: { unit: 'ml' },
      buy: { packs: [{ count: '1', size: '568', unit: 'ml', word: 'bottle' }] },
    });
    expect(cream).toMatchObject({
      line: 2,
      food: 'half-and-half',
      standIn: 'double cream',
      native: '2 cups',
      becomes: '100 ml double cream, warm',
      buy: { packs: [{ count: '1', size: '150', unit: 'ml', word: 'pot' }] },
      leftover: { days: '4' },
    });
    expect(Number(milk.exact.low)).toBeCloseTo(375.44, 2);
    expect(Number(cream.exact.low)).toBeCloseTo(96.23, 2);
  });

  test('says of a food that is in another line’s amount how much of it there is', async () => {
    const post =
      ':::ingredients{kitchen=us}\n- 2 cups half-and-half\n- 1 cup heavy cream\n- 2 lb potatoes\n:::\n\n:::method\nWarm the half-and-half, with :amount[1 cup half-and-half]{of="half-and-half"} held back.\n:::\n';
    const { lines } = (await versionsOf(post, '--for', 'uk')).files[0].versions[0];
    expect(lines.map(({ becomes }: { becomes: string | null }) => becomes)).toEqual([
      '375 ml whole milk (for the half-and-half)',
      null,
      '325 ml double cream (part of it for the half-and-half)',
      '900 g potatoes',
    ]);
    expect(lines[1]).toMatchObject({ food: 'half-and-half', standIn: 'double cream', chosen: null, buy: null });
    expect(Number(lines[1].exact.low)).toBeCloseTo(96.23, 2);
    const { out } = await runOn(folder, post, ['draft', '--for', 'uk']);
    expect(out).toContain(
      ':amount[190 ml whole milk]{of="whole milk"} and :amount[3 tbsp double cream]{of="double cream"} held back',
    );
    const rows = rowsIn(out).map((cells) => cells.slice(0, 4));
    expect(rows).toContainEqual(['half-and-half → double cream', '', '96.2 ml', '(in another line)']);
    expect(rows).toContainEqual(['heavy cream + half-and-half', '1 cup', '332.8 ml', '325 ml']);
  });

  test('does not know of what the larder has not whether it can be measured or bought, and says so', async () => {
    const post =
      ':::ingredients{kitchen=uk}\n- 250 ml glasswort brine\n- 100 g sea purslane pods\n- 3 dabberlocks\n- 300 g kale\n:::\n';
    const known = async (kitchen: string) =>
      (await versionsOf(post, '--for', kitchen)).files[0].versions[0].lines.map(
        ({ measurable, buyable }: { measurable: boolean | null; buyable: boolean | null }) => [measurable, buyable],
      );
    expect(await known('eu')).toEqual([
      [null, null],
      [true, null],
      [true, null],
      [true, true],
    ]);
    // No scale: nobody knows whether the shop weighs it.
    expect((await known('us')).slice(0, 2)).toEqual([
      [null, null],
      [null, null],
    ]);
    const { code, out } = await runOn(folder, post, ['draft', '--for', 'us']);
    expect(code).toBe(0);
    expect(out).toContain('Not in the larder: `glasswort brine`, `sea purslane pods`, `dabberlocks`. ');
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
