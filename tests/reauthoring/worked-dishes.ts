import {
  applyEdits,
  defaultWeights,
  Exact,
  findFoodOfLine,
  isRefusal,
  type Kitchen,
  type Line,
  type Reauthored,
  type Recipe,
  readLine,
  reauthor,
  type Setting,
  type VersionLine,
} from '@retare/core';
import { builtInLarder } from '@retare/larder';

const { foods, kitchens } = builtInLarder();
const setting: Setting = { foods, kitchens, tolerance: new Exact('0.05') };

/** A built-in kitchen. */
export function kitchen(id: string): Kitchen {
  const found = kitchens.get(id);
  if (found === undefined) throw new RangeError(`There is no kitchen ${id}.`);
  return found;
}

/** A dish that the page works through. */
export interface Dish {
  title: string;
  /** What the page says before the numbers. */
  words: string;
  post: { kitchen: string; lines: readonly string[]; prose?: string };
  anchor?: string;
  to: readonly string[];
}

export const stew: Dish = {
  title: 'A stew on tins of beans, from a US kitchen to a UK one',
  words:
    'The author names butter beans as the anchor. A US can of them holds 15 oz, a UK tin 400 g; the line says drained, so drained weights are ' +
    'compared where both are known. The batch follows the beans, and everything that pours or is weighed follows the batch. Tins of ' +
    'tomatoes are opened whole too.',
  anchor: 'butter beans',
  to: ['uk'],
  post: {
    kitchen: 'us',
    lines: [
      '2 (15-oz) cans butter beans, drained',
      '1 (14.5-oz) can diced tomatoes',
      '2 tbsp olive oil',
      '1 onion, chopped',
      '2 cloves garlic',
      '1 cup chicken broth',
      '1 tsp table salt',
      '1 tsp paprika',
      '1 lb smoked sausage',
    ],
  },
};

export const loaf: Dish = {
  title: 'A loaf written in grams, for a US kitchen without a scale',
  words:
    'Nothing here is used whole but the yeast, and its sachet is the same in both kitchens, so the batch stays as it is. Flour, water and salt ' +
    'go into cups and spoons together: the water may drift by 6 % of the flour at most, yeast and salt by 10 %.',
  to: ['us'],
  post: {
    kitchen: 'eu',
    lines: ['500 g strong white bread flour', '340 ml water', '10 g fine salt', '7 g fast-action dried yeast'],
  },
};

export const sponge: Dish = {
  title: 'A four-egg sponge on 225 g of each, from a UK kitchen to a US and an Australian one',
  words:
    'Eggs cannot be divided, and those of the three countries weigh differently. The self-raising flour counts as flour, baking powder and ' +
    'salt. The cream is whipped and fills the cake, so it stands outside the ratios to flour.',
  to: ['us', 'au'],
  post: {
    kitchen: 'uk',
    lines: [
      '225 g unsalted butter, soft',
      '225 g caster sugar',
      '4 large eggs',
      '225 g self-raising flour',
      '300 ml double cream',
    ],
    prose:
      'Cream the butter and sugar, beat in the eggs and fold in the flour. Whip the cream and sandwich the cakes with it.',
  },
};

function recipeOf({ kitchen: id, lines, prose }: Dish['post']): Recipe {
  const block = { kitchen: id, id: null, cooked: null, from: null };
  const read = lines.map((text, at): Line => {
    const reading = readLine(text, { kitchen: kitchen(id).units });
    const named = findFoodOfLine(reading, foods, id);
    return { key: `l${at}`, text, reading, food: named?.food ?? null, name: named?.name ?? null };
  });
  return {
    kitchen: id,
    makes: null,
    anchor: null,
    preserve: null,
    parts: [{ native: { ...block, key: 'p', label: null, lines: read }, authored: [] }],
    steps: [{ native: { ...block, key: 'm', mentions: [], prose: prose ?? '' }, authored: [] }],
  };
}

/** A version's line as it is read. */
export function textOf({ line, edits }: VersionLine): string {
  return applyEdits(line.text, edits);
}

/** A dish re-authored for a kitchen. */
export function worked({ post, anchor }: Dish, to: string, within: Setting = setting): Reauthored {
  const result = reauthor(recipeOf(post), to, within, anchor === undefined ? {} : { anchor });
  if (isRefusal(result)) throw new Error(result.kind);
  return result;
}

/** The setting with UK eggs weighed by the least of their class, as US eggs are, instead of by its middle. */
export function withLightEggs(): Setting {
  const uk = kitchen('uk');
  const sizes = uk.eggs.sizes.map((size) => {
    const leastGrams = leastOfClass[size.name];
    return leastGrams === undefined
      ? size
      : { ...size, typicalGrams: new Exact(leastGrams), edibleGrams: new Exact(leastGrams).times('0.88') };
  });
  const light: Kitchen = { ...uk, eggs: { ...uk.eggs, sizes } };
  return { ...setting, kitchens: new Map([...setting.kitchens, ['uk', light]]) };
}

/** Least grams in the shell of the UK classes: Regulation 589/2008, as read in pages that quote it. */
const leastOfClass: Readonly<Record<string, string>> = { medium: '53', large: '63' };

/** What five US eggs cost at the least in a batch of 5 × US class minimum over 4 × UK class minimum. */
export function leastAtAnEighth(): { batch: number; drift: number; cost: number } {
  const large = (id: string) => kitchen(id).eggs.sizes.find(({ name }) => name === 'large');
  const [us, uk] = [large('us'), large('uk')];
  if (us === undefined || uk === undefined) throw new RangeError('There are no large eggs.');
  const batch = us.typicalGrams
    .times(5)
    .dividedBy(new Exact(leastOfClass.large ?? 0).times(4))
    .toNumber();
  const share = us.edibleGrams.times(5).dividedBy(uk.edibleGrams.times(4)).dividedBy(batch).toNumber();
  const { guarded, batch: size } = defaultWeights;
  return { batch, drift: share - 1, cost: guarded * Math.log(share) ** 2 + size * Math.log(batch) ** 2 };
}
