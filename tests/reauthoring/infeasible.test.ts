import {
  applyEdits,
  type Change,
  defaultWeights,
  type Food,
  nameIn,
  type Reauthored,
  type Setting,
  type Weights,
} from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { type Post, recipeOf } from './recipe-of.js';
import { foodOf, larderOf, soldAs } from './sample-food.js';
import { setting } from './setting.js';

interface Asked {
  post: Post;
  to: string;
  within?: Setting;
  anchor?: string;
  weights?: Weights;
}

function worked({ post, to, within = setting, anchor, weights }: Asked): Reauthored {
  const recipe = { ...recipeOf(post, within), anchor: anchor ?? null };
  return reauthoredOf(recipe, to, within, weights === undefined ? {} : { weights });
}

/** The built-in larder without what some kitchens sell. */
function withUnsold(kitchen: string, ...ids: readonly string[]): Setting {
  const foods = new Map(setting.foods);
  for (const id of ids) {
    const food = foods.get(id);
    if (food === undefined) throw new RangeError(`There is no food ${id}.`);
    const gone = { ...soldNowhere, source: 'made up for a test' };
    foods.set(id, { ...food, sold: { ...food.sold, [kitchen]: gone } });
  }
  return { ...setting, foods };
}

const soldNowhere = { sold: false, packs: [], loose: false, singly: false, tap: false, standIns: [] };

/** The built-in larder without the smaller packs of a food in a kitchen. */
function withLargestPack(kitchen: string, id: string): Setting {
  const food = setting.foods.get(id);
  const sold = food?.sold[kitchen];
  if (food === undefined || sold === undefined) throw new RangeError(`There is no food ${id} in ${kitchen}.`);
  const large = { ...sold, packs: sold.packs.slice(-1) };
  return {
    ...setting,
    foods: new Map([...setting.foods, [id, { ...food, sold: { ...food.sold, [kitchen]: large } }]]),
  };
}

/** The built-in larder with a food that cooks everywhere use by whole packs only. */
function withWholePacks(id: string): Setting {
  const food = setting.foods.get(id);
  if (food === undefined) throw new RangeError(`There is no food ${id}.`);
  const whole = Object.entries(food.sold).map(([kitchen, sold]) => {
    return [kitchen, { ...sold, packs: sold.packs.map((pack) => ({ ...pack, whole: 'yes' as const })) }] as const;
  });
  return { ...setting, foods: new Map([...setting.foods, [id, { ...food, sold: Object.fromEntries(whole) }]]) };
}

/** A post after its author has made a change; what needs a larder of the site's own is not made here. */
function made(asked: Asked, change: Change): Asked {
  const { post, within = setting } = asked;
  switch (change.kind) {
    case 'native-amount': {
      const { line, text } = change;
      const spans = line.reading.amountSpans.map((span, at) => ({ ...span, text: at === 0 ? `${text} ` : '' }));
      const lines = post.lines.map((each) => (each === line.text ? applyEdits(each, spans).replace(/ +/g, ' ') : each));
      return { ...asked, post: { ...post, lines } };
    }
    case 'limit': {
      const limits = { ...defaultWeights.limits, [change.key]: change.limit };
      return { ...asked, weights: { ...defaultWeights, limits } };
    }
    case 'anchor': {
      const { anchor: _, ...others } = asked;
      return change.anchor === null ? others : { ...others, anchor: change.anchor };
    }
    case 'food': {
      const name = nameIn(change.instead, post.kitchen).many;
      const own = change.line.name?.text ?? '';
      const lines = post.lines.map((each) => each.replace(own, name));
      return { ...asked, post: { ...post, lines }, ...(asked.anchor === own ? { anchor: name } : {}) };
    }
    case 'weight': {
      const stated = `cup (${change.grams} g)`;
      const lines = post.lines.map((each) => (each === change.line.text ? each.replace('cup', stated) : each));
      return { ...asked, post: { ...post, lines } };
    }
    case 'own-version':
      return { ...asked, post: { ...post, lines: post.lines.filter((each) => each !== change.line.text) } };
    case 'half-pack': {
      const { food } = change;
      const sold = food.sold[asked.to];
      if (sold === undefined) throw new RangeError('The food is not sold.');
      const halved: Food = {
        ...food,
        sold: { ...food.sold, [asked.to]: { ...sold, packs: sold.packs.map((pack) => ({ ...pack, whole: 'half' })) } },
      };
      return { ...asked, within: { ...within, foods: new Map([...within.foods, [food.id, halved]]) } };
    }
    default:
      throw new RangeError(`Nobody makes the change ${change.kind} here.`);
  }
}

