import { type Food, isVolumeUnit, millilitresIn, type Sold } from '@retare/core';
import { builtInLarder, defaultSettings } from '@retare/larder';
import { describe, expect, test } from 'vitest';

const { foods, kitchens } = builtInLarder();
const all = [...foods.values()];
const soldIn = ({ sold }: Food, kitchen: string): Sold | undefined => sold[kitchen] ?? sold.any;
const from = (source: string) =>
  all.flatMap(({ densities }) => densities).filter((each) => each.source.includes(source));

describe('the foods', () => {
  test('are 350 or more', () => {
    expect(all.length).toBeGreaterThanOrEqual(350);
  });

  test('have at most 15 % of their densities from memory', () => {
    const densities = all.flatMap((food) => food.densities);
    expect(densities.length).toBeGreaterThan(500);
    expect(from('from memory').length / densities.length).toBeLessThanOrEqual(0.15);
  });

  test.for(defaultSettings.kitchens)('are sold in packs in %s, 120 of them or more', (kitchen) => {
    expect(all.filter((food) => (soldIn(food, kitchen)?.packs.length ?? 0) > 0).length).toBeGreaterThanOrEqual(120);
  });

  test.for(defaultSettings.kitchens)('are called something wherever %s sells them', (kitchen) => {
    const nameless = all.filter((food) => soldIn(food, kitchen)?.sold && !food.names[kitchen] && !food.names.any);
    expect(nameless.map(({ id }) => id)).toEqual([]);
  });

  test('each mean one food by each name in each kitchen', () => {
    const clashes = [...kitchens.keys()].flatMap((kitchen) => {
      const owners = new Map<string, string[]>();
      for (const food of all) {
        for (const { one } of food.names[kitchen] ?? []) {
          owners.set(one.toLowerCase(), [...(owners.get(one.toLowerCase()) ?? []), food.id]);
        }
      }
      return [...owners].filter(([, ids]) => new Set(ids).size > 1).map(([name, ids]) => `${kitchen} ${name}: ${ids}`);
    });
    expect(clashes).toEqual([]);
  });

  test('that contain other foods say where the shares are from', () => {
    const composed = all.filter(({ contains }) => contains.length > 0);
    expect(composed.map(({ id }) => id)).toEqual(expect.arrayContaining(['self-raising-flour', 'self-rising-flour']));
    expect(composed.filter(({ contains }) => contains.some(({ source = '' }) => source === ''))).toEqual([]);
  });
});

test('cans by volume carry what is in them with its liquid: a millilitre weighs from 0.85 g to 1.4 g of a syrup', () => {
  const odd = all.flatMap((food) =>
    [...kitchens.values()].flatMap(({ id, units }) =>
      (soldIn(food, id)?.packs ?? [])
        .filter(({ unit, whole }) => isVolumeUnit(unit) && whole !== 'no')
        .flatMap(({ size, unit, grams }) => {
          const each = isVolumeUnit(unit) ? grams.dividedBy(size.times(millilitresIn(unit, units) ?? 1)).toNumber() : 1;
          return each < 0.85 || each > 1.4 ? [`${food.id} in ${id}: ${each}`] : [];
        }),
    ),
  );
  expect(odd).toEqual([]);
});

describe('stand-ins', () => {
  const replaced = all.flatMap((food) =>
    [...kitchens.keys()].flatMap((kitchen) =>
      (soldIn(food, kitchen)?.standIns ?? []).map((standIn) => ({ food, kitchen, standIn })),
    ),
  );

  test('are known for 40 foods or more', () => {
    expect(new Set(replaced.map(({ food }) => food.id)).size).toBeGreaterThanOrEqual(40);
  });

  test('are sold where they stand in', () => {
    const missing = replaced.flatMap(({ food, kitchen, standIn }) =>
      standIn.parts
        .filter((part) => soldIn(foods.get(part.food) as Food, kitchen)?.sold !== true)
        .map((part) => `${food.id} in ${kitchen}: ${part.food}`),
    );
    expect(missing).toEqual([]);
  });

  test('list the allergens that they add', () => {
    const added = replaced.flatMap(({ food, kitchen, standIn }) =>
      standIn.parts
        .flatMap((part) => foods.get(part.food)?.allergens ?? [])
        .filter((allergen) => !food.allergens.includes(allergen))
        .map((allergen) => `${food.id} in ${kitchen}: ${allergen}`),
    );
    // Read by a person: each is a real addition, and said on the page.
    expect([...new Set(added)].toSorted()).toMatchInlineSnapshot(`
      [
        "butter-crackers in eu: milk",
        "butter-crackers in uk: milk",
        "clam-juice in au: celery",
        "clam-juice in au: crustaceans",
        "clam-juice in au: fish",
        "clam-juice in eu: celery",
        "clam-juice in eu: crustaceans",
        "clam-juice in eu: fish",
        "clam-juice in nz: celery",
        "clam-juice in nz: crustaceans",
        "clam-juice in nz: fish",
        "clam-juice in uk: celery",
        "clam-juice in uk: crustaceans",
        "clam-juice in uk: fish",
        "cocktail-sauce in au: egg",
        "cocktail-sauce in au: milk",
        "cocktail-sauce in au: sulphite",
        "cocktail-sauce in eu: egg",
        "cocktail-sauce in eu: milk",
        "cocktail-sauce in eu: sulphite",
        "cocktail-sauce in nz: egg",
        "cocktail-sauce in nz: milk",
        "cocktail-sauce in nz: sulphite",
        "cocktail-sauce in uk: egg",
        "cocktail-sauce in uk: milk",
        "cocktail-sauce in uk: sulphite",
        "creamed-corn in eu: milk",
        "crescent-roll-dough in au: milk",
        "crescent-roll-dough in eu: milk",
        "crescent-roll-dough in nz: milk",
        "crescent-roll-dough in uk: milk",
        "unsweetened-chocolate in au: milk",
        "unsweetened-chocolate in eu: milk",
        "unsweetened-chocolate in nz: milk",
        "unsweetened-chocolate in uk: milk",
      ]
    `);
  });
});

test.for(['heavy-cream', 'whipping-cream', 'single-cream', 'reduced-fat-milk'])(
  '%s says how its fat differs between kitchens',
  (id) => {
    expect(foods.get(id)?.note).toMatch(/^Fat, .* us .*\d %|^Fat, .*\d % in the US/);
  },
);
