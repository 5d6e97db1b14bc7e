import { describe, expect, test } from 'vitest';
import { rowsIn, runOn, testFolder } from './draft-command.js';
import { setMilk, siteWithWholeGelatine } from './whole-gelatine.js';

const folder = testFolder();
const draft = (post: string, ...args: readonly string[]) => runOn(folder, post, ['draft', ...args]);

/** A stew on tins, with a share, an oven, a core temperature and a pan. */
const stew = `---
title: Stew
retare:
  makes: "4 servings"
---

:::ingredients[For the pot]{kitchen=us anchor="butter beans" #pot}
* 2 (15-oz) cans **butter beans**, drained
* 1 cup _heavy cream_
* ½ tsp table salt (3 g)
* lemon wedges, to serve
:::

Words between.

:::method
1. Heat the oven to :oven[400°F]. Butter a :pan[8×8 in]{depth="2 in"}.
2. Stir in :amount[½ cup]{of="heavy cream"}, then bake until the middle reads :core[165°F]{of=casserole}, and cut it
   into :length[2 in] squares.
:::
`;

/** The blocks that a draft prints, in their order. */
const blocksIn = (out: string): string[] => out.match(/^:::\w[\s\S]*?^:::$/gmu) ?? [];

describe('retare draft', () => {
  test('prints the ingredients of the version with the marks, label, id and bullets of the native block', async () => {
    const { code, out } = await draft(stew, '--for', 'uk');
    expect(code).toBe(0);
    expect(blocksIn(out)[0]).toMatch(
      /^:::ingredients\[For the pot\]\{#pot kitchen=uk from="(?:[0-9a-z]{3} ){3}[0-9a-z]{3}"\}\n\* 2 × 400 g tins \*\*butter beans\*\*, drained\n\* \d+ ml _double cream_\n\* .* fine salt.*\n\* lemon wedges, to serve\n:::$/u,
    );
  });

  test('prints a method whose annotations can still be checked, a code for each', async () => {
    const [, method] = blocksIn((await draft(stew, '--for', 'uk')).out);
    expect(method).toMatch(/^:::method\{kitchen=uk from="(?:[0-9a-z]{3} ){3}[0-9a-z]{3}"\}$/mu);
    expect(method).toContain(':oven[200°C/180°C fan/gas 6]');
    expect(method).toContain(':pan[20 × 20 cm]{depth="5 cm"}');
    expect(method).toMatch(/:amount\[\d+ ml\]\{of="double cream"\}/u);
    expect(method).toContain(':core[74°C]{of=casserole}');
    expect(method).toContain(':length[5 cm] squares');
  });

  test('prints no method where no amount, pan or temperature changes', async () => {
    const post =
      ':::ingredients{kitchen=uk}\n- 400 g kale\n- 1 tsp fine salt\n:::\n\n:::method\nHeat to :temp[40 °C].\n:::\n';
    const { out } = await draft(post.replaceAll('40 °C', '40°C'), '--for', 'eu');
    expect(blocksIn(out).map((block) => block.slice(0, 9))).toEqual([':::ingred']);
  });

  test('sets no oven to another heat where its dial does not go, and says so', async () => {
    const post =
      ':::ingredients{kitchen=eu}\n- 500 g plain flour\n:::\n\n:::method\nProve at :oven[35 °C], then bake at :oven[220 °C].\n:::\n';
    const { code, out } = await draft(post, '--for', 'us');
    expect(code).toBe(0);
    expect(blocksIn(out)[1]).toContain('Prove at :oven[95°F (cooler than the dial goes)], then bake at :oven[425°F].');
    expect(out).toContain('Oven: `35 °C` is 95°F, and US ovens go no lower than 170°F, so it cannot be set.');
    const [{ versions }] = JSON.parse((await draft(post, '--for', 'us', '--format', 'json')).out);
    expect(versions[0].ovens).toEqual([
      {
        native: '35 °C',
        version: '95°F (cooler than the dial goes)',
        beyondDial: { end: 'coolest', mark: '170°F' },
      },
      { native: '220 °C', version: '425°F', beyondDial: null },
    ]);
  });

  test('gives the reasons: batch, lines, ratios, pan and runner-up', async () => {
    const { out } = await draft(stew, '--for', 'uk');
    expect(out).toMatch(
      /^Batch factor 0\.\d+, set by whole packs or pieces of butter beans\. Makes about 3 servings\./mu,
    );
    const [beans, cream] = rowsIn(out);
    expect(beans?.join(' | ')).toBe(
      'butter beans | 2 (15-oz) cans | 470 g drained | 2 × 400 g tins | 0 % | 2 × 400 g tins | ',
    );
    expect(cream?.join(' | ')).toMatch(
      /^heavy cream \| 1 cup \| [\d.]+ ml \| \d+ ml \| [−+][\d.]+ % \| 1 × 300 ml pot \| \d+ g, 4 days or frozen$/u,
    );
    expect(out).toMatch(/^salt : whole \(For the pot\) +0\.\d+ +0\.\d+ +\S+ % +[\d.]+ %$/mu);
    expect(out).toMatch(/^8×8 in +20 × 20 cm +\S+ %$/mu);
    expect(out).toContain('Runner-up: ');
  });

  test('says what is left and how long it keeps, in the freezer too, and the amount as the author has it', async () => {
    const { out } = await draft(
      ':::ingredients{kitchen=us}\n- 1 cup chicken broth\n- Pinch of cayenne\n- 1 cup all-purpose flour\n:::\n',
      '--for',
      'uk',
    );
    const [stock, cayenne, flour] = rowsIn(out);
    expect(stock?.at(-1)).toMatch(/^\d+ g, 4 days or frozen$/u);
    expect(cayenne?.[1]).toBe('Pinch');
    expect(flour?.at(-1)).toMatch(/^\d+ g$/u);
  });

  test('prints tables that a terminal of 80 characters shows as they are, and tears no amount apart', async () => {
    const post = `:::ingredients[For the long-simmered pot]{kitchen=us}
- 2 cups half-and-half, warm
- 2 (15-oz) cans butter beans, drained
- 1 cup buttermilk
- 1½ tsp table salt
:::
`;
    const { out } = await draft(post, '--for', 'uk');
    const tables = out.split('\n\n').filter((block) => /^-+ {2}-/mu.test(block));
    expect(tables).toHaveLength(2);
    const lines = tables.flatMap((block) => block.split('\n'));
    expect(Math.max(...lines.map(({ length }) => length))).toBeLessThanOrEqual(80);
    expect(lines.filter((line) => / {2}(?:g|ml|%|tsp|×)(?: |$)/u.test(line))).toEqual([]);
    expect(rowsIn(out).map((cells) => cells[3])).toContain('2 × 400 g tins');
  });

  // 12 × 12 in is 929 cm²; the largest square UK tin, 23 cm, 529 cm². One 9 × 5 in loaf pan is 290 cm², the EU one of 11 × 25 cm 275.
  const bake = (method: string): string =>
    `:::ingredients{kitchen=us}\n- 2 cups all-purpose flour\n- 1 cup milk\n:::\n\n:::method\n${method}\n:::\n`;

  test.for([
    ['Pour into a :pan[12×12 in] pan and bake.', 'a :pan[two 23 × 23 cm] pan', '2 × (23 × 23 cm)'],
    ['Pour into a :pan[12×12 in pan] and bake.', 'a :pan[two 23 × 23 cm pans]', '2 × (23 × 23 cm)'],
    ['Pour into :pan[12×12 in]{count=1} pans and bake.', ':pan[23 × 23 cm]{count=2} pans', '2 × (23 × 23 cm)'],
    ['Pour into :pan[three 12×12 in] pans and bake.', ':pan[four 23 × 23 cm] pans', '4 × (23 × 23 cm)'],
  ] as const)('says a changed number of pans once, in words or in `count`: %s', async ([method, block, row]) => {
    const { out } = await draft(bake(method), '--for', 'uk');
    expect(blocksIn(out)[1]).toContain(block);
    const [, version, , said] = rowsIn(out).at(-1) ?? [];
    expect(version).toBe(row);
    expect(said).toMatch(/\d for the author's \d, else the batter/u);
  });

  test.for([
    ['Roast on :pan[two half sheet pans].', 'on :pan[two 33 × 46 cm sheet pans]'],
    ['Roast in a :pan[12-inch skillet].', 'in a :pan[30 cm skillet]'],
    ['Bake on a :pan[14-inch] pizza pan.', 'on a :pan[36 cm] pizza pan'],
  ] as const)('puts no cake tins in the place of what bakes no batter: %s', async ([method, block]) => {
    const { out } = await draft(bake(method), '--for', 'uk');
    expect(blocksIn(out)[1]).toContain(block);
    expect(out).not.toMatch(/^pan +version/mu);
  });

  test('leaves a number of pans that is kept where the author has it', async () => {
    const { out } = await draft(bake('Divide between two :pan[9 in] round cake pans and bake.'), '--for', 'uk');
    expect(blocksIn(out)[1]).toContain('Divide between two :pan[23 cm] round cake pans and bake.');
    expect(rowsIn(out).at(-1)?.[1]).toBe('2 × (23 cm)');
  });

  test('uses one pan in the method and in the reasons, wherever the author names it', async () => {
    const { out } = await draft(
      bake('Line a :pan[9×5 in]{depth="2.5 in"} loaf pan. Pour into the :pan[5 × 9-inch] pan and bake.'),
      '--for',
      'eu',
    );
    expect(blocksIn(out)[1]).toContain(
      'Line a :pan[25 × 11 cm]{depth="7 cm"} loaf pan. Pour into the :pan[11 × 25 cm] pan',
    );
    expect(out).toMatch(/^9×5 in +25 × 11 cm/mu);
  });

  test('says that a much larger or smaller batch takes another time, without a pan too', async () => {
    // 19 oz are 539 g: one EU tin of 400 g is a quarter less.
    const post = ':::ingredients{kitchen=us anchor=chickpeas}\n- 1 (19-oz) can chickpeas\n- 1 lb onions\n:::\n';
    const { out } = await draft(post, '--for', 'eu');
    expect(out).toMatch(/^The batch is 26 % smaller: watch the time, and say in the method what changes\.$/mu);
    expect((await draft(stew, '--for', 'uk')).out).not.toContain('The batch is');
  });

  test('says so where no other batch would do', async () => {
    const { out } = await draft(':::ingredients{kitchen=us}\n- 2 cups milk\n- 2 lb potatoes\n:::\n', '--for', 'uk');
    expect(out).toMatch(/^Runner-up: none\. No other batch would do\.$/mu);
  });

  test.for([
    ['4 servings', 'Makes about 3 servings.'],
    ['Serves 4', 'Serves about 3.'],
    ['makes 4 bowls', 'Makes about 3 bowls.'],
  ])('says of %s in a sentence: %s', async ([makes = '', says = '']) => {
    const { out } = await draft(stew.replace('"4 servings"', makes), '--for', 'uk');
    expect(out).toContain(`. ${says} Worked out`);
  });

  test('drafts for several kitchens, in the order that they are named in', async () => {
    const { out } = await draft(stew, '--for', 'au,uk');
    expect(blocksIn(out).map((block) => /kitchen=(\w+)/u.exec(block)?.[1])).toEqual(['au', 'au', 'uk', 'uk']);
  });

  test('lets a named anchor set the batch', async () => {
    const post = stew.replace(' anchor="butter beans"', '').replace('* ½ tsp', '* 3 eggs\n* ½ tsp');
    const { out, code } = await draft(post, '--for', 'uk', '--anchor', 'butter beans');
    expect(code).toBe(0);
    expect(out).toContain('set by whole packs or pieces of butter beans');
  });

  test('lets an anchor that comes in no packs be what the shop weighs off, and says no more of it', async () => {
    const post = ':::ingredients{kitchen=us}\n- 1 lb potatoes\n- 1 (15-oz) can chickpeas\n- 1 cup water\n:::\n';
    const { out } = await draft(post, '--for', 'uk', '--anchor', 'potatoes');
    expect(out).toContain('\n- 450 g potatoes\n');
    expect(out).toMatch(/^Batch factor 0\.992, set by potatoes, the anchor\./mu);
    expect(rowsIn(out)[0]?.slice(5)).toEqual(['450 g', '']);
    expect(out).toMatch(/^Runner-up: batch factor 0\.\d+ \((?:chickpeas|potatoes) as the anchor\)/mu);
    expect((await draft(post, '--for', 'us-scale', '--anchor', 'potatoes')).out).toContain('\n- 1 lb potatoes\n');
    expect((await draft(post, '--for', 'uk', '--anchor', 'water')).out).toMatch(/set by water, the anchor\./u);
  });

  test('gives every food of a stand-in a line of its own', async () => {
    const { out } = await draft(
      ':::ingredients{kitchen=us}\n- 2 cups half-and-half\n- 2 lb potatoes\n:::\n',
      '--for',
      'uk',
    );
    const [block = ''] = blocksIn(out);
    expect(block.match(/^- .*/gmu)).toHaveLength(3);
    expect(block).not.toContain(' and ');
  });

  test('names a stand-in at the head of a line, in emphasis and in an annotation, and no choice twice', async () => {
    const post = `:::ingredients{kitchen=us}
- **Half-and-half**, 1 cup, warm
- :amount[½ cup]{of="half-and-half"} half-and-half
- 1 cup half-and-half or whole milk
- 2 lb potatoes
:::
`;
    const { code, out } = await draft(post, '--for', 'uk');
    expect(code).toBe(0);
    expect(blocksIn(out)[0]?.split('\n').slice(1, -1)).toEqual([
      '- **Whole milk**, 190 ml, warm',
      '- **Double cream**, 50 ml, warm',
      '- :amount[90 ml]{of="whole milk"} whole milk',
      '- :amount[1½ tbsp]{of="double cream"} double cream',
      '- 190 ml whole milk or whole milk',
      '- 50 ml double cream',
      '- 900 g potatoes',
    ]);
  });

  test('leaves excuses of native lines out', async () => {
    const post = stew.replace('* 1 cup', '<!-- retare ignore unbuyable: ours is sold by the cup -->\n\n* 1 cup');
    const { out } = await draft(post, '--for', 'uk');
    expect(out).not.toContain('retare ignore');
    // And one list, which they had broken into two.
    expect(
      blocksIn(out)[0]
        ?.split('\n')
        .filter((line) => line.startsWith('* ')),
    ).toHaveLength(4);
    expect(blocksIn(out)[0]).not.toMatch(/^- /mu);
  });

  test('writes `the rest` of a line as words, which is no amount to be read', async () => {
    const post = stew
      .replace('* 1 cup _heavy cream_', '* 3 tbsp olive oil')
      .replace(
        ':amount[½ cup]{of="heavy cream"}',
        ':amount[1 tbsp]{of="olive oil"} and :amount[2 tbsp]{of="olive oil"}',
      );
    const { code, out } = await draft(post, '--for', 'au');
    expect(code).toBe(0);
    expect(out).not.toContain(':amount[the rest]');
  });
});

describe('what cannot be drafted', () => {
  test('is a preserve, with a word of caution', async () => {
    const post = stew.replace('retare:\n', 'retare:\n  preserve: true\n');
    const { code, out, err, after } = await draft(post, '--for', 'uk', '--write');
    expect([code, out, after]).toEqual([1, '', post]);
    expect(err).toMatch(
      /^post\.md is a preserve: .* follow your own food-safety authority\.\nNothing was written\.\n$/u,
    );
  });

  test('is a post that talks of preserving and does not say whether it is a preserve', async () => {
    const post = `${stew}\nSpoon it into sterilised jars.\n`;
    const { code, out, err, after } = await draft(post, '--for', 'uk', '--write');
    expect([code, out, after]).toEqual([1, '', post]);
    expect(err).toMatch(/talks of `sterilised` and does not say .* follow your own food-safety authority\./u);
    const said = post.replace('retare:\n', 'retare:\n  preserve: false\n');
    expect((await draft(said, '--for', 'uk')).code).toBe(0);
  });

  test('is a version that could not be bought, measured and kept in its ratios, and the least that would have to give is said', async () => {
    const { code, out, err, after } = await runOn(siteWithWholeGelatine(), setMilk, [
      'draft',
      '--for',
      'uk',
      '--write',
    ]);
    expect(code).toBe(1);
    expect(blocksIn(out)).toEqual([]);
    expect(out).toContain('No version keeps every guarded ratio and can be bought and measured.');
    expect(out).toMatch(
      /^- .* would drift by [−+][\d.]+ %; its limit is [\d.]+ %, and there is powdered gelatine in whole 12 g sachets only$/mu,
    );
    expect(out).toMatch(/^- UK shops sell powdered gelatine in 12 g sachets, and the batch asks for 7\.09 g$/mu);
    expect(out).toMatch(
      /^The least change that would help: write `2¾ tsp` for `1 \(¼-oz\) envelope` of unflavored gelatin in the native lines\.$/mu,
    );
    expect(err).toContain('Nothing was written.');
    expect(after).toBe(setMilk);
  });

  test.for([
    [
      'us',
      'uk',
      '½ chicken bouillon cube',
      'no number of chicken stock cubes in place of chicken bouillon cube that a UK cook can buy comes nearer than 5 g, and the batch asks for 2.4 g',
    ],
    [
      'us',
      'ca',
      '½ chicken bouillon cube',
      'no number of chicken bouillon cubes in place of chicken bouillon cube that a Canadian cook can buy comes nearer than 5 g, and the batch asks for 2.4 g',
    ],
    [
      'us',
      'ca',
      '½ cup sweetened condensed milk',
      'Canadian shops sell sweetened condensed milk in 300 ml cans, of which 388 g comes nearest, and the batch asks for 153 g',
    ],
    [
      'us',
      'uk',
      '½ cup ramen noodles',
      'UK shops sell ramen noodles in 85 g packets that a cook uses whole, and what `½ cup` weighs the larder does not know',
    ],
    ['us', 'au', '¾ cup tomato soup', 'Australian shops sell tomato soup in 420 g cans, and the batch asks for 188 g'],
  ] as const)('says how the shops sell what stands in the way: %s to %s, %s', async ([from, to, line, said]) => {
    const { out } = await draft(`:::ingredients{kitchen=${from}}\n- ${line}\n- 500 g kale\n:::\n`, '--for', to);
    expect(out).toContain(`\n- ${said}\n`);
  });

  test('is what the check would refuse, and the reason is given', async () => {
    const post = stew.replace('* 1 cup _heavy cream_', '* 1 tsp pink curing salt');
    const { code, err, after } = await draft(post, '--for', 'uk', '--write');
    expect(code).toBe(1);
    expect(err).toMatch(/would not pass the check:\n {2}.* \(curing-salt\)\nNothing was written\.\n$/u);
    expect(after).toBe(post);
  });

  test('is a post without ingredients', async () => {
    const { code, err } = await draft('# A walk\n', '--for', 'uk');
    expect([code, err]).toEqual([1, 'post.md has no `ingredients` block, so there is nothing to draft.\n']);
  });

  test('is a block without a list, and one beside another stays as it is', async () => {
    const nothing = ':::ingredients[To serve]{kitchen=us}\nWhatever there is.\n:::\n';
    const alone = await draft(nothing, '--for', 'uk,au');
    expect([alone.code, alone.out]).toEqual([1, '']);
    expect(alone.err).toMatch(/^post\.md lists nothing in its `ingredients` block.*\n$/u);
    const { code, out } = await draft(`:::ingredients{kitchen=us}\n- 1 cup milk\n:::\n\n${nothing}`, '--for', 'uk');
    expect([code, blocksIn(out)]).toEqual([0, [':::ingredients{kitchen=uk from=0bc}\n- 240 ml milk\n:::']]);
  });
});

describe('a slip in the command', () => {
  test.each([
    ['an unknown kitchen', ['--for', 'gb'], /^There is no kitchen `gb`\. Use `us`, .* Nothing was drafted\.\n$/u],
    [
      'the native kitchen',
      ['--for', 'us'],
      /^post\.md is written for the US kitchen already, .* Nothing was drafted\.\n$/u,
    ],
    [
      'an anchor that is not listed',
      ['--for', 'uk', '--anchor', 'plums'],
      /^post\.md lists no `plums` with an amount, /u,
    ],
    ['no kitchen', [], /--for/u],
    ['another format', ['--for', 'uk', '--format', 'xml'], /format/u],
  ])('is %s', async (_, args, message) => {
    const { code, err, after } = await draft(stew, ...args);
    expect(code).toBe(2);
    expect(err).toMatch(message);
    expect(after).toBe(stew);
  });
});
