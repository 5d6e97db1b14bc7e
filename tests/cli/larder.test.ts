import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run } from '@retare/cli';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'retare-larder-'));
  writeFileSync(join(folder, 'retare.yaml'), 'larder: larder.yaml\n');
  writeFileSync(
    join(folder, 'larder.yaml'),
    `foods:
  sea-beet:
    names: { any: [sea beet] }
    role: bulk
    keeps: { where: fridge, days: 2, freezes: false, least: 20, source: our kitchen }
    sold: { any: { loose: true, source: our market } }
  whole-milk: { sold: { uk: { packs: [{ size: 1 l, word: bottle, whole: no }], source: our dairy } } }
  samphire: { remove: true }
kitchens:
  cabin: { extends: us, name: Cabin, fill: { as: heaped, source: our cook } }
`,
  );
});
afterAll(() => rmSync(folder, { recursive: true }));

async function larder(args: string, cwd = folder) {
  const written = { out: '', err: '' };
  const output = {
    out: (text: string) => {
      written.out += text;
    },
    err: (text: string) => {
      written.err += text;
    },
    color: false,
    cwd,
  };
  const code = await run(['larder', ...args.split(' ')], output);
  return { code, ...written };
}

const json = async (args: string, cwd?: string) => JSON.parse((await larder(`${args} --format json`, cwd)).out);

describe('retare larder list', () => {
  test('lists every food with its name, and the kitchens', async () => {
    const { code, out } = await larder('list');
    expect(code).toBe(0);
    expect(out).toContain('butter-beans  butter beans, bulk\n');
    expect(out).toMatch(/\d{3} foods; kitchens: us, ca, uk, eu, au, nz, us-scale, cabin\n$/);
  });

  test('keeps to one role, and to what a kitchen sells, in its words', async () => {
    const { foods } = await json('list --role flour --kitchen uk');
    expect(foods).toContainEqual({ id: 'cornstarch', name: 'cornflour', role: 'flour' });
    expect(
      foods.filter(({ id, role }: { id: string; role: string }) => role !== 'flour' || id === 'cake-flour'),
    ).toEqual([]);
  });

  test('finds nothing of a role that no food has', async () => {
    expect((await larder('list --role gravel')).code).toBe(1);
  });
});

describe('retare larder find', () => {
  test('says what each kitchen calls the food', async () => {
    const { code, out } = await larder('find minced beef');
    expect(code).toBe(0);
    expect(out).toBe(
      'ground-beef\n  us: ground beef\n  ca: ground beef\n  uk: minced beef\n  eu: minced beef\n  au: beef mince\n',
    );
  });

  test('tells apart the kitchens where the words mean another food', async () => {
    const { found } = await json('find coriander');
    expect(found.map(({ id }: { id: string }) => id)).toEqual(['ground-coriander', 'coriander-leaf']);
  });

  test('keeps to one kitchen', async () => {
    expect(await json('find coriander --kitchen uk')).toMatchObject({ found: [{ id: 'coriander-leaf' }] });
  });

  test('finds the food of a whole line', async () => {
    expect(await json('find 2 (15-oz) cans butter beans, drained --kitchen us')).toMatchObject({
      found: [{ id: 'butter-beans' }],
    });
  });

  test('finds a food of the site', async () => {
    expect((await larder('find fresh sea beet')).out).toContain('sea-beet\n');
  });

  test('names foods like it where it finds none, with exit code 1', async () => {
    const { code, out } = await larder('find beans of the moon');
    expect([code, out]).toEqual([1, expect.stringMatching(/^No food is called `beans of the moon` here\./)]);
    expect((await larder('find cannellini stew')).code).toBe(1);
  });
});

describe('retare larder show', () => {
  test('gives every value of a food with its source', async () => {
    const { code, out } = await larder('show butter-beans');
    expect(code).toBe(0);
    expect(out).toMatch(/g a US cup, [\d.]+ g\/ml {2}\[.*USDA SR26 \d{5}, /);
    expect(out).toContain(
      'sold in uk  [common practice, no source]\n    400 g tin: 400 g, 235 g drained, used whole\n',
    );
  });

  test('gives a stand-in with its proportions and the allergens that it adds', async () => {
    const { out } = await larder('show unsweetened-chocolate --kitchen uk');
    expect(out).toMatch(/not sold.*\n {4}stand-in: [\d.]+ cocoa-powder \+ [\d.]+ unsalted-butter; adds milk {2}\[/);
  });

  test('defers to the authority with a core temperature', async () => {
    const { out } = await larder('show chicken-breast --kitchen uk');
    expect(out).toContain('uk: 70 °C, hold 2 min for ');
    expect(out).toMatch(
      /core temperature {2}\[.*Food Standards Agency.*\]\n.*; follow your own food-safety authority\n/,
    );
  });

  test('gives a kitchen block by block, and whose the rest is', async () => {
    const { out } = await larder('show nz');
    expect(out).toContain('tbsp: ml 15');
    expect(out).toContain('  the rest\n    as in au\n');
  });

  test("marks an entry of the site's own", async () => {
    expect((await larder('show cabin')).out).toContain("cabin (in the site's larder file)\n");
    expect(await json('show butter')).toMatchObject({ kind: 'food', inSiteLarder: false });
  });

  test('says where there is no such entry', async () => {
    const { code, out } = await larder('show chicken');
    expect([code, out]).toEqual([1, expect.stringMatching(/^There is no food and no kitchen `chicken`\. Like it: /)]);
  });
});

describe('retare larder changes', () => {
  test("shows what the site's file added, changed and removed", async () => {
    const changes = await json('changes');
    expect(changes.map(({ id, change }: { id: string; change: string }) => [id, change])).toEqual([
      ['sea-beet', 'added'],
      ['whole-milk', 'changed'],
      ['samphire', 'removed'],
      ['cabin', 'added'],
    ]);
  });

  test('shows the old and the new of a changed food, and nothing else of it', async () => {
    const { out } = await larder('changes');
    const [, milk = ''] = /food whole-milk: changed\n((?: {2}[-+].*\n)+)/.exec(out) ?? [];
    expect(milk).toContain('+ sold in uk  [our dairy]: 1 l bottle');
    expect(milk.split('\n').filter((line) => line !== '' && !/^ {2}[-+] sold in uk/.test(line))).toEqual([]);
  });

  test('says so where there is no such file', async () => {
    const { code, out } = await larder('changes', tmpdir());
    expect([code, out]).toEqual([0, "The site's larder file changes nothing, or there is none.\n"]);
  });
});

describe('slips in the command', () => {
  test.for(['show', 'find', 'list --kitchen gb', 'list --format xml', 'shew butter'])(
    '%s ends with exit code 2',
    async (args) => {
      const { code, err } = await larder(args);
      expect([code, err]).toEqual([2, expect.stringMatching(/./)]);
    },
  );

  test('a broken larder file is named, and nothing is looked up', async () => {
    const broken = mkdtempSync(join(tmpdir(), 'retare-larder-'));
    writeFileSync(join(broken, 'retare.yaml'), 'larder: larder.yaml\n');
    writeFileSync(join(broken, 'larder.yaml'), 'foods: { butter: { role: grease } }\n');
    const { code, err } = await larder('list', broken);
    expect([code, err]).toEqual([
      2,
      expect.stringMatching(/^larder\.yaml:1:26 `role` takes[\s\S]*Nothing was looked up\.\n$/),
    ]);
    rmSync(broken, { recursive: true });
  });
});
