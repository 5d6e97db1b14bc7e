import { builtInLarder, extendLarder, readSiteLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';

const read = (text: string) => readSiteLarder(text, 'larder.yaml');
const found = (text: string) => read(text).problems.map(({ line, column, message }) => `${line}:${column} ${message}`);

/** The larder that a site's file makes of the built-in one. */
function extended(text: string) {
  const { data, problems } = read(text);
  expect(problems).toEqual([]);
  return extendLarder(builtInLarder(), data ?? {});
}

const seaBeet = `
foods:
  sea-beet:
    names: { any: [sea beet] }
    role: bulk
    densities: [{ grams: 30, per: cup, source: from memory }]
    keeps: { where: fridge, days: 2, freezes: false, least: 20, source: 'common practice, no source' }
    sold: { any: { loose: true, source: 'common practice, no source' } }
`;

describe("a site's foods", () => {
  test('are added', () => {
    const food = extended(seaBeet).foods.get('sea-beet');
    expect(food).toMatchObject({ id: 'sea-beet', role: 'bulk', pours: false, coreClass: null, contains: [] });
  });

  test('weigh by the US cup', () => {
    const [density] = extended(seaBeet).foods.get('sea-beet')?.densities ?? [];
    expect(density?.gramsPerMl.times('236.5882365').toDecimalPlaces(20).toString()).toBe('30');
  });

  test('leave the built-in ones as they were', () => {
    const base = builtInLarder();
    expect([...extended(seaBeet).foods.keys()].filter((id) => id !== 'sea-beet')).toEqual([...base.foods.keys()]);
  });

  test('override one key of a built-in one', () => {
    const text =
      "foods: { whole-milk: { keeps: { where: fridge, days: 9, freezes: true, least: 1, source: 'our dairy' } } }";
    const [before, after] = [builtInLarder().foods.get('whole-milk'), extended(text).foods.get('whole-milk')];
    expect(after).toEqual({ ...before, keeps: after?.keeps });
    expect(after?.keeps).toMatchObject({ days: 9, source: 'our dairy' });
  });

  test('override the shops of one kitchen', () => {
    const text =
      "foods: { whole-milk: { sold: { uk: { packs: [{ size: 1 l, word: bottle, whole: no }], source: 'our dairy' } } } }";
    const [before, after] = [builtInLarder().foods.get('whole-milk'), extended(text).foods.get('whole-milk')];
    expect(after?.sold.uk?.packs.map(({ size, unit, word }) => `${size} ${unit} ${word}`)).toEqual(['1 l bottle']);
    expect(after?.sold.us).toEqual(before?.sold.us);
  });

  test('weigh a pack in volume by the density of the food that they override', () => {
    const text =
      "foods: { whole-milk: { sold: { uk: { packs: [{ size: 1 l, word: bottle, whole: no }], source: 'our dairy' } } } }";
    // 244 g a US cup (USDA SR26 01077) is 1031.3 g a litre.
    expect(extended(text).foods.get('whole-milk')?.sold.uk?.packs[0]?.grams.toFixed(1)).toBe('1031.3');
  });

  test('are removed', () => {
    const base = extendLarder(builtInLarder(), read(seaBeet).data ?? {});
    const { data } = readSiteLarder('foods: { sea-beet: { remove: true } }', 'larder.yaml', base);
    expect(extendLarder(base, data ?? {}).foods.has('sea-beet')).toBe(false);
  });

  test('are not removed while another food is made of them', () => {
    expect(found('foods:\n  baking-powder: { remove: true }\n')[0]).toMatch(
      /^2:28 `baking-powder` cannot be removed: `.+` is made of it or replaced by it\. Override that food too$/,
    );
  });
});

const withScale = `
kitchens:
  us-scale:
    extends: us
    name: United States, with a scale
    scale: { unit: g, marks: [{ from: 1, to: 2000, step: 1 }], source: our own scale }
    measures: { pours: [spoon, cup], dry: [spoon, scale], source: our own scale }
`;

describe("a site's kitchens", () => {
  test('extend another', () => {
    const { kitchens } = extended(withScale);
    const [us, ours] = [kitchens.get('us'), kitchens.get('us-scale')];
    expect(ours).toEqual({
      ...us,
      id: 'us-scale',
      name: ours?.name,
      scale: ours?.scale,
      measures: ours?.measures,
      regions: [],
    });
    expect(ours?.scale?.marks[0]?.step.toString()).toBe('1');
  });

  test('have the shops and names of the one that they extend', () => {
    const { foods } = extended(withScale);
    const strayed = [...foods.values()].filter(
      ({ sold, names }) => sold['us-scale'] !== sold.us || names['us-scale'] !== names.us,
    );
    expect(strayed.map(({ id }) => id)).toEqual([]);
  });

  test('extend one that extends another, in any order', () => {
    const text = `${withScale.replace('kitchens:\n', 'kitchens:\n  cabin: { extends: us-scale, name: Cabin }\n')}`;
    const { kitchens, foods } = extended(text);
    expect(kitchens.get('cabin')?.scale).toEqual(kitchens.get('us-scale')?.scale);
    expect(foods.get('whole-milk')?.sold.cabin).toBe(foods.get('whole-milk')?.sold.us);
  });

  test('have the shops of a food that the same file adds', () => {
    const text = seaBeet
      .replace('any: { loose', 'us: { loose')
      .replace('} }\n', '}, any: { not-sold: true, source: x } }\n');
    const food = extended(`${text}${withScale}`).foods.get('sea-beet');
    expect(food?.sold['us-scale']?.loose).toBe(true);
  });

  test('override one safe temperature and keep the others', () => {
    const text =
      'kitchens: { uk: { safe: { poultry: { name: poultry, temperature: 75, unit: C, authority: us, source: our rule } } } }';
    const [before, after] = [builtInLarder().kitchens.get('uk'), extended(text).kitchens.get('uk')];
    expect(after?.safe.find((safe) => safe.class === 'poultry')).toMatchObject({ hold: '', source: 'our rule' });
    expect(after?.safe.filter((safe) => safe.class !== 'poultry')).toEqual(
      before?.safe.filter((safe) => safe.class !== 'poultry'),
    );
  });

  test('add a pan', () => {
    const text =
      'kitchens: { uk: { pans: [{ name: brownie tin, shape: square, sides: [18], unit: cm, source: our own }] } }';
    const [before, after] = [builtInLarder().kitchens.get('uk')?.pans ?? [], extended(text).kitchens.get('uk')?.pans];
    expect(after?.map(({ name }) => name)).toEqual([...before.map(({ name }) => name), 'brownie tin']);
  });

  test('choose another usual egg', () => {
    const text = 'kitchens: { uk: { eggs: { usual: medium, source: our own } } }';
    const eggs = extended(text).kitchens.get('uk')?.eggs;
    expect(eggs).toEqual({ ...builtInLarder().kitchens.get('uk')?.eggs, usual: 'medium' });
  });
});

const mistakes = [
  {
    text: 'kitchens:\n  uk: { safe: { poultry: { name: poultry, temperature: 63, unit: C, authority: us, source: x } } }\n',
    says: '2:56 `temperature` takes no less than the 70 °C that the UK Food Standards Agency gives for poultry, not `63 °C`. Write `70 °C` or more; readers should follow their own food-safety authority',
  },
  {
    text: 'kitchens:\n  au: { safe: { poultry: { name: poultry, temperature: 166, unit: F, authority: us, source: x } } }\n',
    says: '2:56 `temperature` takes no less than the 75 °C that Food Standards Australia New Zealand gives for poultry, not `166 °F`. Write `75 °C` or more; readers should follow their own food-safety authority',
  },
  {
    text: 'kitchens: { ie: { extends: ix } }',
    says: '1:28 There is no kitchen `ix`. Use `us`, `ca`, `uk`, `eu`, `au`, `nz`, `us-scale`, or one from your larder file',
  },
  {
    text: 'kitchens: { us: { measures: { pours: [jug], dry: [spoon], source: x } } }',
    says: '1:39 `pours` names a jug, and this kitchen has none. Leave it out, or describe the jug',
  },
  {
    text: 'kitchens: { uk: { eggs: { usual: huge } } }',
    says: '1:34 There is no egg size `huge` here. Use `small`, `medium`, `large` or `extra large`',
  },
  {
    text: 'kitchens: { eu: { oven: { states: { settings: [gas], source: x } } } }',
    says: '1:35 `states` names gas, and this kitchen has no gas marks. Leave it out, or give them',
  },
  {
    text: 'kitchens: { uk: { counter: { unit: g, step: 10 } } }',
    says: '1:19 `source` is missing: it takes the source of the value: a publication, `common practice, no source` or `from memory`',
  },
  {
    text: 'kitchens: { Nz: { extends: au } }',
    says: '1:13 `Nz` takes an id in lower-case letters, digits and hyphens',
  },
  {
    text: 'foods: { whole-milk: { removed: true } }',
    says: '1:24 `removed` is no key of `whole-milk`. Write `remove`',
  },
  { text: 'foods: { whole-milk: { remove: yes } }', says: '1:32 `remove` takes `true`, not `yes`' },
  {
    text: 'foods: { whole-mlik: { remove: true } }',
    says: '1:10 There is no food `whole-mlik` in the larder to remove. Write `whole-milk`',
  },
  {
    text: 'foods: { whole-milk: { names: { uk: [full milk, double cream] } } }',
    says: '1:37 `double cream` is the name of `heavy-cream` too, so that only one of the two would be found. Override `heavy-cream`, or write another name',
  },
  { text: 'foods: [a]', says: '1:8 `foods` takes a block of keys, not a list' },
  { text: 'food: {}', says: '1:1 `food` is no key here. Write `foods`' },
] as const;

describe("bad entries of a site's larder", () => {
  test.for(mistakes)('$text: $says', ({ text, says }) => {
    expect(found(text)).toEqual([says]);
  });

  test('name both kitchens that extend each other', () => {
    expect(found('kitchens: { a: { extends: b }, b: { extends: a } }')).toEqual([
      '1:27 `a` and `b` extend each other, so that neither has values of its own. Leave out one `extends`',
      '1:46 `b` and `a` extend each other, so that neither has values of its own. Leave out one `extends`',
    ]);
  });

  test('give no data', () => {
    expect(read('foods: [a]').data).toBeNull();
  });

  test('say each key that a new food lacks', () => {
    const text = 'foods:\n  sea-beet: { names: { any: [sea beet] } }\n';
    expect(read(text).problems.map(({ line, column, key }) => `${line}:${column} ${key}`)).toEqual([
      '2:3 foods.sea-beet.role',
      '2:3 foods.sea-beet.keeps',
      '2:3 foods.sea-beet.sold',
    ]);
  });

  test('say once which blocks a new kitchen lacks, and how to borrow them', () => {
    const messages = found('kitchens: { ie: { name: Ireland } }');
    expect(messages).toHaveLength(1);
    expect(messages[0]).toMatch(
      /^1:13 `ie` is a new kitchen without `adjective`, .*\. Write `extends` with the kitchen that it is like, or add them$/,
    );
  });

  test.for(['', '# nothing yet', 'foods:\n', 'kitchens:\nfoods:\n'])('%j adds nothing and is no mistake', (text) => {
    expect(read(text)).toEqual({ data: {}, problems: [] });
  });

  test('throw only when handed past their reader', () => {
    expect(() => extendLarder(builtInLarder(), { kitchens: { ie: { extends: 'ix' } } })).toThrow(RangeError);
  });
});

describe('the digest of a larder', () => {
  test('changes with the data', () => {
    const digests = [builtInLarder(), extended(seaBeet), extended(seaBeet.replace('30', '31'))].map(
      ({ digest }) => digest,
    );
    expect(new Set(digests).size).toBe(3);
  });

  test('stays when only the layout of the file changes', () => {
    expect(extended(`# ours\n${seaBeet}\n`).digest).toBe(extended(seaBeet).digest);
  });
});
