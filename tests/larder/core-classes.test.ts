import { readFileSync } from 'node:fs';
import { findFood } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { expect, test } from 'vitest';

const foods = [...builtInLarder().foods.values()];

// Words of names that say an animal, the classes that its raw flesh has, and the foods that hold the word and need no class: cooked or
// cured ready to eat, rendered, a stock, or no flesh at all.
const saying: readonly { word: RegExp; classes: readonly string[]; butNot: readonly string[] }[] = [
  {
    word: /\b(?:minced|ground|mince)\b.*\b(?:chicken|turkey)\b|\b(?:chicken|turkey)\b.*\bmince\b/i,
    classes: ['ground-poultry'],
    butNot: [],
  },
  {
    word: /\b(?:chicken|turkey|duck|duckling)\b/i,
    classes: ['poultry', 'poultry-pieces', 'ground-poultry', 'offal', 'leftovers'],
    butNot: [
      ...['chicken-fat', 'duck-fat', 'chicken-stock', 'chicken-stock-cube', 'stock-paste', 'cream-of-chicken-soup'],
      ...['chicken-bouillon-cube', 'chicken-stock-powder', 'vegetable-stock'],
    ],
  },
  { word: /\b(?:venison|rabbit|wild boar|hare|kangaroo)\b/i, classes: ['game'], butNot: [] },
  {
    word: /\b(?:ground|minced) (?:beef|pork|lamb|veal|meat)\b|\b(?:beef|pork|lamb|veal|steak) mince\b/i,
    classes: ['ground-meat'],
    butNot: [],
  },
  {
    word: /\bpork\b(?! (?:sausages?|lard))/i,
    classes: ['pork', 'ground-meat', 'ham', 'sausage'],
    butNot: ['lard', 'char-siu', 'pork-rinds'],
  },
  {
    word: /\b(?:bacon|pancetta|lardons?|gammon)\b/i,
    classes: ['pork', 'ham'],
    butNot: ['bacon-cooked', 'bacon-fat', 'ham', 'turkey-bacon'],
  },
  {
    word: /\b(?:liver|kidney|tongue)\b/i,
    classes: ['offal'],
    butNot: ['kidney-beans', 'dried-kidney-beans', 'cannellini-beans'],
  },
  {
    word: /\b(?:cod|haddock|hake|halibut|trout|salmon|mackerel|sea bass|tilapia|monkfish|kippers?)\b/i,
    classes: ['fish'],
    // Smoked hot or cold to be eaten as it is, tinned, or roe.
    butNot: ['fish-roe', 'hot-smoked-salmon', 'smoked-mackerel', 'smoked-salmon', 'smoked-trout', 'tinned-salmon'],
  },
  {
    word: /\b(?:prawns?|shrimps?|crabs?|lobsters?|mussels?|clams?|scallops?|squid|oysters?)\b(?! (?:sauce|juice|broth|mushrooms?|crackers?|sticks?|nectar|boil|seasoning))/i,
    classes: ['shellfish'],
    butNot: ['cooked-prawn', 'surimi', 'fish-stock', 'shrimp-paste'],
  },
  {
    word: /\b(?:raw|uncooked|fresh|cooking) chorizo\b|\b(?:Italian|breakfast|pork) sausage/i,
    classes: ['sausage'],
    butNot: [],
  },
];

test.for(saying)('a food whose name says $word is of one of its classes: $classes', ({ word, classes, butNot }) => {
  const named = foods.filter(({ names }) =>
    Object.values(names).some((list) => list.some(({ one }) => word.test(one))),
  );
  expect(named.length).toBeGreaterThan(0);
  const wrong = named.filter(({ coreClass }) => coreClass === null || !classes.includes(coreClass));
  expect(wrong.map(({ id }) => id).filter((id) => !butNot.includes(id))).toEqual([]);
});

// Eaten as they are: cured and dried, smoked to be eaten, tinned, cooked, or no flesh at all.
const readyToEat = [
  ...['bresaola', 'coppa', 'head-cheese', 'nduja', 'pastrami', 'pork-rinds', 'bottarga', 'smoked-eel'],
  ...['marinated-anchovy', 'pickled-herring'],
  ...['prosciutto', 'serrano-ham', 'salami', 'pepperoni', 'mortadella', 'bacon-cooked', 'cooked-prawn', 'surimi'],
  ...['smoked-salmon', 'hot-smoked-salmon', 'smoked-mackerel', 'smoked-trout', 'fish-roe', 'bonito-flakes'],
  ...['tinned-tuna', 'tinned-salmon', 'sardine', 'anchovy', 'clam-juice', 'dashi-powder'],
];

test.for(['meat', 'poultry', 'fish-and-shellfish', 'egg'])(
  'every food of %s.yaml has a class, or is eaten as it is',
  (file) => {
    const path = new URL(`../../packages/larder/foods/${file}.yaml`, import.meta.url);
    const ids = [...readFileSync(path, 'utf8').matchAll(/^- id: (\S+)$/gm)].map(([, id]) => id ?? '');
    expect(ids.length).toBeGreaterThan(2);
    const unclassed = foods.filter(({ id, coreClass }) => ids.includes(id) && coreClass === null).map(({ id }) => id);
    expect(unclassed.filter((id) => !readyToEat.includes(id))).toEqual([]);
  },
);

// The word may mean what is sold raw: the higher figure is then the one to hold a core temperature against.
test.for([
  ['chorizo', 'sausage'],
  ['kielbasa', 'sausage'],
  ['andouille', 'sausage'],
  ['ham', 'ham'],
  ['black pudding', 'sausage'],
] as const)('a bare %s is held against the figure for %s in every kitchen', ([name, coreClass]) => {
  const { foods: all, kitchens } = builtInLarder();
  for (const kitchen of kitchens.keys()) expect(findFood(name, all, kitchen)?.coreClass).toBe(coreClass);
});
