import { allergensAdded, allergensOf, type Food } from '@retare/core';
import { builtInLarder, extendLarder, type Larder, readSiteLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { converted, versionOf } from '../reauthoring/recipe-of.js';
import { setting } from '../reauthoring/setting.js';

const read = (text: string) => readSiteLarder(text, 'larder.yaml');
const messages = (text: string) =>
  read(text).problems.map(({ line, column, message }) => `${line}:${column} ${message}`);

function extended(text: string): Larder {
  const { data, problems } = read(text);
  expect(problems).toEqual([]);
  return extendLarder(builtInLarder(), data ?? {});
}

/** Allergens that the note of a stand-in names, US to UK. */
function noted(line: string, text: string): string[] {
  const { foods } = extended(text);
  return converted(line, 'us', 'uk', { ...setting, foods }).notes.flatMap((note) =>
    note.kind === 'stand-in' ? note.allergens : [],
  );
}

/** A site's file in which UK shops sell no allspice, and something takes its place. */
const standsIn = (of: string, more = '') => `foods:
  allspice:
    sold: { uk: { not-sold: true, stand-ins: [{ parts: [{ food: ${of}, share: 1 }], source: a test }], source: a test } }
    ${more}`;

/** A food of a site's own. */
const own = (id: string, more: string) => `
  ${id}:
    names: { any: [${id.replaceAll('-', ' ')}] }
    role: bulk
    ${more}
    densities: [{ grams: 100, per: cup, source: from memory }]
    keeps: { where: cupboard, freezes: false, least: 0, source: from memory }
    sold: { any: { packs: [{ size: 200 g, word: bag, whole: no }], source: from memory } }`;

describe('what a stand-in adds', () => {
  test('is not hidden by what a site adds to the native food', () => {
    expect(noted('2 tbsp ground allspice', standsIn('yellow-mustard'))).toEqual(['mustard']);
    expect(noted('2 tbsp ground allspice', standsIn('yellow-mustard', 'allergens: [mustard]'))).toEqual(['mustard']);
  });

  test('is not hidden by what a site says that the native food is made of', () => {
    expect(
      noted('2 tbsp ground allspice', standsIn('yellow-mustard', 'contains: [{ food: yellow-mustard, share: 0.1 }]')),
    ).toEqual(['mustard']);
  });

  test('is nothing where the larder itself lists it of the native food', () => {
    expect(noted('½ cup half-and-half', 'foods: { half-and-half: { allergens: [milk, nuts] } }')).toEqual([]);
  });

  test('is what the stand-in is made of too, at any depth', () => {
    const text = `foods:${own('nut-meal', 'allergens: [nuts]')}${own('sea-crumb', 'allergens: []\n    contains: [{ food: nut-meal, share: 0.5 }]')}${own('shore-crumb', 'allergens: [gluten]\n    contains: [{ food: sea-crumb, share: 0.5 }]')}`;
    const { foods } = extended(text);
    const [crumb, rice] = ['shore-crumb', 'long-grain-rice'].map((id) => foods.get(id) as Food);
    expect(crumb && [...allergensOf(crumb, foods)]).toEqual(['gluten', 'nuts']);
    expect(rice && crumb && allergensAdded(rice, [crumb], foods)).toEqual(['gluten', 'nuts']);
  });

  test('is said in a version that the author wrote or accepted, where the food takes an unsold one’s place', () => {
    const post = {
      kitchen: 'us',
      lines: ['4 oz butter crackers, crushed'],
      versions: [{ kitchen: 'uk', lines: ['95 g cream crackers, crushed', '15 g butter', '50 g walnuts'] }],
    };
    const [part] = versionOf(post, 'uk').parts;
    expect(part?.lines.map(({ notes }) => notes)).toEqual([
      [],
      [{ kind: 'stand-in', food: 'butter crackers', kitchen: 'United Kingdom', allergens: ['milk'] }],
      [],
    ]);
  });
});

describe("a site's file", () => {
  test('may not take an allergen away from a food of the larder', () => {
    expect(messages('foods: { whole-milk: { allergens: [] } }')).toEqual([
      '1:35 `allergens` leaves out `milk`, which the larder lists of this food. Add it, or give a food without it an id of its own',
    ]);
  });

  test('adds to what the larder lists', () => {
    expect(extended('foods: { whole-milk: { allergens: [nuts, milk] } }').foods.get('whole-milk')).toMatchObject({
      allergens: ['milk', 'nuts'],
      allergensBySite: ['nuts'],
    });
  });

  test('has to say the allergens of its own food that takes the place of another', () => {
    const text = (more: string) => `${standsIn('sea-crumb')}${own('sea-crumb', more)}`;
    expect(messages(text('pours: false'))).toEqual([
      expect.stringMatching(
        /^\d+:\d+ `sea-crumb` takes the place of another food, and its entry does not say what allergens it has/,
      ),
    ]);
    expect(messages(text('allergens: []'))).toEqual([]);
  });
});