// Packs and their sizes as the built-in larder has them; that they stand in the way is what is tested, not that shops sell them.
const cases: { name: string; asked: Asked; because: string[]; changes: Change['kind'][] }[] = [
  {
    name: 'no sachet is so small, and half of one is enough',
    asked: {
      post: { kitchen: 'us', lines: ['2 cups milk', '1 (¼-oz) envelope unflavored gelatin'] },
      to: 'uk',
      within: withWholePacks('powdered-gelatine'),
    },
    because: ['no-amount', 'ratio'],
    changes: ['half-pack'],
  },
  {
    name: 'a third of a tin is no tin',
    asked: { post: { kitchen: 'us', lines: ['⅓ cup canned black beans', '1 cup corn'] }, to: 'uk' },
    because: ['no-amount'],
    changes: ['own-version'],
  },
  {
    name: 'less than a tin is a tin, where the author takes a little more',
    asked: {
      post: { kitchen: 'us', lines: ['1½ cups cooked chickpeas', '2 lb potatoes'] },
      to: 'ca',
      within: withLargestPack('ca', 'chickpeas'),
    },
    because: ['no-amount'],
    changes: ['native-amount'],
  },
  {
    name: 'what is not sold and has no stand-in is named, with a food that is sold',
    asked: {
      post: { kitchen: 'eu', lines: ['20 g fresh yeast', '500 g flour', '300 ml water'] },
      to: 'uk',
      within: withUnsold('uk', 'fresh-yeast'),
    },
    because: ['not-sold'],
    changes: ['food'],
  },
  {
    name: 'so is an anchor that is not sold, and each of two foods',
    asked: {
      post: { kitchen: 'eu', lines: ['20 g fresh yeast', '500 g flour', '300 ml water', '200 g crème fraîche'] },
      to: 'uk',
      anchor: 'fresh yeast',
      within: withUnsold('uk', 'fresh-yeast', 'creme-fraiche'),
    },
    because: ['not-sold', 'not-sold'],
    changes: ['food', 'food'],
  },
  {
    name: 'an anchor of which no pack is so small',
    asked: { post: { kitchen: 'us', lines: ['2 lb potatoes', '1 tbsp kosher salt'] }, to: 'uk', anchor: 'kosher salt' },
    because: ['no-amount'],
    changes: ['anchor'],
  },
  {
    name: 'salt to taste that is not sold',
    asked: {
      post: { kitchen: 'us', lines: ['2 lb potatoes', 'kosher salt, to taste'] },
      to: 'uk',
      within: withUnsold('uk', 'kosher-salt'),
    },
    because: ['not-sold'],
    changes: ['food'],
  },
  {
    name: 'a cup of what comes in whole packets, and what it weighs nobody knows',
    asked: { post: { kitchen: 'us', lines: ['½ cup ramen noodles', '2 lb potatoes'] }, to: 'uk' },
    because: ['no-weight'],
    changes: ['weight'],
  },
  {
    name: 'so is a cup of what whole packets take the place of',
    asked: { post: { kitchen: 'us', lines: ['1½ cups refrigerated crescent roll dough', '2 lb potatoes'] }, to: 'eu' },
    because: ['not-sold'],
    changes: ['own-version'],
  },
  {
    name: 'of which so little cannot be a pack, whatever it weighs',
    asked: { post: { kitchen: 'us', lines: ['¼ cup canned salmon', '2 lb potatoes'] }, to: 'uk' },
    because: ['no-weight'],
    changes: ['own-version'],
  },
];

describe('a recipe without a version', () => {
  test.for(cases)('says what stands in the way, and what would help: $name', ({ asked, because, changes }) => {
    const { infeasible } = worked(asked);
    expect(infeasible?.because.map(({ kind }) => kind)).toEqual(because);
    expect(infeasible?.leastChange.map(({ kind }) => kind)).toEqual(changes);
  });

  test.for(cases)('has one once its author has made that change: $name', ({ asked }) => {
    const changes = worked(asked).infeasible?.leastChange ?? [];
    expect(changes.length).toBeGreaterThan(0);
    // Foods are named in a larder that has them; kosher salt is unsold there too.
    expect(worked(changes.reduce(made, asked)).infeasible).toBeNull();
  });

  test('names the anchor among what is not sold', () => {
    const [, , , , two] = cases;
    const because = two === undefined ? [] : (worked(two.asked).infeasible?.because ?? []);
    expect(because.map((each) => 'isAnchor' in each && each.isAnchor)).toEqual([true, false]);
  });

  test('is offered a wider limit only up to twice the limit', () => {
    // Two percent of salt, and limits so narrow that no spoon keeps them.
    const limits = { ...defaultWeights.limits, gelling: 0.0001 };
    const post = { kitchen: 'us', lines: ['2 cups milk', '1 (¼-oz) envelope unflavored gelatin'] };
    const changes = worked({ post, to: 'uk', weights: { ...defaultWeights, limits } }).infeasible?.leastChange ?? [];
    for (const change of changes)
      if (change.kind === 'limit') expect(change.limit).toBeLessThanOrEqual(2 * change.from);
  });
});

test('a pinch of what another takes the place of is a pinch', () => {
  const result = worked({ post: { kitchen: 'us', lines: ['2 lb potatoes', '1–2 pinches kosher salt'] }, to: 'uk' });
  expect(result.infeasible).toBeNull();
  const [, salt] = result.version.parts[0]?.lines ?? [];
  expect(salt && applyEdits(salt.line.text, salt.edits)).toBe('1–2 pinches fine sea salt');
});

test('a weight of something unknown stays a weight where there is no scale, and stands in the way of nothing', () => {
  const result = worked({ post: { kitchen: 'uk', lines: ['100 g sea purslane pods', '1 kg potatoes'] }, to: 'us' });
  expect(result.infeasible).toBeNull();
  const [pods] = result.version.parts[0]?.lines ?? [];
  expect(pods && applyEdits(pods.line.text, pods.edits)).toBe('3½ oz sea purslane pods');
});

test('another food that would help says the allergens that it adds', () => {
  const gone = soldAs([], { sold: false });
  const glaze = foodOf({ us: soldAs([{ size: 100 }]), any: gone }, { id: 'gloop', allergens: ['soya'] });
  const other = foodOf({ any: soldAs([{ size: 100 }]) }, { id: 'marsh gloop', allergens: ['nuts', 'soya'] });
  const result = reauthoredOf(
    recipeOf({ kitchen: 'us', lines: ['100 g gloop'] }, larderOf(glaze, other)),
    'uk',
    larderOf(glaze, other),
  );
  expect(result.infeasible?.leastChange).toMatchObject([{ kind: 'food', allergens: ['nuts'] }]);
});
