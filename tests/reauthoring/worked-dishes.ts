import {
  applyEdits,
  Exact,
  findFoodOfLine,
  type Kitchen,
  type Line,
  type Mention,
  type Reauthored,
  type Recipe,
  readingIn,
  readLine,
  readPan,
  type Setting,
  type VersionLine,
} from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { reauthoredOf } from './reauthored.ts';

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
  post: { kitchen: string; lines: readonly string[]; prose?: string; pan?: string };
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
    'Eggs cannot be divided, and those of the three countries weigh differently. This author put the four on the scale, as bakers of a sponge ' +
    'do, and their weight counts instead of the class. The self-raising flour counts as flour and the baking powder that it holds; what US shops sell holds salt as well, so plain ' +
    'flour and baking powder take its place there. The cream is whipped and fills ' +
    'the cake, so it stands outside the ratios to flour. The tins speak for the batch too: their base carries it.',
  to: ['us', 'au'],
  post: {
    kitchen: 'uk',
    lines: [
      '225 g unsalted butter, soft',
      '225 g caster sugar',
      '4 large eggs (220 g without their shells)',
      '225 g self-raising flour',
      '300 ml double cream',
    ],
    pan: 'two 20 cm',
    prose:
      'Cream the butter and sugar, beat in the eggs and fold in the flour. Divide between two 20 cm sandwich tins. Bake. Whip the cream and sandwich the cakes with it.',
  },
};

/** The same with the author's eggs as their class says. */
export const spongeByClass: Dish = {
  ...sponge,
  post: {
    ...sponge.post,
    lines: sponge.post.lines.map((line) => (line.startsWith('4 large') ? '4 large eggs' : line)),
  },
};

function recipeOf({ kitchen: id, lines, prose, pan }: Dish['post']): Recipe {
  const block = { kitchen: id, id: null, cooked: null, from: null };
  const read = lines.map((text, at): Line => {
    const reading = readLine(text, readingIn(kitchen(id)));
    const named = findFoodOfLine(reading, foods, id);
    return { key: `l${at}`, text, reading, food: named?.food ?? null, name: named?.name ?? null };
  });
  return {
    kitchen: id,
    makes: null,
    anchor: null,
    preserve: null,
    parts: [{ native: { ...block, key: 'p', label: null, lines: read }, authored: [] }],
    steps: [
      {
        native: { ...block, key: 'm', mentions: pan === undefined ? [] : [panMention(pan)], prose: prose ?? '' },
        authored: [],
      },
    ],
  };
}

function panMention(text: string): Mention {
  const reading = readPan(text);
  if (reading === null) throw new RangeError(`${text} is no pan.`);
  return { key: 'pan', text, kind: 'pan', reading, depth: null, count: null };
}

/** A version's line as it is read. */
export function textOf({ line, edits }: VersionLine): string {
  return applyEdits(line.text, edits);
}

/** A dish re-authored for a kitchen. */
export function worked({ post, anchor }: Dish, to: string, within: Setting = setting): Reauthored {
  return reauthoredOf(recipeOf(post), to, within, anchor === undefined ? {} : { anchor });
}
